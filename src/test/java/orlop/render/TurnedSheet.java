package orlop.render;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.batik.gvt.renderer.ImageRenderer;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.jspecify.annotations.Nullable;
import orlop.layout.Rect;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.Ink;
import orlop.scene.Mark;
import orlop.scene.Palette;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.symbols.Bounds;
import orlop.symbols.Symbol;
import orlop.symbols.SymbolLibrary;
import orlop.symbols.Turn;

/** A sheet of symbols, a row for each, which stands in all eight ways; and pictures of it made in four ways. */
final class TurnedSheet {
    static final double DOTS_PER_MM = 6;
    private static final double NAME_MM = 45;
    private static final double GAP_MM = 3;

    /** Lines stand where they are said to, as ours do; else they are moved by half a dot. */
    private static final Map<RenderingHints.Key, Object> EXACT =
            Map.of(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);

    private final SymbolLibrary library;
    private final List<Symbol> symbols;
    private final double cellMm;

    TurnedSheet(SymbolLibrary library, List<Symbol> symbols) {
        this.library = library;
        this.symbols = List.copyOf(symbols);
        double reach = symbols.stream().mapToDouble(TurnedSheet::reachMm).max().orElseThrow();
        cellMm = Math.ceil(2 * reach + GAP_MM);
    }

    /** How far a symbol's ink lies from its origin at most, along x or y. */
    static double reachMm(Symbol symbol) {
        Bounds b = symbol.bounds();
        return Math.max(Math.max(-b.minXMm(), b.maxXMm()), Math.max(-b.minYMm(), b.maxYMm()));
    }

    static List<Turn> turns() {
        List<Turn> all = new ArrayList<>();
        for (boolean mirrored : new boolean[] {false, true}) {
            for (int degree = 0; degree < 360; degree += 90) {
                all.add(new Turn(degree, mirrored));
            }
        }
        return all;
    }

    double xMm(int column) {
        return NAME_MM + (column + 0.5) * cellMm;
    }

    double yMm(int row) {
        return (row + 0.5) * cellMm;
    }

    List<String> names() {
        return symbols.stream().map(Symbol::name).toList();
    }

    /** What is dark in a symbol's cell, from the symbol's origin. */
    Bounds ink(BufferedImage image, int row, int column) {
        double left = xMm(column) - cellMm / 2;
        double top = yMm(row) - cellMm / 2;
        int n = (int) Math.round(cellMm * DOTS_PER_MM);
        int fromX = (int) Math.round(left * DOTS_PER_MM);
        int fromY = (int) Math.round(top * DOTS_PER_MM);
        Bounds all = null;
        for (int x = 0; x < n; x++) {
            for (int y = 0; y < n; y++) {
                if ((image.getRGB(fromX + x, fromY + y) & 0xFF) < 0xA0) {
                    double atX = (fromX + x) / DOTS_PER_MM - xMm(column);
                    double atY = (fromY + y) / DOTS_PER_MM - yMm(row);
                    Bounds dot = new Bounds(atX, atY, atX + 1 / DOTS_PER_MM, atY + 1 / DOTS_PER_MM);
                    all = all == null ? dot : all.union(dot);
                }
            }
        }
        return java.util.Objects.requireNonNull(all);
    }

    double widthMm() {
        return xMm(turns().size()) - cellMm / 2;
    }

    double heightMm() {
        return symbols.size() * cellMm;
    }

    Scene scene(boolean named) {
        List<SceneItem> items = new ArrayList<>();
        for (int row = 0; row < symbols.size(); row++) {
            Symbol s = symbols.get(row);
            List<Mark> marks = new ArrayList<>();
            for (int column = 0; column < turns().size(); column++) {
                Turn t = turns().get(column);
                marks.add(
                        new Mark.SymbolAt(s.name(), xMm(column), yMm(row), t.rotationDegree(), t.mirrored(), Ink.INK));
            }
            if (named) {
                double width = TextMeasure.bundled().widthMm(s.name(), 2.5, Weight.REGULAR);
                marks.add(new Mark.Text(1, yMm(row), Mark.Anchor.START, 2.5, Weight.REGULAR, Ink.INK, s.name(), width));
            }
            Rect all = Rect.of(0, yMm(row) - cellMm / 2, widthMm(), cellMm);
            items.add(new SceneItem("row-" + row, Role.COMPONENT, s.name(), s.name(), all, marks, Map.of()));
        }
        Rect paper = Rect.of(0, 0, widthMm(), heightMm());
        return new Scene("1", "turned", widthMm(), heightMm(), paper, items, List.of(), List.of(), Map.of());
    }

    byte[] svg() {
        return SvgExport.write(scene(false), Palette.LIGHT, library, false);
    }

    /** By Graphics2D, as screen and PNG are made. */
    BufferedImage raster(boolean named) throws Exception {
        byte[] png = PngExport.write(scene(named), Palette.LIGHT, 25.4 * DOTS_PER_MM, library);
        return javax.imageio.ImageIO.read(new ByteArrayInputStream(png));
    }

    /** Our PDF, shown by PDFBox. */
    BufferedImage pdf() throws Exception {
        byte[] file = PdfExport.write(List.of(scene(false)), Palette.LIGHT, library);
        try (PDDocument d = Loader.loadPDF(file)) {
            PDFRenderer renderer = new PDFRenderer(d);
            RenderingHints hints = new RenderingHints(EXACT);
            hints.put(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            renderer.setRenderingHints(hints);
            BufferedImage image = renderer.renderImageWithDPI(0, (float) (25.4 * DOTS_PER_MM));
            // Its edges are rounded down.
            BufferedImage whole = blank();
            whole.createGraphics().drawImage(image, 0, 0, null);
            return whole;
        }
    }

    private BufferedImage blank() {
        int w = (int) Math.round(widthMm() * DOTS_PER_MM);
        int h = (int) Math.round(heightMm() * DOTS_PER_MM);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        java.awt.Graphics2D g = image.createGraphics();
        g.setColor(java.awt.Color.WHITE);
        g.fillRect(0, 0, w, h);
        g.dispose();
        return image;
    }

    /** An SVG file of this sheet's size, shown by Batik. */
    BufferedImage shown(byte[] svg) throws TranscoderException {
        BufferedImage image = blank();
        ImageTranscoder batik = new ImageTranscoder() {
            @Override
            protected ImageRenderer createRenderer() {
                ImageRenderer renderer = super.createRenderer();
                renderer.getRenderingHints().putAll(EXACT);
                return renderer;
            }

            @Override
            public BufferedImage createImage(int width, int height) {
                return new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
            }

            @Override
            public void writeImage(BufferedImage made, @Nullable TranscoderOutput output) {
                image.createGraphics().drawImage(made, 0, 0, null);
            }
        };
        batik.addTranscodingHint(ImageTranscoder.KEY_WIDTH, (float) image.getWidth());
        batik.addTranscodingHint(ImageTranscoder.KEY_HEIGHT, (float) image.getHeight());
        batik.transcode(new TranscoderInput(new ByteArrayInputStream(svg)), null);
        return image;
    }
}
