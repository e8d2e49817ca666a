package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import orlop.scene.BarSpan;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/**
 * The terminals and bars that can take a cable, lit up. They are found once for a scene and painted as copies of one small picture:
 * a sheet may have thousands, and the mouse does not wait.
 */
final class TerminalLights {
    private record Shape(double pxPerMm, double pxMm, Color accent) {}

    private final Scene scene;
    private final List<TerminalSpot> spots;
    private final List<BarSpan> bars;
    private @Nullable Shape shape;
    private BufferedImage dot = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB);

    TerminalLights(Scene scene, Predicate<TerminalSpot> takes) {
        this.scene = scene;
        this.spots = scene.terminals().stream().filter(takes).toList();
        this.bars = scene.bars().stream().filter(b -> takes.test(b.middle())).toList();
    }

    /** Whether they are those of this very scene. */
    @SuppressWarnings("ReferenceEquality")
    boolean of(Scene other) {
        return scene == other;
    }

    /** One unit of {@code g} is one millimetre, and a pixel of the window is {@code pxMm} of them. */
    void paint(Graphics2D g, double pxMm) {
        AffineTransform toScreen = g.getTransform();
        Shape wanted = new Shape(toScreen.getScaleX(), pxMm, Look.accent());
        if (!wanted.equals(shape)) {
            dot = dot(wanted);
            shape = wanted;
        }
        g.setTransform(new AffineTransform());
        Point2D at = new Point2D.Double();
        for (TerminalSpot t : spots) {
            at.setLocation(t.xMm(), t.yMm());
            toScreen.transform(at, at);
            g.drawImage(
                    dot,
                    (int) Math.round(at.getX() - dot.getWidth() / 2.0),
                    (int) Math.round(at.getY() - dot.getHeight() / 2.0),
                    null);
        }
        g.setTransform(toScreen);
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke((float) (1.6 * pxMm)));
        bars.forEach(b -> g.draw(Overlay.rounded(b.rect().grown(3 * pxMm), 6 * pxMm)));
    }

    private static BufferedImage dot(Shape s) {
        int side = 2 * (int) Math.ceil(Overlay.TERMINAL_PX * s.pxMm() * s.pxPerMm() + 2);
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        StaticLayer.hints(g);
        g.translate(side / 2.0, side / 2.0);
        g.scale(s.pxPerMm(), s.pxPerMm());
        Overlay.terminal(g, 0, 0, false, s.pxMm());
        g.dispose();
        return image;
    }
}
