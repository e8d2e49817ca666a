package orlop.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Locked;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Scene;

/**
 * Puts components and notes in line, and at even distances. Nothing is turned: only places change, all on the grid.
 *
 * <p>The centre of a component is its origin, on which its terminals are lined up; so components in one column are joined
 * by a straight line. Its edges are those of its symbol, out to the next line of the grid.
 */
public final class Arranging {
    /** The pitch of the grid. */
    public static final double GRID_MM = 2.5;

    private static final double TINY = 1e-6;
    private static final Rect NOWHERE = Rect.of(0, 0, 0, 0);

    private Arranging() {}

    /** What things are brought to. */
    public enum Line {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM,
        /** Centres one above the other. */
        COLUMN,
        /** Centres side by side. */
        ROW
    }

    /** In which direction distances are made even. */
    public enum Direction {
        ACROSS,
        DOWN
    }

    private record Shift(double dxMm, double dyMm) {}

    /**
     * What the chosen components and notes cover on a scene, by id; cables and what stands elsewhere are left out.
     *
     * @param ids in any order; the answer is in that of the painting
     */
    public static Map<String, Rect> boxes(Scene scene, Set<String> ids) {
        Map<String, Rect> boxes = new LinkedHashMap<>();
        scene.items().stream()
                .filter(i -> i.role() == Role.COMPONENT || i.role() == Role.BAR || i.role() == Role.NOTE)
                .filter(i -> ids.contains(i.subject()))
                .forEach(i -> boxes.merge(i.subject(), i.bounds(), Rect::union));
        return boxes;
    }

    /**
     * Brings things to one line: edges to that of the outermost; centres to the line on which most of them stand already,
     * or, where no two do, to the middle between the outermost. What is locked stays, and the others come to it.
     *
     * @param boxes what each covers, by id
     */
    public static Edit align(Map<String, Rect> boxes, Line line) {
        Map<String, Rect> things = new LinkedHashMap<>(boxes);
        return Edit.of(
                Message.of("desk.align." + line.name().toLowerCase(Locale.ROOT), things.size()),
                d -> moved(d, aligned(d, things, line)));
    }

    private static Map<String, Shift> aligned(Drawing d, Map<String, Rect> boxes, Line line) {
        boolean sideways = line == Line.LEFT || line == Line.RIGHT || line == Line.COLUMN;
        Map<String, Double> values = new LinkedHashMap<>();
        boxes.forEach((id, box) -> values.put(id, value(d, id, box, line)));
        Set<String> references = new LinkedHashSet<>(values.keySet());
        references.removeIf(id -> !locked(d, id));
        if (references.isEmpty()) {
            references.addAll(values.keySet());
        }
        double target = target(references.stream().map(values::get).toList(), line);
        Map<String, Shift> shifts = new LinkedHashMap<>();
        values.forEach((id, value) -> {
            double by = target - value;
            if (!locked(d, id)) {
                shifts.put(id, sideways ? across(d, id, by) : down(d, id, by));
            }
        });
        return shifts;
    }

    private static double target(List<Double> values, Line line) {
        double least = values.stream().mapToDouble(v -> v).min().orElse(0);
        double most = values.stream().mapToDouble(v -> v).max().orElse(0);
        return switch (line) {
            case LEFT, TOP -> least;
            case RIGHT, BOTTOM -> most;
            case COLUMN, ROW -> inLine(values).orElseGet(() -> onGrid((least + most) / 2));
        };
    }

    /** The line on which more of these stand than on any other: who straightens a row moves what stands out of it. */
    private static Optional<Double> inLine(List<Double> values) {
        Map<Double, Long> counts =
                values.stream().collect(Collectors.groupingBy(v -> v, LinkedHashMap::new, Collectors.counting()));
        long most = counts.values().stream().mapToLong(n -> n).max().orElse(0);
        List<Double> lines = counts.entrySet().stream()
                .filter(e -> e.getValue() == most)
                .map(Map.Entry::getKey)
                .toList();
        return lines.size() == 1 ? Optional.of(lines.get(0)) : Optional.empty();
    }

