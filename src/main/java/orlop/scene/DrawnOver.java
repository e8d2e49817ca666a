package orlop.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.findings.Finding;
import orlop.findings.Severity;
import orlop.layout.Placed;

/** Bars that the drawing places over one another or over symbols: they are drawn so, and it is said. */
final class DrawnOver {
    private DrawnOver() {}

    /** By component, the tags of those that it lies on or under; bars with everything, symbols with bars. */
    static Map<String, List<String>> all(List<Placed> placed) {
        Map<String, List<String>> over = new LinkedHashMap<>();
        List<Placed> bars = placed.stream().filter(p -> p.bar() != null).toList();
        for (Placed bar : bars) {
            for (Placed p : placed) {
                boolean again = p.bar() != null
                        && over.getOrDefault(bar.id(), List.of()).contains(p.id());
                if (!p.id().equals(bar.id()) && !again && p.ink().overlaps(bar.ink())) {
                    over.computeIfAbsent(bar.id(), k -> new ArrayList<>()).add(p.id());
                    over.computeIfAbsent(p.id(), k -> new ArrayList<>()).add(bar.id());
                }
            }
        }
        return over;
    }

    /** The sheet's own advice on them, for its margin. */
    static List<Finding> advice(List<Placed> placed, Map<String, List<String>> over) {
        List<Finding> all = new ArrayList<>();
        for (Placed p : placed) {
            List<String> others = over.getOrDefault(p.id(), List.of());
            if (p.bar() != null && !others.isEmpty()) {
                all.add(new Finding(
                        "scene-drawn-over",
                        Severity.ADVICE,
                        Finding.Place.component(p.id()),
                        Message.of("scene.drawn-over.title"),
                        Message.of("scene.drawn-over.message", p.id(), String.join(", ", others)),
                        null,
                        null,
                        "",
                        "seen",
                        List.of(),
                        List.of(),
                        null));
            }
        }
        return all;
    }
}
