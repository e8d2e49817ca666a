package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import org.jspecify.annotations.Nullable;
import orlop.desk.Arranging;

/** Chooses with a click where a note is to begin. */
final class NoteTool implements Tool {
    private static final double LONG_MM = 12;

    private final SheetCanvas canvas;
    private final Placer placer;
    private @Nullable Spot at;

    /** Puts a note at a place on the sheet. */
    @FunctionalInterface
    interface Placer {
        void place(double xMm, double yMm);
    }

    NoteTool(SheetCanvas canvas, Placer placer) {
        this.canvas = canvas;
        this.placer = placer;
        canvas.hint(hint());
    }

    private String hint() {
        return Texts.of(canvas.byKeys() ? "editor.hint.note-keys" : "editor.hint.note");
    }

    @Override
    public boolean placing() {
        return true;
    }

    /** Whoever begins to type means the words of the note, and no component: the place has to be chosen first. */
    @Override
    public boolean letters() {
        return true;
    }

    @Override
    public void pressed(Spot spot) {
        moved(spot);
    }

    @Override
    public void dragged(Spot spot) {
        moved(spot);
    }

    @Override
    public void moved(Spot spot) {
        at = spot;
        canvas.hint(hint());
        canvas.repaint();
    }

    @Override
    public void released(Spot spot) {
        canvas.use(canvas.hand());
        canvas.hint("");
        placer.place(spot.xMm(), spot.yMm());
    }

    @Override
    public void backOut() {
        at = null;
    }

    /** A corner where the first letter will stand. */
    @Override
    public void paint(Graphics2D g) {
        Spot spot = at;
        if (spot != null) {
            double x = Arranging.onGrid(spot.xMm());
            double y = Arranging.onGrid(spot.yMm());
            Path2D corner = new Path2D.Double();
            corner.moveTo(x, y + LONG_MM / 3);
            corner.lineTo(x, y);
            corner.lineTo(x + LONG_MM, y);
            g.setColor(Look.accent());
            g.setStroke(new BasicStroke((float) (1.4 * canvas.viewport().mm(1))));
            g.draw(corner);
        }
    }
}
