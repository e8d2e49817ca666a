package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.TerminalRef;

/**
 * Builds the picture of a tree of feeds as a draughtsman would: bars lie, what feeds a bar stands over it, its circuits
 * hang from it in columns, and a bar that it feeds lies below, its feeder in a lane to the left of the circuits.
 */
final class BlockMaker {
    private static final double GRID_MM = 2.5;

    private static final double LINK_MM = 7.5;

    /** Room for the texts under the last component of a column. */
    private static final double TEXT_MM = 7.5;

    private static final double LEFT_OF_LINE_MM = 7.5;
    private static final double BAR_END_MM = 5;
    private static final double LEAST_BAR_MM = 20;

    private final FeedTree tree;
    private final BiFunction<Component, Integer, Placed> placing;
    private final Pitch pitch;
    private final double columnMm;
    private final Map<String, Double> widths = new HashMap<>();

    /**
     * How close things stand.
     *
     * @param columnMm from one column to the next: the texts beside a line take most of it
     * @param cableMm length of a cable, with its annotation of two rows beside it
     * @param rowGapMm from the last thing of a row to the bar below it
     */
    record Pitch(double columnMm, double cableMm, double rowGapMm) {}

    /** @param placing a component at 0, 0, turned by so many degrees */
    BlockMaker(FeedTree tree, BiFunction<Component, Integer, Placed> placing, Pitch pitch) {
        this.tree = tree;
        this.placing = placing;
        this.pitch = pitch;
        columnMm = pitch.columnMm();
    }

    /** The picture of a whole joined part. */
    Block of(String root, double widthMm) {
        return build(root, null, new Bounds(false, widthMm, 0, 0));
    }

    /**
     * What the building keeps to.
     *
     * @param over whether it grows upwards, towards the sources
     * @param widthMm of the page
     * @param leastBarY how far on the next bar lies at least, where what is beside it would be in its way
     * @param headroomMm how far back there is nothing to the right of the line that comes in
     */
    private record Bounds(boolean over, double widthMm, double leastBarY, double headroomMm) {
        Bounds further(double y, boolean alone) {
            return new Bounds(over, widthMm, leastBarY - y, alone ? headroomMm + y : 0);
        }
    }

    private Block build(String id, @Nullable TerminalRef entry, Bounds bounds) {
        return tree.isBar(id) ? bar(id, entry, bounds) : node(id, entry, bounds);
    }

    /** A component that is no bar, and what hangs on it side by side. */
    private Block node(String id, @Nullable TerminalRef entry, Bounds bounds) {
        boolean over = bounds.over();
        Component c = tree.component(id);
        List<FeedTree.Branch> out = tree.children(id);
        Placed p = turned(c, entry, out, over);
        Port in = entry == null ? null : port(p, entry, over ? Heading.DOWN : Heading.UP);
        int sign = over ? -1 : 1;
        double x0 = in == null ? 0 : in.x();
        double y0 = in == null ? (over ? p.ink().maxY() : p.ink().minY()) : in.y();
        double top = Math.min(sign * (p.ink().minY() - y0), sign * (p.ink().maxY() - y0));
        Rect ink = Rect.of(p.ink().minX() - x0, top, p.ink().width(), p.ink().height());
        double text = out.isEmpty() ? TEXT_MM : 0;
        Block block = new Block(
                new Rect(-LEFT_OF_LINE_MM, Math.min(0, ink.minY()), columnMm - LEFT_OF_LINE_MM, ink.maxY() + text)
                        .union(ink));
        block.put(new Block.Item(
                id, onGrid(-x0), onGrid(-sign * y0), p.component().place().rotationDegree(), 0));
        double right = Double.NEGATIVE_INFINITY;
        for (FeedTree.Branch b : out) {
            Port port = port(p, b.terminal(), over ? Heading.UP : Heading.DOWN);
            double y = Math.max(sign * (port.y() - y0), 0) + gap(b);
            if (tree.isBar(b.id())) {
                y = Math.max(y, bounds.leastBarY());
            }
            Block child = build(b.id(), b.end(), bounds.further(y, out.size() == 1));
            double x = Math.max(port.x() - x0, right - child.box().minX());
            block.take(child, onGrid(x), onGrid(y), false);
            right = block.box().maxX();
        }
        return block;
    }

    /** What a branch takes at most with everything on it side by side, in mm. */
    private double widthOf(String id) {
        Double known = widths.get(id);
        if (known == null) {
            double feeders = 0;
            double others = 0;
            for (FeedTree.Branch b : tree.children(id)) {
                if (tree.isBar(id) && tree.feeds(b.id())) {
                    feeders += widthOf(b.id());
                } else {
                    others += widthOf(b.id());
                }
            }
            known = Math.max(columnMm, Math.max(feeders > 0 ? feeders + columnMm : 0, others));
            widths.put(id, known);
        }
        return known;
    }

    /** A component so turned that the line comes in at the top, or leaves downwards where none comes in. */
    private Placed turned(Component c, @Nullable TerminalRef entry, List<FeedTree.Branch> out, boolean over) {
        Heading in = over ? Heading.DOWN : Heading.UP;
        Placed upright = placing.apply(c, 0);
        if (upright.anySpot() || (entry == null && out.isEmpty())) {
            return upright;
        }
        TerminalRef end = entry != null ? entry : out.get(0).terminal();
        Heading wanted = entry != null ? in : in.opposite();
        for (int degree : new int[] {0, 180, 90, 270}) {
            Placed p = placing.apply(c, degree);
            if (p.port(end.terminal()).map(Port::heading).orElse(wanted) == wanted) {
                return p;
            }
        }
        return upright;
    }

