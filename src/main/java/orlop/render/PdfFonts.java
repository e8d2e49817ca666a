package orlop.render;

import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;

/** The bundled font in one PDF document: each weight is embedded once, with the glyphs that are used alone. */
final class PdfFonts {
    /** In place of a character that the font lacks: PDF has no glyph to fall back on. */
    private static final String REPLACEMENT = "\uFFFD";

    private final PDDocument document;
    private final Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    PDFont font(Weight weight) throws IOException {
        PDFont known = fonts.get(weight);
        if (known != null) {
            return known;
        }
        try (InputStream in = Objects.requireNonNull(PdfFonts.class.getResourceAsStream(weight.resource()))) {
            PDFont font = PDType0Font.load(document, in, true);
            fonts.put(weight, font);
            return font;
        }
    }

    /** The text with what the font cannot show replaced by the sign for that. */
    static String printable(String text, Weight weight) {
        TextMeasure measure = TextMeasure.bundled();
        if (measure.hasAll(text, weight)) {
            return text;
        }
        StringBuilder s = new StringBuilder();
        text.codePoints().forEach(c -> {
            String one = Character.toString(c);
            s.append(measure.hasAll(one, weight) ? one : REPLACEMENT);
        });
        return s.toString();
    }
}
