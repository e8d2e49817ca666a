package orlop.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;
import orlop.findings.Finding;
import orlop.layout.Placed;
import orlop.layout.Rect;
import orlop.layout.Way;
import orlop.study.CableResult;

/**
 * Where a finding lies on the sheet.
 *
 * @param index its place in the list that was asked for, from 1
 * @param number the number that it bears on the sheet, from 1: by height, then from the left; last what has no place
 * @param finding the finding
 * @param target what it points at
 * @param proposal the device to be drawn in the line; null if none
 * @param key unique on the sheet, and the same as long as rule and item are, whatever number it bears; "" before numbering
 */
record FoundPlace(
        int index,
        int number,
        Finding finding,
        Rect target,
        @Nullable Proposal proposal,
        String key) {
    private FoundPlace(int index, Finding finding, Rect target, @Nullable Proposal proposal) {
        this(index, 0, finding, target, proposal, "");
    }

    private static final double HALF_MM = 5;
    private static final double CORNER_MM = 5;
    private static final double BETWEEN_MM = 8;
    private static final Rect NOWHERE = new Rect(0, 0, 0, 0);

    /**
     * A device that is not there, standing in a leg of a cable.
     *
     * @param cable tag of the cable
     * @param at its middle
     * @param standing whether the leg runs up and down
     * @param cut what it takes out of the line
     */
    record Proposal(String cable, Point at, boolean standing, LineCutter.Cut cut) {}

    /** The findings that belong to this sheet, in the order of their numbers. */
    static List<FoundPlace> all(SheetView view, Rect drawable) {
        List<FoundPlace> places = new ArrayList<>();
        List<FoundPlace> nowhere = new ArrayList<>();
        int index = 1;
        for (Finding f : view.request().findings()) {
            if (sheet(view.drawing(), f).equals(view.request().sheet())) {
                FoundPlace p = of(view, index, f);
                (p.target.equals(NOWHERE) ? nowhere : places).add(p);
            }
            index++;
        }
        places.sort(Comparator.<FoundPlace>comparingDouble(p -> Math.rint(p.target.centreY()))
                .thenComparingDouble(p -> p.target.centreX())
                .thenComparingInt(FoundPlace::index));
        places.addAll(inRow(nowhere, drawable)); // what speaks of the whole drawing comes after what can be pointed at
        List<FoundPlace> numbered = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (FoundPlace p : places) {
            String key = p.finding.rule() + "@" + p.finding.place().item();
            while (!keys.add(key)) {
                key += "+";
            }
            numbered.add(new FoundPlace(p.index, numbered.size() + 1, p.finding, p.target, p.proposal, key));
        }
        return numbered;
    }

    /**
     * Id of the sheet to which a finding belongs: that of its component, or of both ends of its cable or link; the first one
     * for the whole drawing and for what lies on no single sheet, so that no finding is left out.
     */
    private static String sheet(Drawing d, Finding f) {
        String item = f.place().item();
        Component c = d.components().get(item);
        String sheet = c == null ? "" : c.place().sheet();
        Cable w = d.cables().get(item);
        Link l = d.links().get(item);
        if (w != null) {
            sheet = common(d, w.from(), w.to());
        } else if (l != null) {
            sheet = common(d, l.from(), l.to());
        }
        return d.sheets().contains(sheet)
                ? sheet
                : d.sheets().stream().findFirst().map(Sheet::id).orElse("");
    }

    private static String common(Drawing d, TerminalRef from, TerminalRef to) {
        Component a = d.components().get(from.component());
        Component b = d.components().get(to.component());
        if (a == null || b == null || !a.place().sheet().equals(b.place().sheet())) {
            return "";
        }
        return a.place().sheet();
    }

    /** Sets what has no place of its own side by side in the upper right corner. */
    private static List<FoundPlace> inRow(List<FoundPlace> nowhere, Rect drawable) {
        int left = nowhere.size();
        List<FoundPlace> all = new ArrayList<>();
        for (FoundPlace p : nowhere) {
            Point at = new Point(drawable.maxX() - CORNER_MM - BETWEEN_MM * --left, drawable.minY() + CORNER_MM);
            all.add(new FoundPlace(p.index, p.finding, Rect.around(at, at), null));
        }
        return all;
    }

    /** At its item; what is not drawn has no place yet. */
    private static FoundPlace of(SheetView view, int index, Finding f) {
        Placed p = view.placed().get(f.place().item());
        if (p != null) {
            return new FoundPlace(index, f, p.ink(), null);
        }
        Way way = view.ways().get(f.place().item());
        if (way == null) {
            return new FoundPlace(index, f, NOWHERE, null);
        }
        double along = along(view, way, f.place());
        if (f.proposed() != null) {
            Proposal proposal = proposal(way, along);
            return new FoundPlace(index, f, body(proposal), proposal);
        }
        Point at = leg(way.points(), along).point;
        return new FoundPlace(index, f, Rect.around(at, at), null);
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
