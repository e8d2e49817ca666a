package orlop.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;

/**
 * Finds a way over the sheet for every cable and link.
 *
 * <p>Ways set by hand come first, then all that can run straight, then the others from the shortest to the longest. So a
 * way hangs on what is near it and shorter than it, and seldom on what is far away. The same input gives the same ways.
 *
 * <p>With an earlier routing at hand, a way is kept whose ends are as they were and in whose surroundings nothing has
 * changed; the result is the same as without it, only quicker.
 */
public final class Router {
    private static final double REACH_MM = 40;
    private static final double EPS = 1e-6;

    private final Rect area;
    private final Obstacles obstacles;
    private final Ends ends;
    private final Replay replay;
    private final SearchTables tables = new SearchTables();
    private final Map<String, Routing.Step> steps = new HashMap<>();

    private Router(Map<String, Placed> placed, TapPlan plan, Rect area, List<Rect> blocked, Replay replay) {
        this.area = area;
        this.replay = replay;
        obstacles = new Obstacles(area);
        ends = new Ends(placed, plan);
        for (Placed p : placed.values()) {
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
        return route(components, connections, area, blocked, null).ways();
    }

    /**
     * The same ways as {@link #route(List, List, Rect, List)}, and what is needed to find them quickly after a change.
     *
     * @param before an earlier routing of nearly the same; null if there is none
     */
    public static Routing route(
            List<Placed> components,
            List<Connection> connections,
            Rect area,
            List<Rect> blocked,
            @Nullable Routing before) {
        Map<String, Placed> placed = new LinkedHashMap<>();
        components.forEach(p -> placed.put(p.id(), p));
        List<Connection> here = new ArrayList<>();
        for (Connection c : connections) {
            if (placed.containsKey(c.from().component()) && placed.containsKey(c.to().component())) {
                here.add(c);
            }
        }
        if (before != null && before.question().asks(placed, here, area, blocked)) {
            return before;
        }
        TapPlan plan = TapPlan.of(placed, here);
        Routing.Question question = new Routing.Question(placed, here, plan, area, List.copyOf(blocked));
        Router r = new Router(placed, plan, area, blocked, Replay.of(before, question));
        return new Routing(question, r.all(here));
    }

    private Map<String, Routing.Step> all(List<Connection> connections) {
        Map<Integer, Connection> rest = new TreeMap<>();
        for (int i = 0; i < connections.size(); i++) {
            Connection c = connections.get(i);
            if (c.bends().isEmpty()) {
                rest.put(i, c);
            } else {
                byHand(c);
            }
        }
        List<Connection> queue = shortestFirst(rest);
        queue.removeIf(this::straight);
        // What leads from a bar to beyond its end, the farthest first: see Fans.
        List<Connection> beyond = new ArrayList<>(queue.stream()
                .filter(c -> ends.isKept(c, c.from()) || ends.isKept(c, c.to()))
                .toList());
        beyond.sort(Comparator.comparingInt(ends::rank));
        queue.removeAll(beyond);
        beyond.forEach(this::search);
        queue.forEach(this::search);
        Map<String, Routing.Step> ordered = new LinkedHashMap<>();
        for (Connection c : connections) {
            ordered.put(c.id(), Optional.ofNullable(steps.get(c.id())).orElseThrow());
        }
        return ordered;
    }

    private List<Connection> shortestFirst(Map<Integer, Connection> connections) {
        record Far(Connection connection, double distance) {}
        List<Far> all = new ArrayList<>();
        connections.values().forEach(c -> all.add(new Far(c, ends.distance(c))));
        all.sort(Comparator.comparingDouble(Far::distance));
        return new ArrayList<>(all.stream().map(Far::connection).toList());
    }

    private void byHand(Connection c) {
        Routing.Step kept = replay.kept(c);
        if (kept != null) {
            accept(c, kept);
            return;
        }
        Seen seen = new Seen();
        Ends.Pair pair = ends.of(c, seen);
        Point first = c.bends().get(0);
        Point last = c.bends().get(c.bends().size() - 1);
        Port start = ends.across(c.from(), first).orElseGet(() -> nearest(pair.starts(), first));
        Port end = ends.across(c.to(), last).orElseGet(() -> nearest(pair.goals(), last));
        accept(c, start, end, Corners.through(start, c.bends(), end), true, seen);
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
        Routing.Step kept = replay.kept(c);
        if (kept != null) {
            if (kept.straight()) {
                accept(c, kept);
            }
            return kept.straight();
        }
        Seen seen = new Seen();
        Ends.Pair pair = ends.of(c, seen);
        for (Port a : pair.starts()) {
            for (Port b : pair.goals()) {
                if (faceEachOther(a, b) && cost(c, a, b, seen) < LegCost.BEND + length(a, b)) {
                    accept(c, a, b, List.of(new Point(a.x(), a.y()), new Point(b.x(), b.y())), true, seen);
                    return true;
                }
            }
        }
        replay.notStraight(c);
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

    private double cost(Connection c, Port a, Port b, Seen seen) {
        return legs(c, new Ends.Pair(List.of(a), List.of(b)), seen, LegCost.Care.FULL)
                .leg(a.x(), a.y(), b.x(), b.y());
    }

    private void search(Connection c) {
        Routing.Step kept = replay.kept(c);
        if (kept != null && !kept.straight()) {
            accept(c, kept);
            return;
        }
        Seen seen = new Seen();
        Ends.Pair pair = ends.of(c, seen);
        // The trial as a straight line is a part of the decision too.
        for (Port a : pair.starts()) {
            pair.goals().stream().filter(b -> faceEachOther(a, b)).forEach(b -> cost(c, a, b, seen));
        }
        WaySearch.Found f = ends.planned(c, seen)
                .flatMap(p -> fan(c, p, seen).or(() -> open(c, p, seen)))
                .or(() -> open(c, pair, seen))
                .or(() -> within(c, pair, seen))
                .orElseGet(() -> direct(pair.starts().get(0), pair.goals().get(0)));
        accept(c, f.start(), f.end(), f.points(), false, seen);
    }

    private Optional<WaySearch.Found> fan(Connection c, Ends.Pair pair, Seen seen) {
        if (pair.starts().size() != 1 || pair.goals().size() != 1) {
            return Optional.empty();
        }
        boolean fromBar = ends.isKept(c, c.from());
        // Half as clear of the bar's own box, so that there is room for some of them between it and what hangs below.
        LegCost legs = legs(c, pair, seen, LegCost.Care.HALF);
        return Fans.find(legs, pair.starts().get(0), pair.goals().get(0), fromBar);
    }

    /** A way that keeps clear of everything. */
    private Optional<WaySearch.Found> open(Connection c, Ends.Pair pair, Seen seen) {
        List<Port> starts = pair.starts();
        List<Port> goals = pair.goals();
        LegCost legs = legs(c, pair, seen, LegCost.Care.FULL);
        return Shapes.simple(legs, starts, goals)
                .or(() -> WaySearch.find(legs, starts, goals, window(pair), tables))
                .or(() -> WaySearch.find(legs, starts, goals, everywhere(pair), tables));
    }

    /** Where there is none: one that keeps less clear, or goes through what blocks. */
    private Optional<WaySearch.Found> within(Connection c, Ends.Pair pair, Seen seen) {
        List<Port> starts = pair.starts();
        List<Port> goals = pair.goals();
        LegCost half = legs(c, pair, seen, LegCost.Care.HALF);
        LegCost none = legs(c, pair, seen, LegCost.Care.NONE);
        return WaySearch.find(half, starts, goals, window(pair), tables)
                .or(() -> WaySearch.find(none, starts, goals, window(pair), tables))
                .or(() -> WaySearch.find(none, starts, goals, everywhere(pair), tables));
    }

    private static Rect box(Ends.Pair pair) {
        return WaySearch.boxAround(pair.starts()).union(WaySearch.boxAround(pair.goals()));
    }

    private Rect window(Ends.Pair pair) {
        return clipped(box(pair).grown(REACH_MM), box(pair));
    }

    private Rect everywhere(Ends.Pair pair) {
        return area.union(box(pair).grown(10));
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

    private void accept(Connection c, Port start, Port end, List<Point> points, boolean straight, Seen seen) {
        Routing.Step step = new Routing.Step(new Way(c, start, end, points), straight, seen.rect());
        accept(c, step);
        replay.found(c.id(), step.way());
    }

    private void accept(Connection c, Routing.Step step) {
        Way w = step.way();
        steps.put(c.id(), step);
        obstacles.line(c.id(), ends.nets(c), w.points());
        ends.take(w);
    }

    private LegCost legs(Connection c, Ends.Pair pair, Seen seen, LegCost.Care care) {
        return new LegCost(obstacles, ends.nets(c), ends.exits(c, pair), seen, care);
    }
}
