package orlop.scene;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * A colour for every ink, as 0xRRGGBB.
 *
 * <p>Light blue, green and green-yellow are kept for neutral and protective conductors and stand for no system; red stands
 * for danger alone. The systems' colours were chosen to stay apart in lightness or hue for the common kinds of colour
 * blindness; their names in the lines tell them apart in black and white.
 *
 * @param name short name, safe in an id
 * @param rgb a value for every ink
 */
public record Palette(String name, Map<Ink, Integer> rgb) {
    /** Dark on white: paper, and the window by day. */
    public static final Palette LIGHT = of(
            "light", 0x1B1F24, 0x5B626C, 0x70696A, 0xFFFFFF, 0xC4161F, 0xA65200, 0x2C5F8F, 0xE5A0A4, 0xD9DDE4, 0x3A3F9E,
            0x8C2F86, 0x77491B, 0x00646B, 0x7D6B00, 0x8A3FD1, 0x2E7D32);

    /** Light on dark: the window by night. */
    public static final Palette DARK = of(
            "dark", 0xE6E8EB, 0xA3ABB6, 0x9A9294, 0x1E2126, 0xFF6B6B, 0xF0A04B, 0x7FB4E6, 0x8A4A4E, 0x3A404A, 0x9DA6FF,
            0xE08BDB, 0xD2A273, 0x63D2C8, 0xE0D24A, 0xC77DFF, 0x4CAF50);

    public Palette {
        Objects.requireNonNull(name, "name");
        rgb = Collections.unmodifiableMap(new EnumMap<>(rgb));
        if (rgb.size() != Ink.values().length) {
            throw new IllegalArgumentException("a palette needs a colour for every ink");
        }
    }

    /** The colour of this ink, 0xRRGGBB. */
    public int rgb(Ink ink) {
        return Objects.requireNonNull(rgb.get(ink));
    }

    /** Contrast of an ink on the paper, 1 to 21, by the formula of WCAG 2.1 (relative luminance). */
    public double contrastOnPaper(Ink ink) {
        double a = luminance(rgb(ink));
        double b = luminance(rgb(Ink.PAPER));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static Palette of(String name, int... rgb) {
        Map<Ink, Integer> map = new EnumMap<>(Ink.class);
        int i = 0;
        for (Ink ink : Ink.values()) {
            map.put(ink, rgb[i++]);
        }
        return new Palette(name, map);
    }
}
