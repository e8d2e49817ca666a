package orlop.editor;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.scene.Scene;

/**
 * The halos of what is selected. Those of many things are painted once and kept as an image, since the canvas is painted
 * with every thing that the mouse comes to.
 */
final class SelectedLayer {
    /** Up to so many halos are painted each time. */
    private static final int FEW = 150;

    private record Key(
            Scene scene, Set<String> selection, Drawing drawing, Viewport viewport, boolean dark, ScreenDots dots) {
        /** Whether it is of the same things in the very same scene, and looks the same. */
        @SuppressWarnings("ReferenceEquality")
        boolean is(@Nullable Key o) {
            return o != null
                    && scene == o.scene
                    && drawing == o.drawing
                    && viewport.equals(o.viewport)
                    && dark == o.dark
                    && dots.equals(o.dots)
                    && selection.equals(o.selection);
        }
    }

    private @Nullable Key key;
    private @Nullable BufferedImage image;

    /**
     * Paints them on a canvas of this size.
     *
     * @param g one unit is one pixel, from the upper left corner of the canvas on
     */
    void paint(Graphics2D g, SessionState s, Scene scene, Viewport viewport, int width, int height) {
        if (s.selection().size() <= FEW) {
            key = null;
            image = null;
            Graphics2D direct = (Graphics2D) g.create();
            paint(direct, s, scene, viewport);
            direct.dispose();
            return;
        }
        ScreenDots dots = ScreenDots.of(g, width, height);
        Key wanted = new Key(scene, s.selection(), s.drawing(), viewport, Look.dark(), dots);
        BufferedImage ready = image;
        if (ready == null || !wanted.is(key)) {
            ready = dots.image(g, false);
            Graphics2D t = ready.createGraphics();
            t.setTransform(dots.toDots());
            StaticLayer.hints(t);
            paint(t, s, scene, viewport);
            t.dispose();
            image = ready;
            key = wanted;
        }
        dots.draw(g, ready);
    }

    private static void paint(Graphics2D g, SessionState s, Scene scene, Viewport viewport) {
        g.transform(viewport.toView());
        Overlay.selected(g, s, scene, viewport.mm(1));
    }
}
