package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;
import orlop.findings.Finding;
import orlop.layout.Placed;
import orlop.layout.Rect;
import orlop.layout.Way;
import orlop.study.CableResult;

/**
 * Where a finding lies on the sheet.
 *
 * @param number its number in the list, from 1
 * @param finding the finding
 * @param target what it points at
 * @param proposal the device to be drawn in the line; null if none
 */
record FoundPlace(
        int number, Finding finding, Rect target, @Nullable Proposal proposal) {
    private static final double HALF_MM = 5;
    private static final double CORNER_MM = 5;

    /**
     * A device that is not there, standing in a leg of a cable.
     *
     * @param cable tag of the cable
     * @param at its middle
     * @param standing whether the leg runs up and down
     * @param cut what it takes out of the line
     */
    record Proposal(String cable, Point at, boolean standing, LineCutter.Cut cut) {}

    /** The findings that lie on this sheet, in the order of the list. */
    static List<FoundPlace> all(SheetView view, Rect drawable) {
        List<FoundPlace> places = new ArrayList<>();
        int number = 1;
        for (Finding f : view.request().findings()) {
            (f.place().item().isEmpty() ? whole(view, number, f, drawable) : of(view, number, f))
                    .ifPresent(places::add);
            number++;
        }
        return places;
    }

    /** A finding of the whole drawing stands in the upper right corner of its first sheet. */
    private static Optional<FoundPlace> whole(SheetView view, int number, Finding f, Rect drawable) {
        boolean first = view.drawing().sheets().stream()
                .findFirst()
                .filter(s -> s.id().equals(view.request().sheet()))
                .isPresent();
        Point corner = new Point(drawable.maxX() - CORNER_MM, drawable.minY() + CORNER_MM);
        return first ? Optional.of(new FoundPlace(number, f, Rect.around(corner, corner), null)) : Optional.empty();
    }

    private static Optional<FoundPlace> of(SheetView view, int number, Finding f) {
        Placed p = view.placed().get(f.place().item());
        if (p != null) {
            return Optional.of(new FoundPlace(number, f, p.ink(), null));
        }
        Way way = view.ways().get(f.place().item());
        if (way == null) {
            return Optional.empty();
        }
        double along = along(view, way, f.place());
        if (f.proposed() != null) {
            Proposal proposal = proposal(way, along);
            return Optional.of(new FoundPlace(number, f, body(proposal), proposal));
        }
        Point at = leg(way.points(), along).point;
        return Optional.of(new FoundPlace(number, f, Rect.around(at, at), null));
    }

    /** What the outline of a proposed device covers. */
    private static Rect body(Proposal p) {
        double w = p.standing ? 1.25 : 3.75;
        double h = p.standing ? 3.75 : 1.25;
        return Rect.around(p.at, p.at).grown(w + 0.25, h + 0.25);
    }

    /** Distance of the place from the way's first point, on the sheet. */
    private static double along(SheetView view, Way way, Finding.Place place) {
        double total = total(way.points());
        Double distance = place.distanceM();
        if (distance == null) {
            return middleOfLongest(way.points());
        }
        CableResult r = view.result(place.item());
        Double typed = Optional.ofNullable(view.drawing().cables().get(place.item()))
                .map(c -> c.lengthM())
                .orElse(null);
        double length = typed != null ? typed : r != null ? r.lengthM() : 0;
        double share = length > 0 ? Math.max(0, Math.min(1, distance / length)) : 0;
        return place.atFrom() ? share * total : (1 - share) * total;
    }

    private static double total(List<Point> points) {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += LineCutter.length(points.get(i - 1), points.get(i));
        }
        return sum;
    }

    private static double middleOfLongest(List<Point> points) {
        double longest = -1;
        double at = 0;
        double before = 0;
        for (int i = 1; i < points.size(); i++) {
            double leg = LineCutter.length(points.get(i - 1), points.get(i));
            if (leg > longest) {
                longest = leg;
                at = before + leg / 2;
            }
            before += leg;
        }
        return at;
    }

    private record OnLeg(int leg, double before, double length, Point point) {}

    private static OnLeg leg(List<Point> points, double along) {
        double before = 0;
        for (int i = 1; i < points.size(); i++) {
            double length = LineCutter.length(points.get(i - 1), points.get(i));
            if (along <= before + length + 1e-9 || i == points.size() - 1) {
                Point p = LineCutter.along(points.get(i - 1), points.get(i), along - before);
                return new OnLeg(i - 1, before, length, p);
            }
            before += length;
        }
        throw new IllegalArgumentException("a way has two points or more");
    }

    /** The device stands wholly in one leg: the one at the place, or the nearest that has room for it. */
    private static Proposal proposal(Way way, double along) {
        List<Point> points = way.points();
        OnLeg here = leg(points, along);
        OnLeg best = here;
        double nearest = Double.POSITIVE_INFINITY;
        double before = 0;
        for (int i = 1; i < points.size(); i++) {
            double length = LineCutter.length(points.get(i - 1), points.get(i));
            double away = Math.max(0, Math.max(before - along, along - before - length));
            if (length >= 2 * HALF_MM && away < nearest) {
                nearest = away;
                best = new OnLeg(i - 1, before, length, here.point);
            }
            before += length;
        }
        double half = Math.min(HALF_MM, best.length / 2);
        double middle = Math.max(half, Math.min(best.length - half, along - best.before));
        Point a = points.get(best.leg);
        Point b = points.get(best.leg + 1);
        LineCutter.Cut cut = new LineCutter.Cut(best.leg, middle - half, middle + half);
        return new Proposal(way.connection().id(), LineCutter.along(a, b, middle), a.xMm() == b.xMm(), cut);
    }
}
