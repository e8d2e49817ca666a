package orlop.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;

/**
 * The cheapest orthogonal way from one of several ports to one of several others: A* (Hart, Nilsson and Raphael, 1968)
 * over the lines of the 2.5 mm grid and those through the ports. A state is a place and the heading in which it was
 * reached, so that bends can be counted.
 */
final class WaySearch {
    private static final Heading[] HEADINGS = Heading.values();

    /** After so many states without a goal it is looked whether there is any way. */
    private static final int LONG = 1_000;

    /** A way that was found, and its two ports. */
    record Found(Port start, Port end, List<Point> points) {}

    private final LegCost legs;
    private final List<Port> goals;
    private final Rect goalBox;
    private final double[] xs;
    private final double[] ys;
    private final int[] goalOf;
    private final SearchTables tables;

    private WaySearch(LegCost legs, List<Port> starts, List<Port> goals, Rect area, SearchTables tables) {
        this.legs = legs;
        this.goals = goals;
        this.goalBox = boxAround(goals);
        this.tables = tables;
        List<Port> all = new ArrayList<>(starts);
        all.addAll(goals);
        xs = lines(
                legs.pitchMm(),
                area.minX(),
                area.maxX(),
                all.stream().mapToDouble(Port::x).toArray());
        ys = lines(
                legs.pitchMm(),
                area.minY(),
                area.maxY(),
                all.stream().mapToDouble(Port::y).toArray());
        tables.begin(xs.length * ys.length);
        goalOf = new int[goals.size()];
        for (int n = 0; n < goalOf.length; n++) {
            Port g = goals.get(n);
            goalOf[n] = state(index(xs, g.x()), index(ys, g.y()), g.heading().opposite());
        }
    }

    /** The cheapest way within the area, if there is one. */
    static Optional<Found> find(LegCost legs, List<Port> starts, List<Port> goals, Rect area, SearchTables tables) {
        WaySearch s = new WaySearch(legs, starts, goals, area, tables);
        int end = s.run(starts);
        return end < 0 ? Optional.empty() : Optional.of(s.found(end, starts));
    }

    static Rect boxAround(List<Port> ports) {
        Rect r = new Rect(
                ports.get(0).x(),
                ports.get(0).y(),
                ports.get(0).x(),
                ports.get(0).y());
        for (Port p : ports) {
            r = r.union(new Rect(p.x(), p.y(), p.x(), p.y()));
        }
        return r;
    }

    private int run(List<Port> starts) {
        for (Port p : starts) {
            int state = state(index(xs, p.x()), index(ys, p.y()), p.heading());
            tables.reach(state, -1, 0);
            open(state);
        }
        for (int settled = 0; !tables.open.isEmpty(); ) {
            int state = tables.open.poll();
            if (!tables.settle(state)) {
                continue;
            }
            if (++settled == LONG && walledIn(starts)) {
                return -1;
            }
            if (tables.before(state) >= 0 && goalAt(state) != null) {
                return state;
            }
            expand(state);
        }
        return -1;
    }

    private boolean walledIn(List<Port> starts) {
        int[] from = starts.stream()
                .mapToInt(p -> state(index(xs, p.x()), index(ys, p.y()), p.heading()) >> 2)
                .toArray();
        return legs.canBeBlocked()
                && tables.goalSide.walledIn(
                        4 * xs.length * ys.length,
                        goalOf,
                        this::before,
                        s -> Arrays.stream(from).anyMatch(n -> n == s >> 2));
    }

    /** The states from which a state is reached by {@link #expand}; a start may be among them though it can't turn. */
    private void before(int state, GoalSide to) {
        Heading h = HEADINGS[state & 3];
        int i = column(state) - h.dx();
        int j = row(state) - h.dy();
        if (i < 0
                || j < 0
                || i >= xs.length
                || j >= ys.length
                || legCost(i, j, column(state), row(state), h) == LegCost.BLOCKED) {
            return;
        }
        int straight = state(i, j, h);
        boolean corner = cornerBlocked(straight);
        for (Heading from : HEADINGS) {
            if (from == h || (from != h.opposite() && !corner)) {
                to.add(state(i, j, from));
            }
        }
    }

    private void expand(int state) {
        Heading heading = HEADINGS[state & 3];
        boolean first = tables.before(state) < 0;
        for (Heading h : HEADINGS) {
            boolean turns = h != heading;
            if (h == heading.opposite() || (turns && (first || cornerBlocked(state)))) {
                continue;
            }
            step(state, h, turns ? LegCost.BEND : 0);
        }
    }

