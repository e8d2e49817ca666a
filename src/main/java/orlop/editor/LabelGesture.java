package orlop.editor;

import java.awt.Graphics2D;
import orlop.desk.HandSet;
import orlop.drawing.Edit;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.SceneItem;

/** Moves the label of a component or cable to where a person wants it. At release it is one edit. */
final class LabelGesture extends EditGesture {
    /** Labels need no grid; whole steps keep the numbers in the file short. */
    private static final double STEP_MM = 0.25;

    private final String item;
    private final Rect was;
    private final Spot from;
    private double dx;
    private double dy;

    LabelGesture(SheetCanvas canvas, SceneItem label, Spot from) {
        super(canvas);
        this.item = label.subject();
        this.was = label.bounds();
        this.from = from;
    }

    @Override
    public void dragged(Spot at) {
        dx = step(at.xMm() - from.xMm());
        dy = step(at.yMm() - from.yMm());
        follow(() -> Texts.of("editor.hint.label"));
    }

    private static double step(double mm) {
        return Math.rint(mm / STEP_MM) * STEP_MM;
    }

    @Override
    Edit edit() {
        return HandSet.moveLabel(item, new Point(step(was.minX()) + dx, step(was.minY()) + dy), key);
    }

    @Override
    boolean changes() {
        return dx != 0 || dy != 0;
    }

    /** An outline shows where it will stand. */
    @Override
    void paintOver(Graphics2D g) {
        Overlay.rubber(g, was.moved(dx, dy), canvas.viewport().mm(1));
    }
}
