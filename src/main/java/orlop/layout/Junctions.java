package orlop.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Point;

/** Where lines that belong together meet: three ends or more get a dot, crossings get none. */
public final class Junctions {
    private Junctions() {}

    /**
     * The dots of all ways that meet at terminals.
     *
     * @return by way's id: a dot belongs to the first way that runs through it
     */
    public static Map<Point, String> dots(Collection<Way> ways, Collection<Placed> components) {
        Map<String, Placed> placed = new LinkedHashMap<>();
        components.forEach(p -> placed.put(p.id(), p));
        Map<String, List<Way>> nets = new LinkedHashMap<>();
        for (Way w : ways) {
            net(nets, placed, w, w.start());
            net(nets, placed, w, w.end());
        }
        Map<Point, String> dots = new LinkedHashMap<>();
        nets.values().stream().filter(l -> l.size() > 1).forEach(l -> meet(l, dots));
        return dots;
    }

    /**
     * The pieces that ways share at a terminal, so that each is drawn once.
     *
     * @param ways the first that runs through a piece draws it
     * @return by id of a way, how much of it others draw
     */
    public static Map<String, Shared> shared(Collection<Way> ways) {
        Map<Point, List<Way>> at = new LinkedHashMap<>();
        Map<String, Shared> shared = new LinkedHashMap<>();
        for (Way w : ways) {
            double start = sharedFrom(w, 0, 1, at);
            int last = w.points().size() - 1;
            double end = sharedFrom(w, last, last - 1, at);
            if (start > 0 || end > 0) {
                shared.put(w.connection().id(), new Shared(start, end));
            }
            at.computeIfAbsent(w.points().get(0), k -> new ArrayList<>()).add(w);
            at.computeIfAbsent(w.points().get(last), k -> new ArrayList<>()).add(w);
        }
        return shared;
    }

    /** How much of a way's first leg and of its last others draw, mm from its end. */
    public record Shared(double startMm, double endMm) {}

    private static double sharedFrom(Way w, int first, int next, Map<Point, List<Way>> at) {
        Point p = w.points().get(first);
        Point q = w.points().get(next);
        double most = 0;
        for (Way o : at.getOrDefault(p, List.of())) {
            int last = o.points().size() - 1;
            if (o.points().get(0).equals(p)) {
                most = Math.max(most, common(p, q, o.points().get(1)));
            }
            if (o.points().get(last).equals(p)) {
                most = Math.max(most, common(p, q, o.points().get(last - 1)));
            }
        }
        return most;
    }

    /** Length of the common piece of two legs that start at one point. */
    private static double common(Point p, Point a, Point b) {
        boolean same = !p.equals(a) && !p.equals(b) && heading(p, a) == heading(p, b);
        double la = Math.abs(a.xMm() - p.xMm()) + Math.abs(a.yMm() - p.yMm());
        double lb = Math.abs(b.xMm() - p.xMm()) + Math.abs(b.yMm() - p.yMm());
        return same ? Math.min(la, lb) : 0;
    }

    private static void net(Map<String, List<Way>> nets, Map<String, Placed> placed, Way w, Port p) {
        Placed c = placed.get(p.terminal().component());
        if (c != null && c.bar() == null) {
            nets.computeIfAbsent(p.terminal().component() + "@" + p.x() + "@" + p.y(), k -> new ArrayList<>())
                    .add(w);
        }
    }

    private static void meet(List<Way> net, Map<Point, String> dots) {
        for (Way w : net) {
            for (Point p : w.points()) {
                Set<Heading> ends = EnumSet.noneOf(Heading.class);
                net.forEach(other -> ends(other, p, ends));
                if (ends.size() >= 3) {
                    dots.putIfAbsent(p, w.connection().id());
                }
            }
        }
    }

    /** Adds the ways in which a line, or the component behind its end, leaves a point. */
    private static void ends(Way w, Point p, Set<Heading> ends) {
        List<Point> points = w.points();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (!a.equals(b) && Rect.around(a, b).contains(p.xMm(), p.yMm())) {
                Heading h = heading(a, b);
                if (!p.equals(b)) {
                    ends.add(h);
                }
                if (!p.equals(a)) {
                    ends.add(h.opposite());
                }
            }
        }
        for (Port q : List.of(w.start(), w.end())) {
            if (q.x() == p.xMm() && q.y() == p.yMm()) {
                ends.add(q.heading().opposite());
            }
        }
    }

    private static Heading heading(Point a, Point b) {
        if (a.xMm() == b.xMm()) {
            return b.yMm() > a.yMm() ? Heading.DOWN : Heading.UP;
        }
        return b.xMm() > a.xMm() ? Heading.RIGHT : Heading.LEFT;
    }
}
