package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import orlop.drawing.TerminalRef;

/** Which spots of bars and of many-ended components are taken. */
final class Taps {
    static final double PITCH_MM = 2.5;

    /** Least distance of two spots on a bar that has room. */
    static final double WIDE_MM = 5;

    /** How far along a bar spots are looked at beside those across from the other end. */
    private static final double REACH_MM = 45;

    private final Map<String, List<Port>> taken = new HashMap<>();

    void take(String component, Port p) {
        taken.computeIfAbsent(component, k -> new ArrayList<>()).add(p);
    }

    boolean taken(String component, Port p) {
        return taken.getOrDefault(component, List.of()).stream()
                .anyMatch(q -> q.x() == p.x() && q.y() == p.y() && q.heading() == p.heading());
    }

    /**
     * The spots of a bar at which another line can end: with room around them, or, on a full bar, with less.
     *
     * @param others ports of the other end: the spots near those straight across from them are offered, on the grid and,
     *     where one is off the grid, straight across from it; all spots of the bar if there are none
     * @param plan keeps spots for others
     * @param seen is told which part of the bar was looked at
     */
    List<Port> free(
            Placed p, Rect bar, TerminalRef end, List<Port> others, TapPlan plan, String connection, Seen seen) {
        List<Port> here = spots(bar, end, others, REACH_MM);
        for (double reach : new double[] {REACH_MM, Double.POSITIVE_INFINITY}) {
            List<Port> all = reach == REACH_MM ? here : spots(bar, end, others, reach);
            seen.add(WaySearch.boxAround(all).grown(WIDE_MM));
            List<Port> ports = unkept(apart(p, all, WIDE_MM), p, plan, connection, WIDE_MM);
            if (ports.isEmpty()) {
                ports = unkept(apart(p, all, PITCH_MM), p, plan, connection, PITCH_MM);
            }
            if (ports.isEmpty()) {
                ports = apart(p, all, PITCH_MM);
            }
            if (!ports.isEmpty()) {
                return ports;
            }
        }
        return here;
    }

    /** The spot that is kept for this end, if nothing has taken it. */
    Optional<Port> kept(Placed p, Rect bar, TerminalRef end, TapPlan plan, String connection, Seen seen) {
        TapPlan.Kept k = plan.spot(connection, end);
        if (k == null) {
            return Optional.empty();
        }
        Port q = k.side().horizontal()
                ? new Port(end, bar.centreX(), k.atMm(), k.side())
                : new Port(end, k.atMm(), bar.centreY(), k.side());
        seen.add(WaySearch.boxAround(List.of(q)).grown(WIDE_MM));
        return clear(taken.getOrDefault(p.id(), List.of()), q, PITCH_MM) ? Optional.of(q) : Optional.empty();
    }

    private static List<Port> unkept(List<Port> ports, Placed p, TapPlan plan, String connection, double leastMm) {
        return ports.stream()
                .filter(q -> !plan.keptForOthers(p.id(), connection, q, leastMm))
                .toList();
    }

    private List<Port> apart(Placed p, List<Port> all, double leastMm) {
        List<Port> here = taken.getOrDefault(p.id(), List.of());
        List<Port> free = new ArrayList<>(all.size());
        for (Port q : all) {
            if (clear(here, q, leastMm)) {
                free.add(q);
            }
        }
        return free;
    }

    private static boolean clear(List<Port> here, Port q, double leastMm) {
        for (Port o : here) {
            if (o.heading() == q.heading() && Math.abs(o.x() - q.x()) + Math.abs(o.y() - q.y()) < leastMm - 1e-6) {
                return false;
            }
        }
        return true;
    }

    private static double inset(double from, double to) {
        return to - from > 2 * PITCH_MM ? PITCH_MM / 2 : 0;
    }

    /** The first spot on the grid of a bar that reaches from here to there. */
    static double first(double from, double to) {
        return Math.ceil((from + inset(from, to)) / PITCH_MM) * PITCH_MM;
    }

    /** The last one. */
    static double last(double from, double to) {
        return Math.floor((to - inset(from, to)) / PITCH_MM) * PITCH_MM;
    }

    private static List<Port> spots(Rect bar, TerminalRef end, List<Port> others, double reach) {
        boolean lying = bar.width() >= bar.height();
        double from = lying ? bar.minX() : bar.minY();
        double to = lying ? bar.maxX() : bar.maxY();
        double min = from + inset(from, to);
        double max = to - inset(from, to);
        if (!others.isEmpty()) {
            double first = others.stream()
                    .mapToDouble(o -> lying ? o.x() : o.y())
                    .min()
                    .orElse(min);
            double last = others.stream()
                    .mapToDouble(o -> lying ? o.x() : o.y())
                    .max()
                    .orElse(max);
            min = Math.max(min, Math.min(first, max) - reach);
            max = Math.min(max, Math.max(last, from) + reach);
        }
        List<Port> ports = new ArrayList<>();
        for (long k = (long) Math.ceil(min / PITCH_MM); k * PITCH_MM <= max; k++) {
            add(ports, bar, end, k * PITCH_MM, lying);
        }
        for (Port o : others) {
            double at = lying ? o.x() : o.y();
            boolean across = o.heading().horizontal() != lying;
            if (across && at >= from && at <= to && at % PITCH_MM != 0) {
                add(ports, bar, end, at, lying);
            }
        }
        if (ports.isEmpty()) {
            add(ports, bar, end, (from + to) / 2, lying);
        }
        return ports;
    }

    private static void add(List<Port> ports, Rect bar, TerminalRef end, double at, boolean lying) {
        if (lying) {
            ports.add(new Port(end, at, bar.centreY(), Heading.UP));
            ports.add(new Port(end, at, bar.centreY(), Heading.DOWN));
        } else {
            ports.add(new Port(end, bar.centreX(), at, Heading.LEFT));
            ports.add(new Port(end, bar.centreX(), at, Heading.RIGHT));
        }
    }
}
