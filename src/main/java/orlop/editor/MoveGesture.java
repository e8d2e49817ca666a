package orlop.editor;

import java.awt.Graphics2D;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.desk.Arranging;
import orlop.desk.Guides;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;

/**
 * Moves what is selected, on the grid. The drawing follows as a preview; at release it is one edit. Thin lines show what
 * comes to stand in line with something else.
 */
final class MoveGesture extends EditGesture {
    static final double GRID_MM = Arranging.GRID_MM;

    private final Set<String> movable;
    private final Optional<Guides> guides;
    private final Spot from;
    private double dx;
    private double dy;
    private boolean refused;
    private @Nullable MovingItems moving;

    MoveGesture(SheetCanvas canvas, Set<String> selection, Spot from) {
        super(canvas);
        Drawing d = session.state().drawing();
        Set<String> ids = new LinkedHashSet<>(selection);
        ids.removeIf(id -> !d.components().contains(id) && !d.notes().contains(id));
        this.movable = ids;
        this.guides = canvas.scene().map(s -> Guides.of(d, s, ids));
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
        if (movable.isEmpty()) {
            return;
        }
        refused = follow(() -> Texts.of("editor.hint.move")).isPresent();
    }

    @Override
    Edit edit() {
        return Edits.move(movable, dx, dy, key);
    }

    @Override
    boolean changes() {
        return !movable.isEmpty() && (dx != 0 || dy != 0);
    }

    /** The lines that are shown now. */
    List<Guides.Guide> guides() {
        boolean moved = dx != 0 || dy != 0;
        return moved && !refused ? guides.map(g -> g.at(dx, dy)).orElse(List.of()) : List.of();
    }

    @Override
    public void paint(Graphics2D g) {
        GuideLines.paint(g, guides(), canvas.viewport().mm(1));
        super.paint(g);
    }

    /** What moves. */
    @Override
    void paintOver(Graphics2D g) {
        if (refused) {
            return;
        }
        canvas.seen().ifPresent(scene -> {
            MovingItems m = moving;
            if (m == null || !m.of(scene)) {
                m = new MovingItems(session.state().drawing(), scene, movable);
                moving = m;
            }
            m.paint(g, dx, dy, canvas.viewport().mm(1));
        });
    }

    static double onGrid(double mm) {
        return Arranging.onGrid(mm);
    }
}
