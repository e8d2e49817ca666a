package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.io.InputStream;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.layout.TextMeasure.Weight;

/** Compared with a second reader of the same font files: the JDK's own font system, with fractional metrics on. */
class TextMeasureTest {
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private final TextMeasure measure = TextMeasure.bundled();

    static Stream<Arguments> texts_in_both_weights() {
        return Stream.of(
                        "W12  2×6 mm² · 14 m",
                        "18.4 A · 8.5 % · Ik 0.27 kA",
                        "GB1",
                        "iiiii",
                        "MMMMM",
                        "−37 A ≤ 40 A ≥ 3 √2 ≈ 4.2 ± 5 ‰",
                        "Ω µF °C Δφ η ρ …",
                        "Łódź, Ærøskøbing, Çeşme, Ρόδος",
                        "vérité – façade — œuvre",
                        "difficult office (fi, fl)",
                        "AVATAR To Wa",
                        "\u2393 \uE123")
                .flatMap(text -> Stream.of(Weight.values()).map(weight -> Arguments.of(text, weight)));
    }

    @ParameterizedTest
    @MethodSource("texts_in_both_weights")
    void a_width_equals_that_of_an_independent_font_system(String text, Weight weight) throws Exception {
        double sizeMm = 2.5;
        // A great size in the other system, so that its own rounding cannot show.
        GlyphVector glyphs = awtFont(weight).deriveFont(1000f).createGlyphVector(EXACT, text);
        double expectedMm = glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX() * sizeMm / 1000;

        assertThat(measure.widthMm(text, sizeMm, weight)).isCloseTo(expectedMm, Percentage.withPercentage(0.5));
    }

    @ParameterizedTest
    @EnumSource(Weight.class)
    void heights_equal_those_of_an_independent_font_system(Weight weight) throws Exception {
        Font font = awtFont(weight).deriveFont(1000f);
        var line = font.getLineMetrics("Hg", EXACT);
        var capital = font.createGlyphVector(EXACT, "H").getVisualBounds();

        assertThat(measure.ascentEm(weight)).isCloseTo(line.getAscent() / 1000.0, within(0.002));
        assertThat(measure.descentEm(weight)).isCloseTo(line.getDescent() / 1000.0, within(0.002));
        assertThat(measure.capHeightEm(weight)).isCloseTo(capital.getHeight() / 1000, within(0.002));
    }

    @ParameterizedTest
    @EnumSource(Weight.class)
    void the_font_has_every_sign_that_a_sheet_needs(Weight weight) {
        assertThat(measure.hasAll("²³·×ΩΩµμ°±≤≥√−–—…‰→←↑↓≈≠∞Δηρφκθ½¼₀₁₂⌀∅∑✓", weight))
                .isTrue();
        assertThat(Stream.iterate(0xA0, c -> c <= 0x17F, c -> c + 1))
                .allSatisfy(c -> assertThat(measure.hasAll(Character.toString(c), weight))
                        .isTrue());
    }

    @Test
    void digits_are_all_of_one_width() {
        double zero = measure.widthMm("0", 2.5, Weight.REGULAR);

        assertThat("123456789".chars())
                .allSatisfy(c -> assertThat(measure.widthMm(Character.toString(c), 2.5, Weight.REGULAR))
                        .isEqualTo(zero));
    }

    @Test
    void bold_is_wider_and_the_width_grows_with_the_size() {
        double regularMm = measure.widthMm("24MAIN", 2.5, Weight.REGULAR);

        assertThat(measure.widthMm("24MAIN", 2.5, Weight.BOLD)).isGreaterThan(regularMm);
        assertThat(measure.widthMm("24MAIN", 5, Weight.REGULAR)).isCloseTo(2 * regularMm, within(1e-12));
        assertThat(measure.widthMm("", 2.5, Weight.REGULAR)).isZero();
    }

    @Test
    void a_character_beyond_the_font_is_as_wide_as_the_missing_glyph() {
        double missing = measure.widthMm("\uE123", 2.5, Weight.REGULAR);

        assertThat(missing).isPositive();
        assertThat(measure.widthMm("\uD83D\uDEA2", 2.5, Weight.REGULAR)).isEqualTo(missing);
        assertThat(measure.hasAll("\uE123", Weight.REGULAR)).isFalse();
    }

    @Test
    void an_impossible_size_is_refused() {
        assertThatThrownBy(() -> measure.widthMm("A", -1, Weight.REGULAR)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> measure.widthMm("A", Double.NaN, Weight.REGULAR))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_names_given_to_painters_are_those_in_the_font_files() throws Exception {
        assertThat(awtFont(Weight.REGULAR).getFontName()).isEqualTo(Weight.REGULAR.fullName());
        assertThat(awtFont(Weight.BOLD).getFontName()).isEqualTo(Weight.BOLD.fullName());
        assertThat(awtFont(Weight.BOLD).getFamily()).isEqualTo(TextMeasure.FAMILY);
    }

    private static Font awtFont(Weight weight) throws Exception {
        try (InputStream in = TextMeasureTest.class.getResourceAsStream(weight.resource())) {
            return Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(in));
        }
    }
}
