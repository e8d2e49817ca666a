package orlop.editor;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/**
 * The dots of the screen on which a component is painted.
 *
 * @param scaleX dots across for one unit of the component
 * @param scaleY dots down for one unit
 * @param width of the component, in dots
 * @param height of the component, in dots
 */
record ScreenDots(double scaleX, double scaleY, int width, int height) {
    private static final double LEAST_SCALE = 0.1;

    /**
     * @param width of the component, in its units
     * @param height of the component, in its units
     */
    static ScreenDots of(Graphics2D g, int width, int height) {
        double scaleX = Math.max(LEAST_SCALE, g.getTransform().getScaleX());
        double scaleY = Math.max(LEAST_SCALE, g.getTransform().getScaleY());
        return new ScreenDots(scaleX, scaleY, (int) Math.ceil(width * scaleX), (int) Math.ceil(height * scaleY));
    }

    /**
     * An empty image of these dots, of the kind that the screen paints soonest.
     *
     * @param opaque whether nothing is seen through it
     */
    BufferedImage image(Graphics2D g, boolean opaque) {
        return g.getDeviceConfiguration() == null
                ? new BufferedImage(width, height, opaque ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB)
                : g.getDeviceConfiguration()
                        .createCompatibleImage(
                                width, height, opaque ? BufferedImage.OPAQUE : BufferedImage.TRANSLUCENT);
    }

    /** Paints an image of these dots, dot by dot. */
    void draw(Graphics2D g, BufferedImage image) {
        AffineTransform before = g.getTransform();
        g.scale(1 / scaleX, 1 / scaleY);
        g.drawImage(image, 0, 0, null);
        g.setTransform(before);
    }

    /** From the units of the component to its dots. */
    AffineTransform toDots() {
        return AffineTransform.getScaleInstance(scaleX, scaleY);
    }
}
