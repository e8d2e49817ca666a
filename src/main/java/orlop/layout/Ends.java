package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import orlop.drawing.Point;
import orlop.drawing.TerminalRef;

/** Where lines may end while ways are sought. */
final class Ends {
    private static final double EPS = 1e-6;

    private final Map<String, Placed> placed;
    private final TapPlan plan;
    private final Taps taps = new Taps();

    Ends(Map<String, Placed> placed, TapPlan plan) {
        this.placed = placed;
        this.plan = plan;
    }

    /** The ports at which a connection may start and end, each at least one. */
    record Pair(List<Port> starts, List<Port> goals) {}

    /** @param seen is told what was looked at */
    Pair of(Connection c, Seen seen) {
        return told(new Pair(ports(c, c.from(), c.to(), seen), ports(c, c.to(), c.from(), seen)), seen);
    }

    /** As {@link #of}, with the spots that are kept for this connection and no others; empty if none is. */
    Optional<Pair> planned(Connection c, Seen seen) {
        Optional<Port> start = kept(c, c.from(), seen);
        Optional<Port> goal = kept(c, c.to(), seen);
        if (start.isEmpty() && goal.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(told(
                new Pair(
                        start.map(List::of).orElseGet(() -> ports(c, c.from(), c.to(), seen)),
                        goal.map(List::of).orElseGet(() -> ports(c, c.to(), c.from(), seen))),
                seen));
    }

    /** Whether a spot of a bar is kept for this end. */
    boolean isKept(Connection c, TerminalRef end) {
        return plan.spot(c.id(), end) != null;
    }

    /** How many lines lead farther beyond the end of a bar than this one. */
    int rank(Connection c) {
        TapPlan.Kept from = plan.spot(c.id(), c.from());
        TapPlan.Kept to = plan.spot(c.id(), c.to());
        return from != null ? from.rank() : to != null ? to.rank() : 0;
    }

    private Optional<Port> kept(Connection c, TerminalRef end, Seen seen) {
        Placed p = component(end);
        Rect bar = p.bar();
        return bar == null ? Optional.empty() : taps.kept(p, bar, end, plan, c.id(), seen);
    }

    private static Pair told(Pair pair, Seen seen) {
        seen.add(WaySearch.boxAround(pair.starts));
        seen.add(WaySearch.boxAround(pair.goals));
        return pair;
    }

    /** The spots of a bar straight across from the other end's ports included. */
    private List<Port> ports(Connection c, TerminalRef end, TerminalRef other, Seen seen) {
        Placed p = component(end);
        Rect bar = p.bar();
        if (bar != null) {
            Placed q = component(other);
            List<Port> others = q.bar() == null ? ports(c, other, end, seen) : List.of();
            return taps.free(p, bar, end, others, plan, c.id(), seen);
        }
        Optional<Port> own = p.port(end.terminal());
        if (own.isPresent() && !p.anySpot()) {
            return List.of(own.get());
        }
        p.ports().forEach(q -> seen.add(new Rect(q.x(), q.y(), q.x(), q.y())));
        List<Port> free = p.ports().stream().filter(q -> !taps.taken(p.id(), q)).toList();
        return free.isEmpty() ? p.ports() : free;
    }

    /** The spot of a bar straight across from a corner set by hand, taken or not; none if the corner lies beyond it. */
    Optional<Port> across(TerminalRef end, Point corner) {
        Rect bar = component(end).bar();
        if (bar == null) {
            return Optional.empty();
        }
        double x = corner.xMm();
        double y = corner.yMm();
        if (bar.width() >= bar.height()) {
            Heading h = y < bar.centreY() ? Heading.UP : Heading.DOWN;
            return x < bar.minX() || x > bar.maxX()
                    ? Optional.empty()
                    : Optional.of(new Port(end, x, bar.centreY(), h));
        }
        Heading h = x < bar.centreX() ? Heading.LEFT : Heading.RIGHT;
        return y < bar.minY() || y > bar.maxY() ? Optional.empty() : Optional.of(new Port(end, bar.centreX(), y, h));
    }

    void take(Way w) {
        taps.take(w.connection().from().component(), w.start());
        taps.take(w.connection().to().component(), w.end());
    }

    /** By component, the corridors in which a line may be near it. */
    Map<String, List<Rect>> exits(Connection c, Pair pair) {
        Map<String, List<Rect>> exits = new HashMap<>();
        exits(exits, c.from(), pair.starts);
        exits(exits, c.to(), pair.goals);
        return exits;
    }

    private void exits(Map<String, List<Rect>> exits, TerminalRef end, List<Port> ports) {
        List<Rect> list = exits.computeIfAbsent(end.component(), k -> new ArrayList<>());
        ports.forEach(p -> list.add(exit(end, p)));
    }

    /** From the port straight out until the line is clear of the component. */
    private Rect exit(TerminalRef end, Port p) {
        double far = component(end).exitMm(p) + Obstacles.CLEARANCE_MM + Taps.PITCH_MM;
        Point to = new Point(p.x() + p.heading().dx() * far, p.y() + p.heading().dy() * far);
        return Rect.around(new Point(p.x(), p.y()), to).grown(EPS);
    }

    /** Connections that share one of these may meet on the way: they belong to one point of the network. */
    List<String> nets(Connection c) {
        List<String> nets = new ArrayList<>(2);
        for (TerminalRef end : List.of(c.from(), c.to())) {
            Placed p = component(end);
            if (p.bar() == null) {
                nets.add(p.anySpot() ? p.id() : end.toString());
            }
        }
        return nets;
    }

    private Placed component(TerminalRef end) {
        return Optional.ofNullable(placed.get(end.component())).orElseThrow();
    }

    double distance(Connection c) {
        Rect a = reach(component(c.from()), c.from());
        Rect b = reach(component(c.to()), c.to());
        double dx = Math.max(0, Math.max(a.minX() - b.maxX(), b.minX() - a.maxX()));
        double dy = Math.max(0, Math.max(a.minY() - b.maxY(), b.minY() - a.maxY()));
        return dx + dy;
    }

    private static Rect reach(Placed p, TerminalRef end) {
        Rect bar = p.bar();
        if (bar != null) {
            return bar;
        }
        return p.port(end.terminal())
                .map(q -> new Rect(q.x(), q.y(), q.x(), q.y()))
                .orElse(p.ink());
    }
}
