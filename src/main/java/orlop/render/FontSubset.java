package orlop.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.NavigableSet;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import orlop.layout.TextMeasure.Weight;

/** The part of the bundled font that a sheet uses. */
final class FontSubset {
    private FontSubset() {}

    /** A TrueType file with the glyphs of these characters alone, in base 64. */
    static String base64(Weight weight, NavigableSet<Integer> codePoints) {
        try (InputStream in = Objects.requireNonNull(FontSubset.class.getResourceAsStream(weight.resource()));
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            TTFSubsetter subset = new TTFSubsetter(font);
            codePoints.forEach(subset::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subset.writeToStream(out);
            return Base64.getEncoder().encodeToString(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
