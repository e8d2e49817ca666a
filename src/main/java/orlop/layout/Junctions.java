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
