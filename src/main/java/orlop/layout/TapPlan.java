package orlop.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.TerminalRef;

/**
 * Which spots of a bar are kept for lines that lead beyond its ends: the outermost for the one that leads farthest, so that
 * none of them has to cross another. Immutable once made; equal for equal components and connections.
 */
final class TapPlan {
    /** How far from its end a bar keeps spots. */
    private static final double REACH_MM = 45;

    /** One end of a connection. */
    record End(String connection, TerminalRef at) {}

    /** A spot that is kept: its place along the bar, on which side of it, and how many spots lie farther out. */
    record Kept(End whose, double atMm, Heading side, int rank) {}

    private final Map<End, Kept> byEnd = new HashMap<>();
    private final Map<String, List<Kept>> byBar = new HashMap<>();

    private TapPlan() {}

    /** An end at a bar, seen along it. */
    private record Tap(End end, double alongMm, Heading side, boolean facing) {}

    static TapPlan of(Map<String, Placed> placed, List<Connection> connections) {
        Map<String, List<Tap>> taps = new HashMap<>();
        for (Connection c : connections) {
            if (c.bends().isEmpty()) {
                tap(taps, placed, c, c.from(), c.to());
                tap(taps, placed, c, c.to(), c.from());
            }
        }
        TapPlan plan = new TapPlan();
        taps.forEach((id, list) -> {
            Placed p = placed.get(id);
            Rect bar = p == null ? null : p.bar();
            if (bar != null) {
                plan.keep(id, bar, list);
            }
        });
        return plan;
    }

    private static void tap(
            Map<String, List<Tap>> taps, Map<String, Placed> placed, Connection c, TerminalRef at, TerminalRef other) {
        Placed p = placed.get(at.component());
        Placed q = placed.get(other.component());
        Rect bar = p == null ? null : p.bar();
        if (bar == null || q == null || q.bar() != null) {
            return;
        }
        Port port = q.anySpot() ? null : q.port(other.terminal()).orElse(null);
        double x = port == null ? q.ink().centreX() : port.x();
        double y = port == null ? q.ink().centreY() : port.y();
        boolean lying = bar.width() >= bar.height();
        Heading side = lying
                ? y < bar.centreY() ? Heading.UP : Heading.DOWN
                : x < bar.centreX() ? Heading.LEFT : Heading.RIGHT;
        boolean facing = port != null && port.heading() == side.opposite();
        taps.computeIfAbsent(at.component(), k -> new ArrayList<>())
                .add(new Tap(new End(c.id(), at), lying ? x : y, side, facing));
    }

    private void keep(String id, Rect bar, List<Tap> taps) {
        boolean lying = bar.width() >= bar.height();
        double min = lying ? bar.minX() : bar.minY();
        double max = lying ? bar.maxX() : bar.maxY();
        for (Heading side : Heading.values()) {
            List<Tap> here = taps.stream().filter(t -> t.side == side).toList();
            List<Double> straight = here.stream()
                    .filter(t -> t.facing && t.alongMm >= min && t.alongMm <= max)
                    .map(Tap::alongMm)
                    .toList();
            List<Tap> before = here.stream()
                    .filter(t -> t.alongMm < min)
                    .sorted(Comparator.comparingDouble(Tap::alongMm))
                    .toList();
            List<Tap> behind = here.stream()
                    .filter(t -> t.alongMm > max)
                    .sorted(Comparator.comparingDouble(t -> -t.alongMm))
                    .toList();
            keep(id, before, straight, Taps.first(min, max), Taps.PITCH_MM);
            keep(id, behind, straight, Taps.last(min, max), -Taps.PITCH_MM);
        }
    }

    private void keep(String id, List<Tap> outermostFirst, List<Double> straight, double from, double step) {
        double at = from;
        int rank = 0;
        for (Tap t : outermostFirst) {
            while (!clear(at, straight) && Math.abs(at - from) < REACH_MM) {
                at += step;
            }
            if (Math.abs(at - from) >= REACH_MM) {
                return;
            }
            Kept kept = new Kept(t.end, at, t.side, rank++);
            byEnd.put(t.end, kept);
            byBar.computeIfAbsent(id, k -> new ArrayList<>()).add(kept);
            at += 2 * step;
        }
    }

    private static boolean clear(double at, List<Double> straight) {
        return straight.stream().noneMatch(s -> Math.abs(s - at) < Taps.WIDE_MM - 1e-6);
    }

    /** The spot that is kept for this end; null if it may take any. */
    @Nullable
    Kept spot(String connection, TerminalRef at) {
        return byEnd.get(new End(connection, at));
    }

    /** Whether a spot of a bar is too near to one that is kept for others. */
    boolean keptForOthers(String bar, String connection, Port q, double leastMm) {
        for (Kept k : byBar.getOrDefault(bar, List.of())) {
            double along = q.heading().horizontal() ? q.y() : q.x();
            if (k.side == q.heading()
                    && !k.whose.connection().equals(connection)
                    && Math.abs(along - k.atMm) < leastMm - 1e-6) {
                return true;
            }
        }
        return false;
    }

    /** What is kept of a bar, to be compared. */
    List<Kept> of(String bar) {
        return byBar.getOrDefault(bar, List.of());
    }
}
