package orlop.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.util.Matrix;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.symbols.SymbolLibrary;

/** Sheets as PDF: true to size, a page a sheet, text as text in the embedded font, the same bytes every time. */
public final class PdfExport {
    private static final double POINTS_PER_MM = 72 / 25.4;

    private PdfExport() {}

    /**
     * The sheets as one file, in this order.
     *
     * @param scenes at least one
     * @param library the symbols with which the scenes were built
     */
    public static byte[] write(List<Scene> scenes, Palette palette, SymbolLibrary library) {
        if (scenes.isEmpty()) {
            throw new IllegalArgumentException("a PDF needs a sheet");
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            // From a fixed number in place of the clock, by which PDFBox would tell files apart.
            document.setDocumentId(0L);
            document.getDocumentInformation().setTitle(scenes.get(0).title());
            document.getDocumentInformation().setProducer("Orlop");
            PDDocumentOutline outline = new PDDocumentOutline();
            document.getDocumentCatalog().setDocumentOutline(outline);
            PdfFonts fonts = new PdfFonts(document);
            Painter painter = new Painter(palette, library);
            for (Scene scene : scenes) {
                outline.addLast(bookmark(scene, page(document, fonts, painter, scene)));
            }
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static PDPage page(PDDocument document, PdfFonts fonts, Painter painter, Scene scene) throws IOException {
        float width = (float) (scene.widthMm() * POINTS_PER_MM);
        float height = (float) (scene.heightMm() * POINTS_PER_MM);
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            float unit = (float) POINTS_PER_MM;
            content.transform(new Matrix(unit, 0, 0, -unit, 0, height));
            PdfSurface surface = new PdfSurface(content, fonts);
            if (painter.paperRgb() != 0xFFFFFF) {
                content.addRect(0, 0, (float) scene.widthMm(), (float) scene.heightMm());
                surface.fillColour(painter.paperRgb());
                content.fill();
            }
            painter.paint(scene, surface);
        }
        return page;
    }

    private static PDOutlineItem bookmark(Scene scene, PDPage page) {
        PDPageFitDestination whole = new PDPageFitDestination();
        whole.setPage(page);
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(scene.title());
        item.setDestination(whole);
        return item;
    }
}
