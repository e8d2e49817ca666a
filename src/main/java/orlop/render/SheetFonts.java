package orlop.render;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import orlop.layout.TextMeasure.Weight;

/** The bundled font for Graphics2D, in both weights, read once. */
public final class SheetFonts {
    private static final Map<Weight, Font> FONTS = read();

    private SheetFonts() {}

    /** The font at a size of one unit. */
    public static Font font(Weight weight) {
        return Objects.requireNonNull(FONTS.get(weight));
    }

    private static Map<Weight, Font> read() {
        Map<Weight, Font> fonts = new EnumMap<>(Weight.class);
        for (Weight weight : Weight.values()) {
            try (InputStream in = SheetFonts.class.getResourceAsStream(weight.resource())) {
                fonts.put(weight, Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(in)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (FontFormatException e) {
                throw new IllegalStateException("the bundled font is broken: " + weight.resource(), e);
            }
        }
        return fonts;
    }
}
