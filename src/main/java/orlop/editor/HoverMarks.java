package orlop.editor;

import java.awt.Graphics2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/**
 * The terminals of the component under the mouse, so that nobody has to guess where a cable begins; the one that a drag
 * would begin at is filled.
 */
final class HoverMarks {
    private static final double NEAR_MM = 0.1;

    private final SheetCanvas canvas;
    private @Nullable TerminalSpot begin;
    private @Nullable String component;

    HoverMarks(SheetCanvas canvas) {
        this.canvas = canvas;
    }

    /** @param id of what lies under the mouse, null for nothing */
    void at(Optional<TerminalSpot> terminal, @Nullable String id) {
        TerminalSpot was = begin;
        begin = terminal.orElse(null);
        component = begin == null ? id : begin.terminal().component();
        if (was != null || begin != null) {
            canvas.repaint();
        }
    }

    void none() {
        at(Optional.empty(), null);
    }

    void paint(Graphics2D g, Scene scene, double pxMm) {
        for (TerminalSpot t : scene.terminals()) {
            if (t.terminal().component().equals(component) && !t.equals(begin)) {
                Overlay.terminal(g, t, false, pxMm * 0.75);
            }
        }
        if (begin != null && stands(scene, begin)) {
            Overlay.terminal(g, begin, true, pxMm * 0.85);
        }
    }

    /** What was under the mouse may have been deleted or moved by a key since. */
    private static boolean stands(Scene scene, TerminalSpot t) {
        return scene.terminalNear(t.xMm(), t.yMm(), NEAR_MM)
                .filter(now -> now.terminal().component().equals(t.terminal().component()))
                .isPresent();
    }
}
