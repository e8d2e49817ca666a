package orlop.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteTest {
    static List<Palette> palettes() {
        return List.of(Palette.LIGHT, Palette.DARK);
    }

    /** WCAG 2.1, success criterion 1.4.3: 4.5 : 1 for text. */
    @ParameterizedTest
    @MethodSource("palettes")
    void every_ink_of_texts_stands_out_from_the_paper(Palette palette) {
        for (Ink ink : Ink.values()) {
            if (ink.forText()) {
                assertThat(palette.contrastOnPaper(ink)).as(ink.name()).isGreaterThanOrEqualTo(4.5);
            }
        }
    }

    /** WCAG 2.1, success criterion 1.4.11: 3 : 1 for lines and symbols that must be made out. */
    @ParameterizedTest
    @MethodSource("palettes")
    void every_system_and_every_severity_stands_out_from_the_paper_as_a_line(Palette palette) {
        List<Ink> lines = new ArrayList<>(systems());
        lines.addAll(List.of(Ink.PROTECTIVE, Ink.INK, Ink.DEAD, Ink.QUIET, Ink.DANGER, Ink.DEFECT, Ink.ADVICE));
        for (Ink ink : lines) {
            assertThat(palette.contrastOnPaper(ink)).as(ink.name()).isGreaterThanOrEqualTo(3);
        }
    }

    /** IEC 60446 / 60445 keep light blue, green and green-yellow for neutral and protective conductors. */
    @ParameterizedTest
    @MethodSource("palettes")
    void no_system_is_red_green_or_light_blue(Palette palette) {
        for (Ink ink : systems()) {
            float[] hsb = hsb(palette.rgb(ink));
            double hue = hsb[0] * 360;
            boolean strong = hsb[1] > 0.5;
            assertThat(strong && (hue < 15 || hue > 345)).as(ink + " is red").isFalse();
            assertThat(strong && hue > 62 && hue < 165).as(ink + " is green").isFalse();
            assertThat(strong && hue > 190 && hue < 222)
                    .as(ink + " is light blue")
                    .isFalse();
        }
    }

    /**
     * Distance in CIE L*a*b* after the simulation of Viénot, Brettel and Mollon (1999) for protanopia and deuteranopia;
     * for tritanopia, of Machado, Oliveira and Fernandes (2009), severity 1.0; matrices from memory. 7 is well above what is just told apart (about 2.3); the names in the lines are the second sign.
     */
    @ParameterizedTest
    @MethodSource("palettes")
    void systems_and_protective_conductors_stay_apart_for_the_colour_blind(Palette palette) {
        List<Ink> systems = new ArrayList<>(systems());
        systems.add(Ink.PROTECTIVE);
        double[][] protan = {{0.11238, 0.88762, 0}, {0.11238, 0.88762, 0}, {0.00401, -0.00401, 1}};
        double[][] deutan = {{0.29275, 0.70725, 0}, {0.29275, 0.70725, 0}, {-0.02234, 0.02234, 1}};
        double[][] tritan = {
            {1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}
        };
        for (double[][] m : List.of(protan, deutan, tritan)) {
            for (int i = 0; i < systems.size(); i++) {
                for (int j = i + 1; j < systems.size(); j++) {
                    double d = distance(seen(palette.rgb(systems.get(i)), m), seen(palette.rgb(systems.get(j)), m));
                    assertThat(d).as(systems.get(i) + " " + systems.get(j)).isGreaterThan(7);
                }
            }
        }
    }

    private static List<Ink> systems() {
        List<Ink> all = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            all.add(Ink.system(i));
        }
        return all;
    }

    private static float[] hsb(int rgb) {
        return java.awt.Color.RGBtoHSB(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255, null);
    }

    private static double[] seen(int rgb, double[][] m) {
        double[] linear = {linear(rgb >> 16 & 255), linear(rgb >> 8 & 255), linear(rgb & 255)};
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[i] += m[i][j] * linear[j];
            }
            out[i] = Math.max(0, Math.min(1, out[i]));
        }
        return lab(out);
    }

    private static double linear(int c) {
        double v = c / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    /** sRGB, D65: CIE 15. */
    private static double[] lab(double[] rgb) {
        double x = (0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505;
        double y = 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
        double z = (0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.089;
        return new double[] {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
    }

    private static double f(double t) {
        return t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16.0 / 116;
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }
}
