package orlop.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import orlop.drawing.Point;
import orlop.drawing.TerminalRef;

/**
 * Finds a way over the sheet for every cable and link.
 *
 * <p>Ways set by hand come first, then all that can run straight, then the others from the shortest to the longest. So a
 * way hangs on what is near it and shorter than it, and seldom on what is far away. The same input gives the same ways.
 */
public final class Router {
    private static final double REACH_MM = 40;
    private static final double EPS = 1e-6;

    private final Map<String, Placed> placed = new LinkedHashMap<>();
    private final Rect area;
    private final Obstacles obstacles = new Obstacles();
    private final Taps taps = new Taps();
    private final Map<String, Way> ways = new HashMap<>();

    private Router(List<Placed> components, Rect area, List<Rect> blocked) {
        this.area = area;
        for (Placed p : components) {
            placed.put(p.id(), p);
            obstacles.body(p.id(), p.ink());
            if (p.bar() == null) {
                obstacles.zone(LabelZone.of(p));
            }
        }
        for (Rect r : blocked) {
            obstacles.body("", r);
        }
    }

    /**
     * Ways for all connections that have both ends among the components; the others are left out.
     *
     * @param area within which the ways stay if they can
     * @param blocked blocks that they go round beside the components
     * @return by id of the connection, in the order given
     */
    public static Map<String, Way> route(
            List<Placed> components, List<Connection> connections, Rect area, List<Rect> blocked) {
        Router r = new Router(components, area, blocked);
        List<Connection> rest = new ArrayList<>();
        for (Connection c : connections) {
            if (r.placed.containsKey(c.from().component()) && r.placed.containsKey(c.to().component())) {
                rest.add(c);
            }
        }
        rest.removeIf(c -> !c.bends().isEmpty() && r.byHand(c));
        rest.sort(Comparator.comparingDouble(r::distance));
        rest.removeIf(r::straight);
        rest.forEach(r::search);
        Map<String, Way> ordered = new LinkedHashMap<>();
        for (Connection c : connections) {
            Way w = r.ways.get(c.id());
            if (w != null) {
                ordered.put(c.id(), w);
            }
        }
        return ordered;
    }

    private boolean byHand(Connection c) {
        Port start = nearest(ports(c.from(), c.to()), c.bends().get(0));
        Port end = nearest(ports(c.to(), c.from()), c.bends().get(c.bends().size() - 1));
        accept(c, start, end, Corners.through(start, c.bends(), end));
        return true;
    }

    private static Port nearest(List<Port> ports, Point p) {
        return ports.stream()
                .min(Comparator.comparingDouble(
                        q -> Math.abs(q.x() - p.xMm()) + Math.abs(q.y() - p.yMm()) + awayFrom(q, p)))
                .orElseThrow();
    }

    /** A port that looks away from a point is a bad end for a line from there. */
    private static double awayFrom(Port q, Point p) {
        double towards = (p.xMm() - q.x()) * q.heading().dx()
                + (p.yMm() - q.y()) * q.heading().dy();
        return towards > EPS ? 0 : LegCost.BEND;
    }

