package orlop.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import orlop.scene.Mark;
import orlop.scene.Palette;
import orlop.scene.SampleSheet;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.symbols.SymbolLibrary;

class PdfExportTest {
    private static final Scene SCENE = SceneBuilder.bundled().build(SampleSheet.request());
    private static final byte[] PDF = PdfExport.write(List.of(SCENE, SCENE), Palette.LIGHT, SymbolLibrary.bundled());

    @Test
    void text_stays_text_and_all_of_it_is_there() throws Exception {
        try (PDDocument d = Loader.loadPDF(PDF)) {
            String text = new PDFTextStripper().getText(d).replaceAll("\\s", "");

            assertThat(SCENE.items())
                    .flatExtracting(i -> i.marks())
                    .filteredOn(Mark.Text.class::isInstance)
                    .hasSizeGreaterThan(100)
                    .allSatisfy(m ->
                            assertThat(text).contains(((Mark.Text) m).text().replaceAll("\\s", "")));
        }
    }

    @Test
    void every_font_is_embedded_and_is_the_bundled_one() throws Exception {
        Set<String> names = new HashSet<>();
        try (PDDocument d = Loader.loadPDF(PDF)) {
            for (PDPage page : d.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                    names.add(font.getName().replaceAll("^[A-Z]{6}\\+", ""));
                }
            }
        }
        assertThat(names).containsExactlyInAnyOrder("DejaVuSansCondensed", "DejaVuSansCondensed-Bold");
    }

    @Test
    void a_page_is_true_to_size_and_nothing_comes_from_the_clock() throws Exception {
        try (PDDocument d = Loader.loadPDF(PDF)) {
            assertThat(d.getNumberOfPages()).isEqualTo(2);
            assertThat(d.getPage(0).getMediaBox().getWidth() * 25.4 / 72).isBetween(419.99, 420.01);
            assertThat(d.getPage(0).getMediaBox().getHeight() * 25.4 / 72).isBetween(296.99, 297.01);
            assertThat(d.getDocumentInformation().getCreationDate()).isNull();
        }
        assertThat(PdfExport.write(List.of(SCENE, SCENE), Palette.LIGHT, SymbolLibrary.bundled()))
                .isEqualTo(PDF);
    }

    @Test
    void a_character_that_the_font_lacks_does_not_stop_the_export() {
        assertThat(PdfFonts.printable("a\u4E2Db\uD83D\uDE00", orlop.layout.TextMeasure.Weight.REGULAR))
                .isEqualTo("a\uFFFDb\uFFFD");
    }

    @Test
    void a_document_without_a_sheet_is_refused() {
        assertThatThrownBy(() -> PdfExport.write(List.of(), Palette.LIGHT, SymbolLibrary.bundled()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
