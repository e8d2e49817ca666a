package orlop.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import orlop.drawing.Point;
import orlop.layout.Labeller;
import orlop.layout.Rect;
import orlop.layout.Way;

/** Where the small signs of a cable stand in its line: on nothing else, or else they are left out. */
final class LineSigns {
    private static final double STEP_MM = 1.25;
    private static final double LEAST_MM = 1.5; // from a corner, an end or a gap
    private static final double CROSS_EVERY_MM = 10;
    private static final double CROSS_LONG_MM = 2;

    private final Labeller sheet;

    LineSigns(SheetComposer.Composed composed) {
        this.sheet = composed.labeller();
    }

    /** The strokes of a cable's conductors, and crosses where it is to be removed. */
    List<Mark> of(Way way, List<LineCutter.Cut> cuts, int conductors, boolean removed, Ink ink) {
        List<Mark> marks = new ArrayList<>();
        List<Rect> own = new ArrayList<>();
        if (conductors > 0) {
            strokes(marks, own, way, cuts, conductors, ink);
        }
        if (removed) {
            crosses(marks, own, way, cuts, ink);
        }
        return marks;
    }

    private void strokes(List<Mark> marks, List<Rect> own, Way way, List<LineCutter.Cut> cuts, int count, Ink ink) {
        double length = Strokes.length(count);
        for (Spot s : spots(way, cuts, length)) {
            Rect r = s.rect(length);
            if (free(r, way, own)) {
                marks.addAll(Strokes.marks(s.x, s.y, s.lying, count, ink));
                own.add(r);
                return;
            }
        }
    }

    private void crosses(List<Mark> marks, List<Rect> own, Way way, List<LineCutter.Cut> cuts, Ink ink) {
        for (Spot s : spots(way, cuts, CROSS_LONG_MM)) {
            Rect r = s.rect(CROSS_LONG_MM);
            boolean apart =
                    own.stream().noneMatch(o -> o.grown(CROSS_EVERY_MM / 2).overlaps(r));
            if (apart && free(r, way, own)) {
                marks.addAll(Strokes.cross(s.x, s.y, ink));
                own.add(r);
            }
        }
    }

    /** A place on a leg of a line. */
    private record Spot(double x, double y, boolean lying) {
        Rect rect(double length) {
            double w = lying ? length : 2 * Strokes.REACH_MM;
            double h = lying ? 2 * Strokes.REACH_MM : length;
            return Rect.of(x - w / 2, y - h / 2, w, h);
        }
    }

    /**
     * All places with room for a sign of this length: the longest legs first, and on each what is nearest to the name in the
     * line, or else to the middle.
     */
    private static List<Spot> spots(Way way, List<LineCutter.Cut> cuts, double length) {
        List<Spot> spots = new ArrayList<>();
        List<Point> points = way.points();
        List<Integer> legs = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            legs.add(i);
        }
        legs.sort((i, j) -> Double.compare(legLength(points, j), legLength(points, i)));
        for (int leg : legs) {
            Point a = points.get(leg);
            Point b = points.get(leg + 1);
            for (double at : distances(legLength(points, leg), leg, cuts, length / 2 + LEAST_MM)) {
                Point p = LineCutter.along(a, b, at);
                spots.add(new Spot(p.xMm(), p.yMm(), a.yMm() == b.yMm()));
            }
        }
        return spots;
    }

    private static List<Double> distances(double legMm, int leg, List<LineCutter.Cut> cuts, double half) {
        List<LineCutter.Cut> here = cuts.stream().filter(c -> c.leg() == leg).toList();
        double best =
                here.stream().findFirst().map(c -> (c.from() + c.to()) / 2).orElse(legMm / 2);
        List<Double> all = new ArrayList<>();
        for (double at = half; at <= legMm - half; at += STEP_MM) {
            double d = at;
            if (here.stream().noneMatch(c -> d + half > c.from() && d - half < c.to())) {
                all.add(d);
            }
        }
        all.sort(Comparator.comparingDouble(d -> Math.abs(d - best)));
        return all;
    }

    private static double legLength(List<Point> points, int leg) {
        return LineCutter.length(points.get(leg), points.get(leg + 1));
    }

    private boolean free(Rect r, Way way, List<Rect> own) {
        Rect room = r.grown(0.3);
        for (Rect o : own) {
            if (room.overlaps(o)) {
                return false;
            }
        }
        return sheet.free(room, way.connection().id());
    }
}
