package orlop.editor;

import java.awt.Graphics2D;
import java.util.Optional;
import orlop.desk.HandSet;
import orlop.desk.Session;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.SceneItem;

/** Moves the label of a component or cable to where a person wants it. At release it is one edit. */
final class LabelGesture implements Gesture {
    /** Labels need no grid; whole steps keep the numbers in the file short. */
    private static final double STEP_MM = 0.25;

    private final SheetCanvas canvas;
    private final Session session;
    private final String item;
    private final Rect was;
    private final Spot from;
    private final Object key = new Object();
    private double dx;
    private double dy;

    LabelGesture(SheetCanvas canvas, SceneItem label, Spot from) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.item = label.subject();
        this.was = label.bounds();
        this.from = from;
    }

    @Override
    public void dragged(Spot at) {
        dx = step(at.xMm() - from.xMm());
        dy = step(at.yMm() - from.yMm());
        if (canvas.shown().fast()) {
            Optional<Message> refusal = session.preview(edit());
            canvas.hint(refusal.map(Texts::of).orElseGet(() -> Texts.of("editor.hint.label")));
        }
        canvas.repaint();
    }

    private static double step(double mm) {
        return Math.rint(mm / STEP_MM) * STEP_MM;
    }

    private Edit edit() {
        return HandSet.moveLabel(item, new Point(step(was.minX()) + dx, step(was.minY()) + dy), key);
    }

    @Override
    public void released(Spot at) {
        session.endPreview();
        if (dx != 0 || dy != 0) {
            session.apply(edit());
            session.seal();
        }
    }

    @Override
    public void backOut() {
        session.endPreview();
    }

    /** Where a big sheet would be too slow to be made anew at every step, an outline shows where it will stand. */
    @Override
    public void paint(Graphics2D g) {
        if (session.state().preview() == null && (dx != 0 || dy != 0)) {
            Overlay.rubber(g, was.moved(dx, dy), canvas.viewport().mm(1));
        }
    }
}
