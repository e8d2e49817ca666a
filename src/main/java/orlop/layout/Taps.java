package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.TerminalRef;

/** Which spots of bars and of many-ended components are taken. */
final class Taps {
    static final double PITCH_MM = 2.5;
    private static final double WIDE_MM = 5;

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
     * @param others ports of the other end: a spot straight across from one counts too, if it is off the grid
     */
    List<Port> free(Placed p, Rect bar, TerminalRef end, List<Port> others) {
        List<Port> all = all(bar, end, others);
        List<Port> ports = apart(p, all, WIDE_MM);
        if (ports.isEmpty()) {
            ports = apart(p, all, PITCH_MM);
        }
        return ports.isEmpty() ? all : ports;
    }

    private List<Port> apart(Placed p, List<Port> all, double leastMm) {
        List<Port> here = taken.getOrDefault(p.id(), List.of());
        return all.stream()
                .filter(q -> here.stream()
                        .noneMatch(o -> o.heading() == q.heading()
                                && Math.abs(o.x() - q.x()) + Math.abs(o.y() - q.y()) < leastMm - 1e-6))
                .toList();
    }

    private static List<Port> all(Rect bar, TerminalRef end, List<Port> others) {
        boolean lying = bar.width() >= bar.height();
        double min = lying ? bar.minX() : bar.minY();
        double max = lying ? bar.maxX() : bar.maxY();
        double inset = max - min > 2 * PITCH_MM ? PITCH_MM / 2 : 0;
        List<Port> ports = new ArrayList<>();
        for (long k = (long) Math.ceil((min + inset) / PITCH_MM); k * PITCH_MM <= max - inset; k++) {
            add(ports, bar, end, k * PITCH_MM, lying);
        }
        for (Port o : others) {
            double at = lying ? o.x() : o.y();
            boolean across = o.heading().horizontal() != lying;
            if (across && at >= min && at <= max && at % PITCH_MM != 0) {
                add(ports, bar, end, at, lying);
            }
        }
        if (ports.isEmpty()) {
            add(ports, bar, end, (min + max) / 2, lying);
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
