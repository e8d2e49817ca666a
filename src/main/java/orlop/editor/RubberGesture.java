package orlop.editor;

import java.awt.Graphics2D;
import java.util.LinkedHashSet;
import java.util.Set;
import orlop.drawing.Point;
import orlop.layout.Rect;

/** Selects what lies wholly within a rectangle; with Shift, beside what is selected already. */
final class RubberGesture implements Gesture {
    private final SheetCanvas canvas;
    private final Set<String> before;
    private final Spot from;
    private Rect rect;

    RubberGesture(SheetCanvas canvas, Spot from) {
        this.canvas = canvas;
        this.before = from.shift() ? canvas.session().state().selection() : Set.of();
        this.from = from;
        this.rect = new Rect(from.xMm(), from.yMm(), from.xMm(), from.yMm());
    }

    @Override
    public void dragged(Spot at) {
        rect = Rect.around(new Point(from.xMm(), from.yMm()), new Point(at.xMm(), at.yMm()));
        Set<String> ids = new LinkedHashSet<>(before);
        canvas.scene().ifPresent(s -> s.itemsIn(rect).forEach(i -> ids.add(i.subject())));
        canvas.session().select(ids);
        canvas.repaint();
    }

    @Override
    public void released(Spot at) {
        canvas.repaint();
    }

    @Override
    public void backOut() {
        canvas.session().select(before);
    }

    @Override
    public void paint(Graphics2D g) {
        Overlay.rubber(g, rect, canvas.viewport().mm(1));
    }
}
