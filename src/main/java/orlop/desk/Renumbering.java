package orlop.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.Sheet;

/**
 * Gives tags fresh numbers in the order in which the drawing is read: sheet by sheet, row by row from the top, each row
 * from the left. Each letter code counts for itself.
 *
 * <p>A tag that is not the letter code of its kind with a number was given by a person ({@code 24MAIN}) and stays. What
 * names a tag follows: cables, links, conditions, measurements, accepted findings. The words of notes do not.
 */
public final class Renumbering {
    /** Components whose centres differ by no more than this in height are in one row. */
    private static final double ROW_MM = 10;

    private Renumbering() {}

    /**
     * Renumbers as one step.
     *
     * @param ids what to renumber; empty for the whole drawing. Numbers of what is not among them stay and are left free.
     */
    public static Edit edit(Set<String> ids) {
        Set<String> chosen = new LinkedHashSet<>(ids);
        return Edit.of(Message.of("desk.renumber"), d -> renamed(d, tags(d, chosen)));
    }

    /** The tags that would change, old to new, in reading order. */
    public static Map<String, String> tags(Drawing d, Set<String> ids) {
        List<Tagged> all = new ArrayList<>();
        List<Component> read = reading(d);
        Map<String, Integer> order = new HashMap<>();
        for (Component c : read) {
            order.put(c.id(), order.size());
            all.add(new Tagged(c.id(), c.kind().letters()));
        }
        List<Cable> cables = new ArrayList<>();
        d.cables().values().forEach(cables::add);
        cables.sort(Comparator.comparingInt((Cable w) -> first(order, w)).thenComparingInt(w -> last(order, w)));
        cables.forEach(w -> all.add(new Tagged(w.id(), "W")));
        all.removeIf(t -> !t.standard() || (!ids.isEmpty() && !ids.contains(t.id())));
        return numbered(d, all);
    }

    private record Tagged(String id, String letters) {
        boolean standard() {
            return id.matches(letters + "[0-9]+");
        }
    }

    private static int first(Map<String, Integer> order, Cable w) {
        return Math.min(place(order, w.from().component()), place(order, w.to().component()));
    }

    private static int last(Map<String, Integer> order, Cable w) {
        return Math.max(place(order, w.from().component()), place(order, w.to().component()));
    }

    private static int place(Map<String, Integer> order, String component) {
        return order.getOrDefault(component, order.size());
    }

    private static Map<String, String> numbered(Drawing d, List<Tagged> tags) {
        Set<String> free = new HashSet<>();
        tags.forEach(t -> free.add(t.id()));
        Set<String> given = new HashSet<>();
        Map<String, Integer> counts = new HashMap<>();
        Map<String, String> changes = new LinkedHashMap<>();
        for (Tagged t : tags) {
            int n = counts.getOrDefault(t.letters(), 0) + 1;
            String tag = t.letters() + n;
            while (given.contains(tag) || (!free.contains(tag) && taken(d, tag))) {
                n++;
                tag = t.letters() + n;
            }
            counts.put(t.letters(), n);
            given.add(tag);
            if (!tag.equals(t.id())) {
                changes.put(t.id(), tag);
            }
        }
        return changes;
    }

    private static boolean taken(Drawing d, String tag) {
        return d.hasItem(tag) || d.notes().contains(tag);
    }

    /** All components in reading order. */
    static List<Component> reading(Drawing d) {
        List<Component> read = new ArrayList<>();
        for (Sheet s : d.sheets().values()) {
            List<Component> here = new ArrayList<>(d.components().stream()
                    .filter(c -> c.place().sheet().equals(s.id()))
                    .toList());
            here.sort(Comparator.comparingDouble((Component c) -> at(c).yMm()).thenComparingDouble(c -> at(c).xMm()));
            while (!here.isEmpty()) {
                double top = at(here.get(0)).yMm();
                List<Component> row = new ArrayList<>(
                        here.stream().filter(c -> at(c).yMm() - top <= ROW_MM).toList());
                row.sort(Comparator.comparingDouble(c -> at(c).xMm()));
                read.addAll(row);
                here.removeAll(row);
            }
        }
        return read;
    }

    private static Point at(Component c) {
        return c.place().at();
    }

    /** By way of tags that nothing has, so that two can change places. */
    private static Drawing renamed(Drawing d, Map<String, String> changes) {
        Map<String, String> passing = new LinkedHashMap<>();
        Drawing after = d;
        int n = 0;
        for (Map.Entry<String, String> e : changes.entrySet()) {
            String between;
            do {
                n++;
                between = "renumber." + n;
            } while (taken(after, between));
            passing.put(between, e.getValue());
            after = Edits.rename(e.getKey(), between).applyTo(after);
        }
        for (Map.Entry<String, String> e : passing.entrySet()) {
            after = Edits.rename(e.getKey(), e.getValue()).applyTo(after);
        }
        return after;
    }

    /** How many notes have one of these tags in their words. */
    public static long notesNaming(Drawing d, Set<String> tags) {
        return d.notes().stream()
                .filter(n -> List.of(n.text().split("[^A-Za-z0-9]+")).stream().anyMatch(tags::contains))
                .count();
    }
}
