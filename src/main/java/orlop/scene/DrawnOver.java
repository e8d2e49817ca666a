package orlop.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.findings.Finding;
import orlop.findings.Severity;
import orlop.layout.Placed;
import orlop.layout.Rect;

/**
 * Bars and symbols that the drawing places over one another, or where the sheet has no room for them: they are drawn so,
 * and it is said.
 */
final class DrawnOver {
    /** Symbols that only touch do not lie over one another. */
    private static final double TOUCH_MM = 0.4;

    private DrawnOver() {}

    /** By component, the tags of those that it lies on or under, in the order of the drawing. */
    static Map<String, List<String>> all(List<Placed> placed) {
        Map<String, Integer> order = new HashMap<>();
        placed.forEach(p -> order.put(p.id(), order.size()));
        Map<String, List<String>> over = new HashMap<>();
        List<Placed> fromLeft = new ArrayList<>(placed);
        fromLeft.sort(Comparator.comparingDouble(p -> p.ink().minX()));
        for (int i = 0; i < fromLeft.size(); i++) {
            Placed p = fromLeft.get(i);
            for (int j = i + 1;
                    j < fromLeft.size()
                            && fromLeft.get(j).ink().minX() < p.ink().maxX();
                    j++) {
                Placed q = fromLeft.get(j);
                if (over(p, q)) {
                    over.computeIfAbsent(p.id(), k -> new ArrayList<>()).add(q.id());
                    over.computeIfAbsent(q.id(), k -> new ArrayList<>()).add(p.id());
                }
            }
        }
        Map<String, List<String>> ordered = new LinkedHashMap<>();
        for (Placed p : placed) {
            List<String> others = over.get(p.id());
            if (others != null) {
                others.sort(Comparator.comparingInt(id -> order.getOrDefault(id, 0)));
                ordered.put(p.id(), others);
            }
        }
        return ordered;
    }

    private static boolean over(Placed p, Placed q) {
        if (p.bar() != null || q.bar() != null) {
            return p.ink().overlaps(q.ink());
        }
        return p.ink().grown(-TOUCH_MM).overlaps(q.ink().grown(-TOUCH_MM));
    }

    /**
     * The sheet's own advice on them, for its margin.
     *
     * @param over what {@link #all} found
     * @param room where the drawing may lie
     */
    static List<Finding> advice(List<Placed> placed, Map<String, List<String>> over, Rect room) {
        List<Finding> all = new ArrayList<>();
        for (Placed p : placed) {
            List<String> others = over.getOrDefault(p.id(), List.of());
            if (!others.isEmpty() && !saidOfAnother(p, placed, others)) {
                Message message = Message.of("scene.drawn-over.message", p.id(), String.join(", ", others));
                all.add(advice("scene-drawn-over", p, Message.of("scene.drawn-over.title"), message));
            }
        }
        List<Placed> outside =
                placed.stream().filter(p -> !room.contains(p.ink())).toList();
        if (!outside.isEmpty()) {
            String ids = String.join(", ", outside.stream().map(Placed::id).toList());
            Message message = Message.of("scene.outside.message", ids);
            all.add(advice("scene-outside", outside.get(0), Message.of("scene.outside.title"), message));
        }
        return all;
    }

    /** It is said of the bar, or of the first of two bars or of two symbols. */
    private static boolean saidOfAnother(Placed p, List<Placed> placed, List<String> others) {
        for (Placed q : placed) {
            if (q.id().equals(p.id())) {
                return p.bar() == null && placed.stream().anyMatch(r -> r.bar() != null && others.contains(r.id()));
            }
            if (others.contains(q.id()) && (q.bar() != null || p.bar() == null)) {
                return true;
            }
        }
        return false;
    }

    private static Finding advice(String rule, Placed p, Message title, Message message) {
        return new Finding(
                rule,
                Severity.ADVICE,
                Finding.Place.component(p.id()),
                title,
                message,
                null,
                null,
                "",
                "seen",
                List.of(),
                List.of(),
                null);
    }
}
