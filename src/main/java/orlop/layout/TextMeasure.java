package orlop.layout;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Measures text by the advance widths of the bundled font: the same figures on every machine, with no font system.
 *
 * <p>A text is one line. It is measured without kerning and without ligatures, as the painters set it. A character that
 * the font lacks counts as wide as the font's box for a missing glyph. Immutable; safe for use by many threads.
 */
public final class TextMeasure {
    /** The name under which the font is known to a painter, the same for both weights. */
    public static final String FAMILY = "DejaVu Sans Condensed";

    /** The two weights of the bundled font. */
    public enum Weight {
        REGULAR("DejaVuSansCondensed.ttf", "DejaVu Sans Condensed"),
        BOLD("DejaVuSansCondensed-Bold.ttf", "DejaVu Sans Condensed Bold");

        private final String resource;
        private final String fullName;

        Weight(String file, String fullName) {
            this.resource = "/orlop/font/" + file;
            this.fullName = fullName;
        }

        /** The absolute class path name of the font file (TrueType). */
        public String resource() {
            return resource;
        }

        /** The full name that stands in the font file itself. */
        public String fullName() {
            return fullName;
        }
    }

    private final Map<Weight, Face> faces;

    private TextMeasure(Map<Weight, Face> faces) {
        this.faces = faces;
    }

    /** The measure of the bundled font, read once. */
    public static TextMeasure bundled() {
        return Bundled.MEASURE;
    }

    /**
     * The width of a line of text.
     *
     * @param text any text; empty gives 0
     * @param sizeMm the size of the font (its em) in mm, finite and ≥ 0
     * @return the sum of the advance widths in mm
     * @throws IllegalArgumentException if the size is negative or not finite
     */
    public double widthMm(String text, double sizeMm, Weight weight) {
        if (!Double.isFinite(sizeMm) || sizeMm < 0) {
            throw new IllegalArgumentException("sizeMm must be finite and not negative: " + sizeMm);
        }
        Face face = face(weight);
        // Summed in whole font units, so that the order of the characters cannot change the last bit.
        long units = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            units += face.advance(c);
            i += Character.charCount(c);
        }
        return units * sizeMm / face.unitsPerEm;
    }

    /** Height of the font above the base line, in em (> 0): what a line needs so that accents on capitals fit. */
    public double ascentEm(Weight weight) {
        return face(weight).ascentEm;
    }

    /** Depth of the font below the base line, in em (> 0). */
    public double descentEm(Weight weight) {
        return face(weight).descentEm;
    }

    /** Height of a capital H above the base line, in em: the "letter height" of drawing practice. */
    public double capHeightEm(Weight weight) {
        return face(weight).capHeightEm;
    }

    /** Whether the font has a glyph of its own for every character of the text. */
    public boolean hasAll(String text, Weight weight) {
        Face face = face(weight);
        return text.codePoints().allMatch(face::has);
    }

    private Face face(Weight weight) {
        return Objects.requireNonNull(faces.get(Objects.requireNonNull(weight, "weight")));
    }

    /** Reads the font files on first use. */
    private static final class Bundled {
        static final TextMeasure MEASURE = read();

        private static TextMeasure read() {
            Map<Weight, Face> faces = new EnumMap<>(Weight.class);
            for (Weight weight : Weight.values()) {
                faces.put(weight, Face.read(weight.resource()));
            }
            return new TextMeasure(faces);
        }
    }

    /** The figures of one font file. The glyph tables are copied out, so that the file need not stay open. */
    private static final class Face {
        /** The Basic Multilingual Plane: a character beyond it is measured as a missing glyph. */
        private static final int CHARACTERS = 0x10000;

        final int unitsPerEm;
        final double ascentEm;
        final double descentEm;
        final double capHeightEm;
        private final int missingAdvance;
        /** Advance in font units for each character of the plane, -1 where the font has none. */
        private final short[] advances = new short[CHARACTERS];

        private Face(TrueTypeFont font) throws IOException {
            unitsPerEm = font.getUnitsPerEm();
            ascentEm = font.getHorizontalHeader().getAscender() / (double) unitsPerEm;
            descentEm = -font.getHorizontalHeader().getDescender() / (double) unitsPerEm;
            missingAdvance = font.getAdvanceWidth(0);
            CmapLookup cmap = font.getUnicodeCmapLookup();
            for (int c = 0; c < CHARACTERS; c++) {
                int glyph = cmap.getGlyphId(c);
                advances[c] = (short) (glyph == 0 ? -1 : font.getAdvanceWidth(glyph));
            }
            // Measured on the letter: this font's OS/2 table is of version 1, which has no cap height.
            GlyphData h = font.getGlyph().getGlyph(cmap.getGlyphId('H'));
            capHeightEm = h.getBoundingBox().getUpperRightY() / unitsPerEm;
        }

        static Face read(String resource) {
            try (InputStream in = TextMeasure.class.getResourceAsStream(resource)) {
                if (in == null) {
                    throw new FileNotFoundException("font missing on the class path: " + resource);
                }
                try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
                    return new Face(font);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        boolean has(int codePoint) {
            return codePoint < CHARACTERS && advances[codePoint] >= 0;
        }

        int advance(int codePoint) {
            return has(codePoint) ? advances[codePoint] : missingAdvance;
        }
    }
}