    private static double value(Drawing d, String id, Rect box, Line line) {
        return switch (line) {
            case LEFT -> Math.floor(box.minX() / GRID_MM + TINY) * GRID_MM;
            case RIGHT -> Math.ceil(box.maxX() / GRID_MM - TINY) * GRID_MM;
            case TOP -> Math.floor(box.minY() / GRID_MM + TINY) * GRID_MM;
            case BOTTOM -> Math.ceil(box.maxY() / GRID_MM - TINY) * GRID_MM;
            case COLUMN -> centre(d, id, box).xMm();
            case ROW -> centre(d, id, box).yMm();
        };
    }

    /**
     * Makes the distances between the centres of three or more things even. The outermost two stay; distances differ by one
     * step of the grid at most.
     *
     * @param boxes what each covers, by id
     */
    public static Edit distribute(Map<String, Rect> boxes, Direction direction) {
        Map<String, Rect> things = new LinkedHashMap<>(boxes);
        return Edit.of(
                Message.of("desk.distribute." + direction.name().toLowerCase(Locale.ROOT), things.size()),
                d -> moved(d, distributed(d, things, direction == Direction.ACROSS)));
    }

    private static Map<String, Shift> distributed(Drawing d, Map<String, Rect> boxes, boolean across) {
        ToDoubleFunction<String> at = id -> {
            Point c = centre(d, id, boxes.getOrDefault(id, NOWHERE));
            return across ? c.xMm() : c.yMm();
        };
        List<String> order = new ArrayList<>(boxes.keySet());
        order.sort(Comparator.comparingDouble(at));
        Map<String, Shift> shifts = new LinkedHashMap<>();
        int last = order.size() - 1;
        for (int i = 1; i < last; i++) {
            double first = at.applyAsDouble(order.get(0));
            double even = first + i * (at.applyAsDouble(order.get(last)) - first) / last;
            double by = onGrid(even) - at.applyAsDouble(order.get(i));
            String id = order.get(i);
            shifts.put(id, across ? across(d, id, by) : down(d, id, by));
        }
        return shifts;
    }

    private static boolean locked(Drawing d, String id) {
        return Locked.is(d, id);
    }

    private static Point centre(Drawing d, String id, Rect box) {
        Component c = d.components().get(id);
        return c != null ? c.place().at() : new Point(onGrid(box.centreX()), onGrid(box.centreY()));
    }

    /** Where a component or note stands. */
    private static Point at(Drawing d, String id) {
        Component c = d.components().get(id);
        Note n = d.notes().get(id);
        if (c == null && n == null) {
            throw new Edit.Refusal(Message.of("drawing.refuse.gone", id));
        }
        return c != null ? c.place().at() : n == null ? new Point(0, 0) : n.at();
    }

    private static Shift across(Drawing d, String id, double by) {
        double x = at(d, id).xMm();
        return new Shift(onGrid(x + by) - x, 0);
    }

    private static Shift down(Drawing d, String id, double by) {
        double y = at(d, id).yMm();
        return new Shift(0, onGrid(y + by) - y);
    }

    /** What moves alike moves together, so that hand-set bends between them follow. */
    private static Drawing moved(Drawing d, Map<String, Shift> shifts) {
        Map<Shift, Set<String>> alike = new LinkedHashMap<>();
        shifts.forEach((id, shift) -> {
            if (shift.dxMm() != 0 || shift.dyMm() != 0) {
                alike.computeIfAbsent(shift, s -> new LinkedHashSet<>()).add(id);
            }
        });
        Drawing after = d;
        for (Map.Entry<Shift, Set<String>> e : alike.entrySet()) {
            Shift s = e.getKey();
            after = Edits.move(e.getValue(), s.dxMm(), s.dyMm(), s).applyTo(after);
        }
        return after;
    }

    /** The nearest value on the grid. */
    public static double onGrid(double mm) {
        double on = Math.rint(mm / GRID_MM) * GRID_MM;
        return on == 0 ? 0 : on; // never −0, which would be another drawing
    }
}
