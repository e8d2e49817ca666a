package orlop.editor;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.desk.OwnSymbols;
import orlop.layout.Rect;
import orlop.scene.Palette;
import orlop.scene.Scene;

/**
 * The sheet as a finished image at the resolution of the screen: what moves is painted over it, and the sheet itself only
 * when it, or what is seen of it, has changed; after an edit only where it has.
 */
final class StaticLayer {
    private record Key(Scene scene, Viewport viewport, Palette palette, boolean stale, ScreenDots dots) {}

    /** How many dots beyond what changed are painted anew. */
    private static final int RIM_PX = 2;

    private @Nullable Key key;
    private @Nullable BufferedImage image;
    private @Nullable ChangedParts parts;

    /** Paints the sheet on a canvas of this size in units of {@code g}. */
    @SuppressWarnings("ReferenceEquality") // scenes are big: only the very same one is known to be painted
    void paint(Graphics2D g, Scene scene, Viewport viewport, boolean stale, int width, int height) {
        ScreenDots dots = ScreenDots.of(g, width, height);
        Key wanted = new Key(scene, viewport, Look.palette(), stale, dots);
        BufferedImage ready = image;
        if (ready == null || key == null || key.scene != scene || !wanted.equals(key)) {
            ready = painted(g, wanted);
            image = ready;
            key = wanted;
        }
        dots.draw(g, ready);
    }

    /** Paints the sheet once more as it was painted last; empty, and nothing is painted, if it was seen otherwise then. */
    Optional<Scene> again(Graphics2D g, Viewport viewport, int width, int height) {
        Key k = key;
        ScreenDots dots = ScreenDots.of(g, width, height);
        if (k == null || !new Key(k.scene, viewport, Look.palette(), k.stale, dots).equals(k)) {
            return Optional.empty();
        }
        paint(g, k.scene, viewport, k.stale, width, height);
        return Optional.of(k.scene);
    }

    /** The scene that was painted last. */
    Optional<Scene> last() {
        return Optional.ofNullable(key).map(Key::scene);
    }

    private BufferedImage painted(Graphics2D g, Key k) {
        BufferedImage old = image;
        boolean fits = old != null && old.getWidth() == k.dots.width() && old.getHeight() == k.dots.height();
        ChangedParts last = parts;
        ChangedParts now = new ChangedParts(k.scene, OwnSymbols.library(), last);
        Key was = key;
        Optional<List<Rect>> changed =
                fits && last != null && was != null && !k.stale && seenAlike(k, was) ? now.changed() : Optional.empty();
        parts = k.stale ? null : now;
        BufferedImage target = fits && old != null ? old : k.dots.image(g, true);
        if (changed.isEmpty()) {
            paint(target, k, now, null);
            return target;
        }
        AffineTransform toDots = k.dots.toDots();
        toDots.concatenate(k.viewport.toView());
        for (Rect r : changed.get()) {
            Rectangle dots = toDots.createTransformedShape(
                            new Rectangle2D.Double(r.minX(), r.minY(), r.width(), r.height()))
                    .getBounds();
            dots.grow(RIM_PX, RIM_PX);
            Rectangle seen = dots.intersection(new Rectangle(k.dots.width(), k.dots.height()));
            if (!seen.isEmpty()) {
                paint(target, k, now, seen);
            }
        }
        return target;
    }

    /** Whether the same part of a sheet is seen in the same colours, with fresh figures in both. */
    private static boolean seenAlike(Key a, Key b) {
        return !b.stale && a.viewport.equals(b.viewport) && a.palette.equals(b.palette) && a.dots.equals(b.dots);
    }

    /** @param part of the image that is painted, in dots; null for all of it */
    private static void paint(BufferedImage target, Key k, ChangedParts parts, @Nullable Rectangle part) {
        Graphics2D t = target.createGraphics();
        try {
            if (part != null) {
                t.clip(part);
            }
            t.setColor(Look.desk());
            t.fillRect(0, 0, k.dots.width(), k.dots.height());
            t.transform(k.dots.toDots());
            hints(t);
            t.transform(k.viewport.toView());
            if (part == null) {
                SheetPainting.paint(k.stale ? StaleFigures.of(k.scene) : k.scene, t, k.palette);
            } else {
                Rectangle2D seen = t.getClipBounds().getBounds2D();
                Rect room = new Rect(seen.getMinX(), seen.getMinY(), seen.getMaxX(), seen.getMaxY()).grown(1);
                SheetPainting.paper(k.scene, t, k.palette);
                int[] next = {0}; // they are asked for in the order of the scene
                SheetPainting.paint(
                        k.scene, t, k.palette, i -> parts.covers(next[0]++).touches(room));
            }
        } finally {
            t.dispose();
        }
    }

    static void hints(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }
}
