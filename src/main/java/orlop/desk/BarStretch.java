package orlop.desk;

import java.util.Optional;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Locked;
import orlop.drawing.Message;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.BarSpan;
import orlop.scene.Route;
import orlop.scene.Scene;

/**
 * One end of a bar that is being pulled: the other end stays, and no tap is left behind.
 *
 * @param bar its tag
 * @param lying whether it lies across the sheet
 * @param fixedMm where the other end is, along the bar
 * @param endMm where this end is now
 * @param lastTapMm the tap nearest to this end; the other end where nothing hangs on the bar
 */
public record BarStretch(String bar, boolean lying, double fixedMm, double endMm, double lastTapMm) {
    /** A bar's length goes in such steps, so that its ends and its middle stay on the grid. */
    private static final double STEP_MM = 2 * Arranging.GRID_MM;

    /**
     * The end of this bar that lies near a point; none if neither does, or if it is no bar.
     *
     * @param nearMm how near, 0 or more
     */
    public static Optional<BarStretch> at(Scene scene, String bar, double xMm, double yMm, double nearMm) {
        return scene.bars().stream()
                .filter(b -> b.component().equals(bar))
                .findFirst()
                .flatMap(b -> at(scene, b, xMm, yMm, nearMm));
    }

    private static Optional<BarStretch> at(Scene scene, BarSpan bar, double xMm, double yMm, double nearMm) {
        Rect r = bar.rect();
        boolean lying = r.width() >= r.height();
        double first = lying ? r.minX() : r.minY();
        double last = lying ? r.maxX() : r.maxY();
        double along = lying ? xMm : yMm;
        double aside = Math.abs(lying ? yMm - r.centreY() : xMm - r.centreX());
        boolean far = Math.abs(along - last) <= Math.abs(along - first);
        if (aside > nearMm + (lying ? r.height() : r.width()) / 2 || Math.abs(along - (far ? last : first)) > nearMm) {
            return Optional.empty();
        }
        double fixed = far ? first : last;
        return Optional.of(new BarStretch(
                bar.component(), lying, fixed, far ? last : first, lastTap(scene, bar, lying, far, fixed)));
    }

    private static double lastTap(Scene scene, BarSpan bar, boolean lying, boolean far, double none) {
        double most = none;
        for (Route w : scene.routes().values()) {
            for (boolean start : new boolean[] {true, false}) {
                if ((start ? w.from() : w.to()).component().equals(bar.component())) {
                    Point p = w.points().get(start ? 0 : w.points().size() - 1);
                    double at = lying ? p.xMm() : p.yMm();
                    most = far ? Math.max(most, at) : Math.min(most, at);
                }
            }
        }
        return most;
    }

    /** Where the ends are on the sheet, for the grips. */
    public static Point[] ends(Rect bar) {
        return bar.width() >= bar.height()
                ? new Point[] {new Point(bar.minX(), bar.centreY()), new Point(bar.maxX(), bar.centreY())}
                : new Point[] {new Point(bar.centreX(), bar.minY()), new Point(bar.centreX(), bar.maxY())};
    }

    /** The length it has when this end is pulled to a place along the bar, in steps that keep it on the grid. */
    public double lengthMm(double toMm) {
        double way = Math.signum(endMm - fixedMm);
        double asked = Math.max((toMm - fixedMm) * way, (lastTapMm - fixedMm) * way);
        double steps = Math.rint(asked / STEP_MM);
        if (steps * STEP_MM < (lastTapMm - fixedMm) * way) {
            steps++;
        }
        return Math.max(STEP_MM, Math.min(Distribution.Bar.MOST_DRAWN_MM, steps * STEP_MM));
    }

    /**
     * Pulls this end to a place along the bar. A locked bar refuses.
     *
     * @param mergeKey edits with equal keys are one step
     */
    public Edit to(double toMm, Object mergeKey) {
        double length = lengthMm(toMm);
        double middle = Arranging.onGrid(fixedMm + Math.signum(endMm - fixedMm) * length / 2);
        return Edit.merging(Message.of("desk.edit.stretch", bar), mergeKey, d -> stretched(d, length, middle));
    }

    private Drawing stretched(Drawing d, double length, double middle) {
        Component c = d.components().get(bar);
        if (c == null || !(c.particulars() instanceof Distribution.Bar longer)) {
            throw new Edit.Refusal(Message.of("drawing.refuse.gone", bar));
        }
        Locked.refuse(d, bar);
        Place p = c.place();
        Point at = lying ? new Point(middle, p.at().yMm()) : new Point(p.at().xMm(), middle);
        return d.with(c.withPlace(p.withAt(at)).withParticulars(longer.drawn(length)));
    }
}
