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
import orlop.symbols.SymbolLibrary;

/** Sheets as PNG. */
public final class PngExport {
    private static final double MM_PER_INCH = 25.4;

    /** The coarsest resolution at which a sheet can still be told from another. */
    public static final double LEAST_DPI = 20;

    /** The finest: an A1 sheet takes 1.1 GB of memory at it. */
    public static final double MOST_DPI = 600;

    private PngExport() {}

    /** The whole sheet as a PNG file, with the program's own symbols; see {@link #write(Scene, Palette, double, SymbolLibrary)}. */
    public static byte[] write(Scene scene, Palette palette, double dpi) {
        return write(scene, palette, dpi, SymbolLibrary.bundled());
    }

    /**
     * The whole sheet as a PNG file.
     *
     * @param dpi dots per inch, 20 to 600
     * @param library the symbols with which the scene was built
     * @throws IllegalArgumentException if the resolution is out of range
     */
    public static byte[] write(Scene scene, Palette palette, double dpi, SymbolLibrary library) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image(scene, palette, dpi, library), "png", out)) {
                throw new IllegalStateException("this Java cannot write PNG");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** The whole sheet as a picture; see {@link #write}. */
    public static BufferedImage image(Scene scene, Palette palette, double dpi) {
        return image(scene, palette, dpi, SymbolLibrary.bundled());
    }

    private static BufferedImage image(Scene scene, Palette palette, double dpi, SymbolLibrary library) {
        if (!(dpi >= LEAST_DPI && dpi <= MOST_DPI)) {
            throw new IllegalArgumentException("dpi must be from 20 to 600 but is " + dpi);
        }
        double scale = dpi / MM_PER_INCH;
        int w = (int) Math.round(scene.widthMm() * scale);
        int h = (int) Math.round(scene.heightMm() * scale);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            Painter painter = new Painter(palette, library);
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
