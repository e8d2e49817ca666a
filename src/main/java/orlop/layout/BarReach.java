package orlop.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.TerminalRef;

/**
 * Draws a bar longer where a terminal that faces it stands a little beyond its end, so that the line falls straight from it,
 * as long as nothing stands in the way.
 */
final class BarReach {
    /** What stands farther beyond the end is reached by a line with corners. */
    private static final double MOST_MM = 40;

    private static final double BEYOND_MM = 2.5;
    private static final double CLEAR_MM = 5;

    private BarReach() {}

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
        double first = lying ? bar.minX() : bar.minY();
        double last = lying ? bar.maxX() : bar.maxY();
        List<Double> facing = new ArrayList<>();
        int before = 0;
        int behind = 0;
        for (TerminalRef end : ends) {
            Placed q = all.get(end.component());
            Port port = q == null || q.anySpot() ? null : q.port(end.terminal()).orElse(null);
            if (port != null) {
                double at = lying ? port.x() : port.y();
                boolean straight = faces(port, bar, lying) && at >= first - MOST_MM && at <= last + MOST_MM;
                before += !straight && at < first ? 1 : 0;
                behind += !straight && at > last ? 1 : 0;
                if (straight) {
                    facing.add(at);
                }
            }
        }
        // Beyond the outermost straight tap there is room for what leads farther: its lines cross none then.
        double min = first;
        double max = last;
        for (double at : facing) {
            min = Math.min(min, at - BEYOND_MM - before * Taps.WIDE_MM);
            max = Math.max(max, at + BEYOND_MM + behind * Taps.WIDE_MM);
        }
        Placed longer = free(p, with(bar, lying, min, last), all) ? grown(p, bar, with(bar, lying, min, last)) : p;
        Rect now = longer.equals(p) ? bar : with(bar, lying, min, last);
        Rect whole = with(now, lying, lying ? now.minX() : now.minY(), max);
        return free(p, whole, all) ? grown(longer, now, whole) : longer;
    }

    private static boolean faces(Port port, Rect bar, boolean lying) {
        return lying
                ? port.heading() == (port.y() > bar.centreY() ? Heading.UP : Heading.DOWN)
                : port.heading() == (port.x() > bar.centreX() ? Heading.LEFT : Heading.RIGHT);
    }

    private static Rect with(Rect bar, boolean lying, double min, double max) {
        return lying ? new Rect(min, bar.minY(), max, bar.maxY()) : new Rect(bar.minX(), min, bar.maxX(), max);
    }

    private static boolean free(Placed own, Rect bar, Map<String, Placed> all) {
        Rect room = bar.grown(CLEAR_MM);
        return all.values().stream()
                .noneMatch(q -> !q.id().equals(own.id())
                        && q.ink().overlaps(room)
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
