package orlop.symbols;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import orlop.layout.TextMeasure;

/** Draws all symbols on one contact sheet, {@code target/gallery/symbols.png}, for a draughtsman to look at. */
class SymbolGalleryTest {
    private static final int COLUMNS = 10;
    private static final double CELL_WIDTH_MM = 40;
    private static final double CELL_HEIGHT_MM = 32.5;
    private static final double PIXELS_PER_MM = 6;

    @Test
    void every_symbol_leaves_ink_on_the_contact_sheet() throws Exception {
        List<Symbol> symbols = SymbolLibrary.bundled().all();
        int rows = (symbols.size() + COLUMNS - 1) / COLUMNS;
        BufferedImage image = new BufferedImage(
                (int) (COLUMNS * CELL_WIDTH_MM * PIXELS_PER_MM),
                (int) (rows * CELL_HEIGHT_MM * PIXELS_PER_MM),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setFont(font());
        g.scale(PIXELS_PER_MM, PIXELS_PER_MM);
        for (int i = 0; i < symbols.size(); i++) {
            double xMm = (i % COLUMNS + 0.5) * CELL_WIDTH_MM;
            int row = i / COLUMNS;
            double yMm = (row + 0.45) * CELL_HEIGHT_MM;
            g.translate(xMm, yMm);
            draw(symbols.get(i), g);
            g.translate(-xMm, -yMm);
        }
        g.dispose();
        Path file = Path.of("target", "gallery", "symbols.png");
        Files.createDirectories(file.getParent());
        ImageIO.write(image, "png", file.toFile());

        for (int i = 0; i < symbols.size(); i++) {
            assertThat(darkPixels(image, i)).as(symbols.get(i).name()).isGreaterThan(20);
        }
    }

    private static void draw(Symbol symbol, Graphics2D g) {
        g.setColor(new Color(0xE4E8EC));
        g.setStroke(new BasicStroke(0.1f));
        for (double mm = -12.5; mm <= 12.5; mm += Terminal.GRID_MM) {
            g.draw(new Line2D.Double(mm, -12.5, mm, 12.5));
            g.draw(new Line2D.Double(-12.5, mm, 12.5, mm));
        }
        g.setColor(Color.BLACK);
        for (Outline outline : symbol.outlines()) {
            if (outline.filled()) {
                g.fill(outline.shape());
            } else {
                g.setStroke(new BasicStroke(
                        (float) outline.strokeWidthMm(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4));
                g.draw(outline.shape());
            }
        }
        g.setColor(new Color(0xC4202B));
        for (Terminal terminal : symbol.terminals().values()) {
            g.fill(new Ellipse2D.Double(terminal.xMm() - 0.3, terminal.yMm() - 0.3, 0.6, 0.6));
        }
        String name = symbol.name();
        double widthMm = TextMeasure.bundled().widthMm(name, 2, TextMeasure.Weight.REGULAR);
        g.drawString(name, (float) (-widthMm / 2), 15.5f);
    }

    /** Ink only: the grid and the terminals' marks are lighter. */
    private static int darkPixels(BufferedImage image, int cell) {
        int fromX = (int) (cell % COLUMNS * CELL_WIDTH_MM * PIXELS_PER_MM);
        int row = cell / COLUMNS;
        int fromY = (int) (row * CELL_HEIGHT_MM * PIXELS_PER_MM);
        int count = 0;
        for (int x = fromX; x < fromX + CELL_WIDTH_MM * PIXELS_PER_MM; x++) {
            for (int y = fromY; y < fromY + CELL_HEIGHT_MM * PIXELS_PER_MM; y++) {
                count += (image.getRGB(x, y) & 0xFF0000) < 0x600000 ? 1 : 0;
            }
        }
        return count;
    }

    private static Font font() throws Exception {
        try (InputStream in = SymbolGalleryTest.class.getResourceAsStream(TextMeasure.Weight.REGULAR.resource())) {
            return Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(in))
                    .deriveFont(2f);
        }
    }
}
