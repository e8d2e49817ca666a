package orlop.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import orlop.drawing.TerminalRef;

/**
 * Draws a bar longer where terminals that face it stand beyond its end, each not far from the one before, so that the lines
 * fall straight from it, as long as nothing stands in the way.
 */
final class BarReach {
    /** What stands farther from the end, or from the last tap beyond it, is reached by a line with corners. */
    private static final double MOST_MM = 40;

    private static final double BEYOND_MM = 2.5;
    private static final double CLEAR_MM = 5;

    /** What hangs on the bar itself, and faces it, may be right at it. */
    private static final double RIGHT_AT_MM = 0.5;

    private BarReach() {}

    /** An end of a line to a bar: its place along the bar, and whether its terminal faces the bar. */
    private record Hanging(double atMm, boolean straight) {}

    static List<Placed> lengthened(List<Placed> placed, BarLengths lengths) {
        Map<String, Placed> byId = new LinkedHashMap<>();
        placed.forEach(p -> byId.put(p.id(), p));
        for (Placed p : placed) {
            Rect bar = p.bar();
            if (bar != null) {
                byId.put(p.id(), reaching(p, bar, byId, lengths.ends(p.id())));
            }
        }
        return new ArrayList<>(byId.values());
    }

    private static Placed reaching(Placed p, Rect bar, Map<String, Placed> all, List<TerminalRef> ends) {
        boolean lying = bar.width() >= bar.height();
        List<Hanging> hanging = new ArrayList<>();
        Set<String> facing = new HashSet<>();
        for (TerminalRef end : ends) {
            Placed q = all.get(end.component());
            Port port = q == null || q.anySpot() ? null : q.port(end.terminal()).orElse(null);
            if (port != null) {
                boolean straight = faces(port, bar, lying);
                hanging.add(new Hanging(lying ? port.x() : port.y(), straight));
                if (straight) {
                    facing.add(end.component());
                }
            }
        }
        Rect now = bar;
        for (double max : lengths(hanging, lying ? bar.maxX() : bar.maxY(), 1)) {
            Rect longer = with(bar, lying, lying ? bar.minX() : bar.minY(), max);
            if (free(p, longer, all, facing)) {
                now = longer;
                break;
            }
        }
        for (double min : lengths(hanging, lying ? bar.minX() : bar.minY(), -1)) {
            Rect longer = with(now, lying, min, lying ? now.maxX() : now.maxY());
            if (free(p, longer, all, facing)) {
                return grown(p, bar, longer);
            }
        }
        return grown(p, bar, now);
    }

    /**
     * Where a bar could end, the farthest first: beyond each tap that falls straight and is not far from the one before.
     * There it has room for what leads farther still, whose lines cross none then.
     *
     * @param end where it ends now
     * @param out 1 towards greater coordinates, -1 towards smaller ones
     */
    private static List<Double> lengths(List<Hanging> hanging, double end, int out) {
        List<Hanging> outwards = hanging.stream()
                .sorted(Comparator.comparingDouble(h -> h.atMm * out))
                .toList();
        int farther =
                (int) hanging.stream().filter(h -> (h.atMm - end) * out > 0).count();
        List<Double> ends = new ArrayList<>();
        double reached = end;
        double before = end;
        for (Hanging h : outwards) {
            boolean beyond = (h.atMm - end) * out > 0;
            farther -= beyond ? 1 : 0;
            boolean there = (reached - h.atMm) * out >= 0;
            if (h.straight && (there || (h.atMm - before) * out <= MOST_MM)) {
                double wanted = h.atMm + out * (BEYOND_MM + farther * Taps.WIDE_MM);
                before = beyond ? h.atMm : before;
                reached = (wanted - reached) * out > 0 ? wanted : reached;
                ends.add(0, reached);
            }
        }
        return ends;
    }

    private static boolean faces(Port port, Rect bar, boolean lying) {
        return lying
                ? port.heading() == (port.y() > bar.centreY() ? Heading.UP : Heading.DOWN)
                : port.heading() == (port.x() > bar.centreX() ? Heading.LEFT : Heading.RIGHT);
    }

    private static Rect with(Rect bar, boolean lying, double min, double max) {
        return lying ? new Rect(min, bar.minY(), max, bar.maxY()) : new Rect(bar.minX(), min, bar.maxX(), max);
    }

    private static boolean free(Placed own, Rect bar, Map<String, Placed> all, Set<String> facing) {
        Rect room = bar.grown(CLEAR_MM);
        Rect near = bar.grown(RIGHT_AT_MM);
        return all.values().stream()
                .noneMatch(q -> !q.id().equals(own.id())
                        && q.ink().overlaps(facing.contains(q.id()) ? near : room)
                        && !q.ink().overlaps(own.ink().grown(CLEAR_MM)));
    }

    private static Placed grown(Placed p, Rect bar, Rect longer) {
        Rect ink = p.ink();
        Rect all = new Rect(
                ink.minX() + longer.minX() - bar.minX(),
                ink.minY() + longer.minY() - bar.minY(),
                ink.maxX() + longer.maxX() - bar.maxX(),
                ink.maxY() + longer.maxY() - bar.maxY());
        return new Placed(p.component(), p.symbol(), all, p.ports(), p.anySpot(), longer);
    }
}