    private static Port port(Placed p, TerminalRef end, Heading wanted) {
        if (p.anySpot()) {
            return p.ports().stream()
                    .filter(q -> q.heading() == wanted)
                    .findFirst()
                    .orElse(p.ports().get(0));
        }
        return p.port(end.terminal()).orElse(p.ports().get(0));
    }

    private double gap(FeedTree.Branch b) {
        return b.cable() ? pitch.cableMm() : LINK_MM;
    }

    /** A bar with what feeds it, its circuits and the bars below it. */
    private Block bar(String id, @Nullable TerminalRef entry, Bounds bounds) {
        boolean over = bounds.over();
        List<FeedTree.Branch> feeders = new ArrayList<>();
        List<FeedTree.Branch> circuits = new ArrayList<>();
        List<FeedTree.Branch> lanes = new ArrayList<>();
        for (FeedTree.Branch b : tree.children(id)) {
            (!over && tree.feeds(b.id()) ? feeders : !over && tree.bears(b.id()) ? lanes : circuits).add(b);
        }
        BarBlock made = new BarBlock(id, entry != null);
        made.feeders(feeders, bounds);
        made.below(circuits, lanes, bounds);
        return made.done();
    }

    /** A bar in the making. */
    private final class BarBlock {
        private final String id;
        private final Block block = new Block(Rect.of(0, 0, 0, 0));
        private final boolean entered;
        private double barY;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;

        BarBlock(String id, boolean entered) {
            this.id = id;
            this.entered = entered;
            if (entered) {
                tap(0);
            }
        }

        private void tap(double x) {
            least = Math.min(least, x);
            most = Math.max(most, x);
        }

        void feeders(List<FeedTree.Branch> feeders, Bounds bounds) {
            Bounds up = new Bounds(true, bounds.widthMm(), 0, 0);
            List<Block> made =
                    feeders.stream().map(b -> build(b.id(), b.end(), up)).toList();
            for (int i = 0; i < made.size(); i++) {
                barY = Math.max(barY, made.get(i).box().maxY() + gap(feeders.get(i)) + (entered ? GRID_MM : 0));
            }
            barY = onGrid(Math.max(0, barY - bounds.headroomMm()));
            double right = entered ? columnMm - LEFT_OF_LINE_MM : -LEFT_OF_LINE_MM;
            for (int i = 0; i < made.size(); i++) {
                double x = onGrid(right - made.get(i).box().minX());
                block.take(made.get(i), x, onGrid(barY - gap(feeders.get(i))), true);
                tap(x);
                right = x + made.get(i).box().maxX();
            }
        }

        void below(List<FeedTree.Branch> circuits, List<FeedTree.Branch> feeds, Bounds bounds) {
            boolean over = bounds.over();
            double widthMm = bounds.widthMm();
            List<FeedTree.Branch> row = new ArrayList<>(circuits);
            List<Block> blocks = new ArrayList<>();
            circuits.forEach(b -> blocks.add(beside(b, bounds)));
            double wide = blocks.stream().mapToDouble(b -> b.box().width()).sum();
            List<FeedTree.Branch> lanes = new ArrayList<>();
            for (FeedTree.Branch b : feeds) {
                double more = widthOf(b.id());
                if (wide + more <= widthMm) {
                    wide += more;
                    row.add(b);
                    blocks.add(beside(b, bounds));
                } else {
                    lanes.add(b);
                }
            }
            double right = lanes.size() * columnMm - LEFT_OF_LINE_MM;
            double bottom = barY;
            for (int i = 0; i < row.size(); i++) {
                Block b = blocks.get(i);
                double x = onGrid(right - b.box().minX());
                double y = barY + gap(row.get(i));
                block.take(b, x, y, false);
                tap(x);
                right = x + b.box().maxX();
                bottom = Math.max(bottom, y + b.box().maxY());
            }
            for (int i = lanes.size() - 1; i >= 0; i--) {
                FeedTree.Branch b = lanes.get(i);
                double y = barY + gap(b);
                double x = i * columnMm;
                double next = onGrid(bottom + pitch.rowGapMm());
                y = tree.isBar(b.id()) ? Math.max(y, next) : y;
                Block lane = build(b.id(), b.end(), new Bounds(over, widthMm - x, next - y, y - next));
                block.take(lane, onGrid(x), y, false);
                tap(onGrid(x));
                bottom = Math.max(bottom, y + lane.box().maxY());
            }
        }

        /** What hangs on the bar side by side with the rest: it has the whole height from the bar for itself. */
        private Block beside(FeedTree.Branch b, Bounds bounds) {
            return build(b.id(), b.end(), new Bounds(bounds.over(), bounds.widthMm(), 0, gap(b) - pitch.rowGapMm()));
        }

        Block done() {
            if (least > most) {
                tap(0);
            }
            double from = least - BAR_END_MM;
            double length = Math.max(LEAST_BAR_MM, most - least + 2 * BAR_END_MM);
            length = Math.ceil(length / BAR_END_MM - 1e-9) * BAR_END_MM;
            block.put(new Block.Item(id, from + length / 2, barY, 0, length));
            block.cover(Rect.of(from, barY, length, TEXT_MM / 2));
            return block;
        }
    }

    private static double onGrid(double mm) {
        return Math.round(mm / GRID_MM) * GRID_MM;
    }
}
