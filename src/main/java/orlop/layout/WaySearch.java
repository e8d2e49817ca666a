package orlop.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;

/**
 * The cheapest orthogonal way from one of several ports to one of several others: A* (Hart, Nilsson and Raphael, 1968)
 * over the lines of the 2.5 mm grid and those through the ports. A state is a place and the heading in which it was
 * reached, so that bends can be counted.
 */
final class WaySearch {
    private static final double PITCH = 2.5;
    private static final Heading[] HEADINGS = Heading.values();

    /** A way that was found, and its two ports. */
    record Found(Port start, Port end, List<Point> points) {}

    private record Open(int state, double estimate, long serial) implements Comparable<Open> {
        @Override
        public int compareTo(Open o) {
            int c = Double.compare(estimate, o.estimate);
            return c != 0 ? c : Long.compare(o.serial, serial); // of equals the latest: it is the deepest
        }
    }

    private final LegCost legs;
    private final List<Port> goals;
    private final Rect goalBox;
    private final double[] xs;
    private final double[] ys;
    private final double[] best;
    private final int[] before;
    private final double[] right;
    private final double[] down;
    private final int[] goalOf;
    private final byte[] corners; // 0 not asked yet, 1 free, 2 blocked
    private final PriorityQueue<Open> open = new PriorityQueue<>();
    private long serial;

    private WaySearch(LegCost legs, List<Port> starts, List<Port> goals, Rect area) {
        this.legs = legs;
        this.goals = goals;
        this.goalBox = boxAround(goals);
        List<Port> all = new ArrayList<>(starts);
        all.addAll(goals);
        xs = lines(area.minX(), area.maxX(), all.stream().map(Port::x).toList());
        ys = lines(area.minY(), area.maxY(), all.stream().map(Port::y).toList());
        int nodes = xs.length * ys.length;
        best = filled(nodes * 4, Double.POSITIVE_INFINITY);
        before = new int[nodes * 4];
        right = filled(nodes, Double.NaN);
        down = filled(nodes, Double.NaN);
        corners = new byte[nodes];
        goalOf = goalStates(nodes * 4);
    }

    /** The cheapest way within the area, if there is one. */
    static Optional<Found> find(LegCost legs, List<Port> starts, List<Port> goals, Rect area) {
        WaySearch s = new WaySearch(legs, starts, goals, area);
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
            best[state] = 0;
            before[state] = -1;
            open(state);
        }
        boolean[] done = new boolean[best.length];
        while (true) {
            Open next = open.poll();
            if (next == null) {
                return -1;
            }
            int state = next.state;
            if (done[state]) {
                continue;
            }
            done[state] = true;
            if (before[state] >= 0 && goalAt(state) != null) {
                return state;
            }
            expand(state);
        }
    }

    private void expand(int state) {
        Heading heading = HEADINGS[state & 3];
        for (Heading h : HEADINGS) {
            boolean turns = h != heading;
            if (h == heading.opposite() || (turns && (before[state] < 0 || cornerBlocked(state)))) {
                continue;
            }
            step(state, h, turns ? LegCost.BEND : 0);
        }
    }

    private boolean cornerBlocked(int state) {
        int node = state >> 2;
        if (corners[node] == 0) {
            corners[node] = (byte) (legs.cornerBlocked(xs[column(state)], ys[row(state)]) ? 2 : 1);
        }
        return corners[node] == 2;
    }

    private void step(int state, Heading h, double extra) {
        int i = column(state) + h.dx();
        int j = row(state) + h.dy();
        if (i < 0 || j < 0 || i >= xs.length || j >= ys.length) {
            return;
        }
        double cost = best[state] + extra + legCost(column(state), row(state), i, j, h);
        int to = state(i, j, h);
        if (cost < best[to] - 1e-9) {
            best[to] = cost;
            before[to] = state;
            open(to);
        }
    }

    private double legCost(int i1, int j1, int i2, int j2, Heading h) {
        double[] memo = h.horizontal() ? right : down;
        int at = Math.min(j1, j2) * xs.length + Math.min(i1, i2);
        if (Double.isNaN(memo[at])) {
            // Asked from the lower end always, so that the answer does not hang on who asked first.
            int i = Math.min(i1, i2);
            int j = Math.min(j1, j2);
            memo[at] = legs.leg(xs[i], ys[j], xs[Math.max(i1, i2)], ys[Math.max(j1, j2)]);
        }
        return memo[at];
    }

    private void open(int state) {
        double x = xs[column(state)];
        double y = ys[row(state)];
        double dx = Math.max(0, Math.max(goalBox.minX() - x, x - goalBox.maxX()));
        double dy = Math.max(0, Math.max(goalBox.minY() - y, y - goalBox.maxY()));
        open.add(new Open(state, best[state] + dx + dy + bends(state, dx, dy), serial++));
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
        return goalOf[state] == 0 ? null : goals.get(goalOf[state] - 1);
    }

    /** By state, the number of the goal that is reached in it, from 1; 0 for none. */
    private int[] goalStates(int states) {
        int[] of = new int[states];
        for (int n = goals.size(); n > 0; n--) {
            Port g = goals.get(n - 1);
            of[state(index(xs, g.x()), index(ys, g.y()), g.heading().opposite())] = n;
        }
        return of;
    }

    private Found found(int end, List<Port> starts) {
        List<Point> points = new ArrayList<>();
        int state = end;
        while (true) {
            points.add(new Point(xs[column(state)], ys[row(state)]));
            if (before[state] < 0) {
                break;
            }
            state = before[state];
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

    private static double[] filled(int size, double value) {
        double[] a = new double[size];
        Arrays.fill(a, value);
        return a;
    }

    private static double[] lines(double min, double max, List<Double> more) {
        TreeSet<Double> set = new TreeSet<>(more);
        for (long k = (long) Math.ceil(min / PITCH); k * PITCH <= max; k++) {
            set.add(k * PITCH);
        }
        return set.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
