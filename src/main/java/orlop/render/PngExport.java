package orlop.render;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import orlop.scene.Palette;
import orlop.scene.Scene;

/** Sheets as PNG. */
public final class PngExport {
    private static final double MM_PER_INCH = 25.4;

    private PngExport() {}

    /**
     * The whole sheet as a PNG file.
     *
     * @param dpi dots per inch, 20 to 600
     * @throws IllegalArgumentException if the resolution is out of range
     */
    public static byte[] write(Scene scene, Palette palette, double dpi) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image(scene, palette, dpi), "png", out)) {
                throw new IllegalStateException("this Java cannot write PNG");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** The whole sheet as a picture; see {@link #write}. */
    public static BufferedImage image(Scene scene, Palette palette, double dpi) {
        if (!(dpi >= 20 && dpi <= 600)) {
            throw new IllegalArgumentException("dpi must be from 20 to 600 but is " + dpi);
        }
        double scale = dpi / MM_PER_INCH;
        int w = (int) Math.round(scene.widthMm() * scale);
        int h = (int) Math.round(scene.heightMm() * scale);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            Painter painter = Painter.bundled(palette);
            g.setColor(new Color(painter.paperRgb()));
            g.fillRect(0, 0, w, h);
            g.scale(scale, scale);
            painter.paint(scene, new Graphics2DSurface(g));
        } finally {
            g.dispose();
        }
        return image;
    }
}
