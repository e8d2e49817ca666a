package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.Set;
import orlop.desk.BarStretch;
import orlop.drawing.Edit;
import orlop.drawing.Point;
import orlop.scene.BarSpan;
import orlop.scene.Scene;

/** Pulls one end of the bar that is selected. The drawing follows as a preview; at release it is one edit. */
final class StretchGesture extends EditGesture {
    private static final double GRIP_PX = 4.5;

    private final BarStretch stretch;
    private double to;
    private boolean pulled;

    private StretchGesture(SheetCanvas canvas, BarStretch stretch) {
        super(canvas);
        this.stretch = stretch;
        this.to = stretch.endMm();
    }

    /** The end of the selected bar under the mouse; none on anything else. */
    static Optional<BarStretch> end(SheetCanvas canvas, Optional<Scene> scene, Spot at) {
        return bar(canvas).flatMap(id -> scene.flatMap(s -> BarStretch.at(s, id, at.xMm(), at.yMm(), at.nearMm())));
    }

    static Optional<Gesture> at(SheetCanvas canvas, Spot at) {
        return end(canvas, canvas.scene(), at).map(e -> new StretchGesture(canvas, e));
    }

    private static Optional<String> bar(SheetCanvas canvas) {
        Set<String> selection = canvas.session().state().selection();
        return selection.size() == 1 ? Optional.of(selection.iterator().next()) : Optional.empty();
    }

    /** Small squares on the ends of the selected bar. */
    static void grips(Graphics2D g, SheetCanvas canvas, Scene scene, double pxMm) {
        String id = bar(canvas).orElse("");
        for (BarSpan b : scene.bars()) {
            if (b.component().equals(id)) {
                for (Point p : BarStretch.ends(b.rect())) {
                    grip(g, p, pxMm);
                }
            }
        }
    }

    private static void grip(Graphics2D g, Point p, double pxMm) {
        double r = GRIP_PX * pxMm;
        Rectangle2D square = new Rectangle2D.Double(p.xMm() - r, p.yMm() - r, 2 * r, 2 * r);
        g.setColor(Look.card());
        g.fill(square);
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke((float) (1.6 * pxMm)));
        g.draw(square);
    }

    @Override
    public void dragged(Spot at) {
        to = stretch.lying() ? at.xMm() : at.yMm();
        pulled = true;
        follow(() -> Texts.of("editor.hint.stretching", stretch.bar(), length()));
    }

    private String length() {
        return Long.toString(Math.round(stretch.lengthMm(to)));
    }

    @Override
    Edit edit() {
        return stretch.to(to, key);
    }

    @Override
    boolean changes() {
        return pulled;
    }

    /** A line shows how long the bar will be. */
    @Override
    void paintOver(Graphics2D g) {
        canvas.seen().stream()
                .flatMap(s -> s.bars().stream())
                .filter(b -> b.component().equals(stretch.bar()))
                .forEach(b -> {
                    double end =
                            stretch.fixedMm() + Math.signum(stretch.endMm() - stretch.fixedMm()) * stretch.lengthMm(to);
                    Point was = BarStretch.ends(b.rect())[0];
                    line(g, along(stretch.fixedMm(), was), along(end, was));
                });
    }

    /** A point on the bar's own line. */
    private Point along(double mm, Point was) {
        return stretch.lying() ? new Point(mm, was.yMm()) : new Point(was.xMm(), mm);
    }
}
