package orlop.editor;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.scene.Palette;
import orlop.scene.Scene;

/**
 * The sheet as a finished image at the resolution of the screen: what moves is painted over it, and the sheet itself only
 * when it, or what is seen of it, has changed.
 */
final class StaticLayer {
    private record Key(Scene scene, Viewport viewport, Palette palette, boolean stale, int width, int height) {}

    private @Nullable Key key;
    private @Nullable BufferedImage image;

    /** Paints the sheet on a canvas of this size in units of {@code g}. */
    @SuppressWarnings("ReferenceEquality") // scenes are big: only the very same one is known to be painted
    void paint(Graphics2D g, Scene scene, Viewport viewport, boolean stale, int width, int height) {
        AffineTransform screen = g.getTransform();
        double scaleX = Math.max(0.1, screen.getScaleX());
        double scaleY = Math.max(0.1, screen.getScaleY());
        int w = (int) Math.ceil(width * scaleX);
        int h = (int) Math.ceil(height * scaleY);
        Key wanted = new Key(scene, viewport, Look.palette(), stale, w, h);
        BufferedImage ready = image;
        if (ready == null || key == null || key.scene != scene || !wanted.equals(key)) {
            ready = painted(g, wanted, scaleX, scaleY);
            image = ready;
            key = wanted;
        }
        AffineTransform before = g.getTransform();
        g.scale(1 / scaleX, 1 / scaleY);
        g.drawImage(ready, 0, 0, null);
        g.setTransform(before);
    }

    /** Paints the sheet once more as it was painted last; empty, and nothing is painted, if it was seen otherwise then. */
    Optional<Scene> again(Graphics2D g, Viewport viewport, int width, int height) {
        Key k = key;
        int w = (int) Math.ceil(width * Math.max(0.1, g.getTransform().getScaleX()));
        int h = (int) Math.ceil(height * Math.max(0.1, g.getTransform().getScaleY()));
        if (k == null || !new Key(k.scene, viewport, Look.palette(), k.stale, w, h).equals(k)) {
            return Optional.empty();
        }
        paint(g, k.scene, viewport, k.stale, width, height);
        return Optional.of(k.scene);
    }

    private BufferedImage painted(Graphics2D g, Key k, double scaleX, double scaleY) {
        BufferedImage old = image;
        boolean fits = old != null && old.getWidth() == k.width && old.getHeight() == k.height;
        BufferedImage target = fits && old != null
                ? old
                : g.getDeviceConfiguration() == null
                        ? new BufferedImage(k.width, k.height, BufferedImage.TYPE_INT_RGB)
                        : g.getDeviceConfiguration().createCompatibleImage(k.width, k.height, Transparency.OPAQUE);
        Graphics2D t = target.createGraphics();
        try {
            t.setColor(Look.desk());
            t.fillRect(0, 0, k.width, k.height);
            t.scale(scaleX, scaleY);
            hints(t);
            t.transform(k.viewport.toView());
            SheetPainting.paint(k.stale ? StaleFigures.of(k.scene) : k.scene, t, k.palette);
        } finally {
            t.dispose();
        }
        return target;
    }

    static void hints(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }
}
