package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import orlop.desk.Session;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.drawing.Point;

/**
 * A drag that comes to one edit. The drawing follows it as a preview; where a big sheet would be too slow to be made anew
 * at every step, something is painted over it instead.
 */
abstract class EditGesture implements Gesture {
    final SheetCanvas canvas;
    final Session session;
    /** Makes one step of the history of all that this drag does. */
    final Object key = new Object();

    EditGesture(SheetCanvas canvas) {
        this.canvas = canvas;
        this.session = canvas.session();
    }

    /** What comes of it if it is let go now. */
    abstract Edit edit();

    /** Whether anything would change. */
    abstract boolean changes();

    /** Shows over the sheet what comes of it. */
    abstract void paintOver(Graphics2D g);

    /**
     * The drawing follows, or it is at least tried; the status line says why it can't be done.
     *
     * @param hint says what is being done
     * @return why it can't be done
     */
    final Optional<Message> follow(Supplier<String> hint) {
        Optional<Message> refusal = canvas.shown().fast() ? session.preview(edit()) : tried();
        canvas.hint(refusal.map(Texts::title).orElseGet(hint));
        canvas.repaint();
        return refusal;
    }

    private Optional<Message> tried() {
        try {
            edit().applyTo(session.state().drawing());
            return Optional.empty();
        } catch (Edit.Refusal e) {
            return Optional.of(e.reason());
        }
    }

    @Override
    public final void released(Spot at) {
        session.endPreview();
        canvas.hint(""); // before it is done: what is refused must stay readable
        if (changes()) {
            session.apply(edit());
            session.seal();
        }
        canvas.repaint();
    }

    @Override
    public final void backOut() {
        session.endPreview();
    }

    @Override
    public void paint(Graphics2D g) {
        if (session.state().preview() == null && changes()) {
            paintOver(g);
        }
    }

    /** A line of a cable or bar that isn't there yet. */
    final void line(Graphics2D g, Point from, Point to) {
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke((float) Math.max(0.5, 2 * canvas.viewport().mm(1))));
        g.draw(Overlay.path(List.of(from, to)));
    }
}