    private boolean cornerBlocked(int state) {
        int node = state >> 2;
        if (tables.corner(node) == 0) {
            tables.corner(node, legs.cornerBlocked(xs[column(state)], ys[row(state)]));
        }
        return tables.corner(node) == 2;
    }

    private void step(int state, Heading h, double extra) {
        int i = column(state) + h.dx();
        int j = row(state) + h.dy();
        if (i < 0 || j < 0 || i >= xs.length || j >= ys.length) {
            return;
        }
        double cost = tables.best(state) + extra + legCost(column(state), row(state), i, j, h);
        int to = state(i, j, h);
        if (cost < tables.best(to) - 1e-9) {
            tables.reach(to, state, cost);
            open(to);
        }
    }

    private double legCost(int i1, int j1, int i2, int j2, Heading h) {
        int i = Math.min(i1, i2);
        int j = Math.min(j1, j2);
        int at = j * xs.length + i;
        double known = tables.leg(at, h.horizontal());
        if (!Double.isNaN(known)) {
            return known;
        }
        // Asked from the lower end always, so that the answer does not hang on who asked first.
        double cost = legs.leg(xs[i], ys[j], xs[Math.max(i1, i2)], ys[Math.max(j1, j2)]);
        tables.leg(at, h.horizontal(), cost);
        return cost;
    }

    private void open(int state) {
        double x = xs[column(state)];
        double y = ys[row(state)];
        double dx = Math.max(0, Math.max(goalBox.minX() - x, x - goalBox.maxX()));
        double dy = Math.max(0, Math.max(goalBox.minY() - y, y - goalBox.maxY()));
        tables.open.add(state, tables.best(state) + dx + dy + bends(state, dx, dy));
    }

    /** What the bends cost at least that are still to come. */
    private double bends(int state, double dx, double dy) {
        Heading h = HEADINGS[state & 3];
        double aside = h.horizontal() ? dy : dx;
        double ahead = h.horizontal() ? dx : dy;
        double middle = h.horizontal() ? goalBox.centreX() - xs[column(state)] : goalBox.centreY() - ys[row(state)];
        boolean away = ahead > 0 && middle * (h.horizontal() ? h.dx() : h.dy()) < 0;
        return away ? 2 * LegCost.BEND : aside > 0 ? LegCost.BEND : 0;
    }

    private @Nullable Port goalAt(int state) {
        for (int n = 0; n < goalOf.length; n++) {
            if (goalOf[n] == state) {
                return goals.get(n);
            }
        }
        return null;
    }

    private Found found(int end, List<Port> starts) {
        List<Point> points = new ArrayList<>();
        int state = end;
        while (true) {
            points.add(new Point(xs[column(state)], ys[row(state)]));
            if (tables.before(state) < 0) {
                break;
            }
            state = tables.before(state);
        }
        Collections.reverse(points);
        int first = state;
        Port start = starts.stream()
                .filter(p -> state(index(xs, p.x()), index(ys, p.y()), p.heading()) == first)
                .findFirst()
                .orElseThrow();
        Port goal = goalAt(end);
        if (goal == null) {
            throw new IllegalStateException("a way ends at a goal");
        }
        return new Found(start, goal, Corners.merged(points));
    }

    private int state(int i, int j, Heading h) {
        int k = switch (h) {
            case UP -> 0;
            case RIGHT -> 1;
            case DOWN -> 2;
            case LEFT -> 3;
        };
        return (j * xs.length + i) * 4 + k;
    }

    private int column(int state) {
        return (state >> 2) % xs.length;
    }

    private int row(int state) {
        return (state >> 2) / xs.length;
    }

    private static int index(double[] lines, double value) {
        return Arrays.binarySearch(lines, value);
    }

    private static double[] lines(double pitch, double min, double max, double[] more) {
        long first = (long) Math.ceil(min / pitch);
        int n = (int) Math.max(0, (long) Math.floor(max / pitch) - first + 1);
        double[] all = Arrays.copyOf(more, more.length + n);
        for (int k = 0; k < n; k++) {
            all[more.length + k] = (first + k) * pitch;
        }
        return Arrays.stream(all).sorted().distinct().toArray();
    }
}
