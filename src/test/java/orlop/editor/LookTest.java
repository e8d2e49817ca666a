package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LookTest {
    @Test
    void quiet_text_can_be_read_on_every_ground() throws Exception {
        for (boolean dark : new boolean[] {false, true}) {
            HeadlessBench.onUi(() -> {
                Look.install(dark);
                for (java.awt.Color ground :
                        new java.awt.Color[] {Look.strip(), Look.margin(), Look.card(), Look.chosen()}) {
                    assertThat(contrast(Look.quiet(), ground))
                            .as("quiet on " + ground)
                            .isGreaterThanOrEqualTo(4.5);
                    assertThat(contrast(Look.text(), ground)).isGreaterThanOrEqualTo(4.5);
                    for (var s : orlop.findings.Severity.values()) {
                        assertThat(contrast(Look.severity(s), ground))
                                .as(s + " on " + ground)
                                .isGreaterThanOrEqualTo(4.5);
                    }
                }
            });
        }
    }

    /** WCAG 2.1, relative luminance and contrast ratio. */
    private static double contrast(java.awt.Color a, java.awt.Color b) {
        double x = luminance(a);
        double y = luminance(b);
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
    }

    private static double luminance(java.awt.Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(int channel) {
        double v = channel / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
