package orlop.editor;

import java.awt.Graphics2D;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Message;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Scene;

/** Moves what is selected, on the grid. The drawing follows as a preview; at release it is one edit. */
final class MoveGesture implements Gesture {
    static final double GRID_MM = 2.5;

    private final SheetCanvas canvas;
    private final Session session;
    private final Set<String> components;
    private final Spot from;
    private final Object key = new Object();
    private double dx;
    private double dy;

    MoveGesture(SheetCanvas canvas, Set<String> selection, Spot from) {
        this.canvas = canvas;
        this.session = canvas.session();
        Drawing d = session.state().drawing();
        Set<String> ids = new LinkedHashSet<>(selection);
        ids.removeIf(id -> !d.components().contains(id));
        this.components = ids;
        this.from = from;
    }

    @Override
    public void dragged(Spot at) {
        double x = onGrid(at.xMm() - from.xMm());
        double y = onGrid(at.yMm() - from.yMm());
        if (x == dx && y == dy) {
            return;
        }
        dx = x;
        dy = y;
        if (components.isEmpty()) {
            return;
        }
        if (canvas.shown().fast()) {
            Optional<Message> refusal = session.preview(edit());
            canvas.hint(refusal.map(Texts::of).orElse(Texts.of("editor.hint.move")));
        }
        canvas.repaint();
    }

    private Edit edit() {
        return Edits.move(components, dx, dy, key);
    }

    @Override
    public void released(Spot at) {
        session.endPreview();
        if (!components.isEmpty() && (dx != 0 || dy != 0)) {
            session.apply(edit());
            session.seal();
        }
    }

    @Override
    public void backOut() {
        session.endPreview();
    }

    /** Where a big sheet would be too slow to be made anew at every step, outlines show where things will stand. */
    @Override
    public void paint(Graphics2D g) {
        if (session.state().preview() != null || (dx == 0 && dy == 0)) {
            return;
        }
        Optional<Scene> scene = canvas.scene();
        if (scene.isPresent()) {
            scene.get().items().stream()
                    .filter(i -> components.contains(i.subject()))
                    .filter(i -> i.role() == Role.COMPONENT || i.role() == Role.BAR)
                    .map(i -> i.bounds().moved(dx, dy))
                    .forEach((Rect r) -> Overlay.rubber(g, r, canvas.viewport().mm(1)));
        }
    }

    static double onGrid(double mm) {
        return Math.rint(mm / GRID_MM) * GRID_MM;
    }
}