    private boolean straight(Connection c) {
        for (Port a : ports(c.from(), c.to())) {
            for (Port b : ports(c.to(), c.from())) {
                if (faceEachOther(a, b) && cost(c, a, b, false) < LegCost.BEND + length(a, b)) {
                    accept(c, a, b, List.of(new Point(a.x(), a.y()), new Point(b.x(), b.y())));
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean faceEachOther(Port a, Port b) {
        if (a.heading() != b.heading().opposite()) {
            return false;
        }
        double along = (b.x() - a.x()) * a.heading().dx()
                + (b.y() - a.y()) * a.heading().dy();
        double aside = a.heading().horizontal() ? b.y() - a.y() : b.x() - a.x();
        return along >= 0 && Math.abs(aside) < EPS;
    }

    private static double length(Port a, Port b) {
        return Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y());
    }

    private double cost(Connection c, Port a, Port b, boolean tolerant) {
        return legs(c, List.of(a), List.of(b), tolerant).leg(a.x(), a.y(), b.x(), b.y());
    }

    private void search(Connection c) {
        List<Port> starts = ports(c.from(), c.to());
        List<Port> goals = ports(c.to(), c.from());
        Optional<WaySearch.Found> simple = Shapes.simple(legs(c, starts, goals, false), starts, goals);
        if (simple.isPresent()) {
            accept(c, simple.get().start(), simple.get().end(), simple.get().points());
            return;
        }
        Rect box = WaySearch.boxAround(starts).union(WaySearch.boxAround(goals));
        Rect window = clipped(box.grown(REACH_MM), box);
        Optional<WaySearch.Found> found = WaySearch.find(legs(c, starts, goals, false), starts, goals, window);
        if (found.isEmpty()) {
            Rect all = area.union(box.grown(10));
            found = WaySearch.find(legs(c, starts, goals, false), starts, goals, all)
                    .or(() -> WaySearch.find(legs(c, starts, goals, true), starts, goals, all));
        }
        WaySearch.Found f = found.orElseGet(() -> direct(starts.get(0), goals.get(0)));
        accept(c, f.start(), f.end(), f.points());
    }

    private Rect clipped(Rect window, Rect least) {
        Rect limit = area.union(least.grown(5));
        return new Rect(
                Math.max(window.minX(), limit.minX()),
                Math.max(window.minY(), limit.minY()),
                Math.min(window.maxX(), limit.maxX()),
                Math.min(window.maxY(), limit.maxY()));
    }

    /** Two ends at one point: nothing to search for. */
    private static WaySearch.Found direct(Port a, Port b) {
        return new WaySearch.Found(a, b, Corners.through(a, List.of(), b));
    }

    private void accept(Connection c, Port start, Port end, List<Point> points) {
        ways.put(c.id(), new Way(c, start, end, points));
        obstacles.line(c.id(), nets(c), points);
        taps.take(c.from().component(), start);
        taps.take(c.to().component(), end);
    }

    private LegCost legs(Connection c, List<Port> starts, List<Port> goals, boolean tolerant) {
        Map<String, List<Rect>> exits = new HashMap<>();
        starts.forEach(p -> exits.computeIfAbsent(c.from().component(), k -> new ArrayList<>())
                .add(exit(c.from(), p)));
        goals.forEach(p -> exits.computeIfAbsent(c.to().component(), k -> new ArrayList<>())
                .add(exit(c.to(), p)));
        return new LegCost(obstacles, nets(c), exits, tolerant);
    }

    /** The corridor in which a line may be near its own component: from the port straight out until it is clear. */
    private Rect exit(TerminalRef end, Port p) {
        double far = component(end).exitMm(p) + Obstacles.CLEARANCE_MM + Taps.PITCH_MM;
        Point to = new Point(p.x() + p.heading().dx() * far, p.y() + p.heading().dy() * far);
        return Rect.around(new Point(p.x(), p.y()), to).grown(EPS);
    }

    /** Connections that share one of these may meet on the way: they belong to one point of the network. */
    private List<String> nets(Connection c) {
        List<String> nets = new ArrayList<>();
        for (TerminalRef end : List.of(c.from(), c.to())) {
            Placed p = component(end);
            if (p.bar() == null) {
                nets.add(p.anySpot() ? p.id() : end.toString());
            }
        }
        return nets;
    }

    /** Where a line can end, the spots of a bar straight across from the other end's ports included. */
    private List<Port> ports(TerminalRef end, TerminalRef other) {
        Placed p = component(end);
        Rect bar = p.bar();
        if (bar != null) {
            Placed q = component(other);
            return taps.free(p, bar, end, q.bar() == null ? ports(other, end) : List.of());
        }
        Optional<Port> own = p.port(end.terminal());
        if (own.isPresent() && !p.anySpot()) {
            return List.of(own.get());
        }
        List<Port> free = p.ports().stream().filter(q -> !taps.taken(p.id(), q)).toList();
        return free.isEmpty() ? p.ports() : free;
    }

    private Placed component(TerminalRef end) {
        return Optional.ofNullable(placed.get(end.component())).orElseThrow();
    }

    private double distance(Connection c) {
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
