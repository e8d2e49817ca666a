package orlop.editor;

import java.util.Optional;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import orlop.layout.Rect;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** Which part of its sheet a canvas shows: the whole of it, until somebody zooms or pans. */
final class SheetView {
    /** A page folded out below makes the sheet smaller down to this part of its size, and hides some of it beyond. */
    private static final double LEAST_SHARE = 0.6;

    private final SheetCanvas canvas;
    private @Nullable JComponent shared;
    private Viewport viewport = new Viewport(Viewport.FULL_SIZE, 0, 0);
    private Viewport wanted = viewport;
    private Runnable onView = () -> {};
    private boolean fitting = true;
    private @Nullable Runnable later;

    SheetView(SheetCanvas canvas) {
        this.canvas = canvas;
    }

    Viewport viewport() {
        return viewport;
    }

    /** @param listener told when another part of the sheet is seen */
    void onView(Runnable listener) {
        onView = listener;
    }

    /** @param room what the canvas lies in together with a page that is folded out */
    void shares(JComponent room) {
        shared = room;
    }

    /**
     * From now on this is seen, and goes on being so when the window changes, unless it becomes so small that nothing of
     * the sheet would be left in it. The sheet can't be pushed out of sight.
     */
    void view(Viewport v) {
        fitting = false;
        wanted = canvas.seen().map(s -> inSight(v, s)).orElse(v);
        show(wanted);
    }

    private Viewport inSight(Viewport v, Scene s) {
        int w = canvas.getWidth();
        int h = canvas.getHeight();
        Rect paper = new Rect(0, 0, s.widthMm(), s.heightMm());
        return !room() || v.equals(v.keeping(paper, w, h))
                ? v
                : v.keeping(DrawnPart.of(s).map(paper::union).orElse(paper), w, h);
    }

    private void show(Viewport v) {
        if (!v.equals(viewport)) {
            viewport = v;
            onView.run();
            canvas.repaint();
        }
    }

    void zoom(double factor) {
        view(viewport.zoomed(factor, canvas.getWidth() / 2.0, canvas.getHeight() / 2.0));
    }

    void fullSize() {
        zoom(Viewport.FULL_SIZE / viewport.pxPerMm());
    }

    /** Shows the whole sheet, and goes on doing so when the window changes, until somebody zooms or pans. */
    void fit() {
        fitting = true;
        refit();
    }

    /** The same at once, however small the sheet becomes by it. */
    void fitWhole() {
        fitting = true;
        canvas.scene().ifPresent(s -> show(whole(s, canvas.getHeight())));
    }

    /** After a change of the canvas or its sheet. */
    void refit() {
        if (fitting && room()) {
            canvas.scene().ifPresent(s -> show(fitting(s)));
        } else if (room()) {
            canvas.seen().ifPresent(s -> show(inSight(wanted, s)));
        }
        Runnable then = later;
        if (then != null && room()) {
            later = null;
            then.run();
        }
    }

    private boolean room() {
        return canvas.getWidth() > 0 && canvas.getHeight() > 0;
    }

    /** While a page has all the room nothing can be brought into sight: it is as soon as the sheet is seen again. */
    private boolean waits(Runnable forRoom) {
        later = room() ? null : forRoom;
        return later != null;
    }

    private Viewport whole(Scene s, int height) {
        return Viewport.fitting(s.widthMm(), s.heightMm(), canvas.getWidth(), height);
    }

    /** The whole sheet; where little room is left beside a page, in the size that it has without it, near what is selected. */
    private Viewport fitting(Scene s) {
        Viewport whole = whole(s, canvas.getHeight());
        double alone = shared == null
                ? 0
                : whole(s, Math.max(shared.getHeight(), canvas.getHeight())).pxPerMm();
        if (whole.pxPerMm() >= alone * LEAST_SHARE) {
            return whole;
        }
        double x = s.widthMm() / 2;
        double y = s.heightMm() / 2;
        Viewport middle = Viewport.around(x, y, alone, canvas.getWidth(), canvas.getHeight());
        return selected(s)
                .map(r -> middle.showing(r.centreX(), r.centreY(), canvas.getWidth(), canvas.getHeight()))
                .orElse(middle);
    }

    private Optional<Rect> selected(Scene s) {
        return canvas.session()
                .state()
                .soleSelection()
                .flatMap(id -> s.items().stream()
                        .filter(i -> i.subject().equals(id))
                        .map(SceneItem::bounds)
                        .findFirst());
    }

    /** Shows what is drawn, as big as may be. */
    void fitDrawn() {
        canvas.scene().flatMap(DrawnPart::of).ifPresent(r -> {
            Viewport v = Viewport.fitting(r.width(), r.height(), canvas.getWidth(), canvas.getHeight());
            view(v.moved(-r.minX() * v.pxPerMm(), -r.minY() * v.pxPerMm()));
        });
    }

    /** Moves the sheet so that this part of it is seen; not at all if it is. */
    void reveal(Rect r) {
        if (waits(() -> reveal(r))) {
            return;
        }
        Viewport v = viewport.showing(r.centreX(), r.centreY(), canvas.getWidth(), canvas.getHeight());
        if (!v.equals(viewport)) {
            view(v);
        }
    }

    /** Brings this part of the sheet to the middle, near enough to be read; not at all if it is in sight and can be read. */
    void bringNear(Rect r) {
        if (waits(() -> bringNear(r))) {
            return;
        }
        Viewport v = viewport;
        int w = canvas.getWidth();
        int h = canvas.getHeight();
        if (!v.legible() || !v.equals(v.showing(r.centreX(), r.centreY(), w, h))) {
            double scale = v.legible() ? v.pxPerMm() : Viewport.FULL_SIZE;
            view(Viewport.around(r.centreX(), r.centreY(), scale, w, h));
        }
    }
}
