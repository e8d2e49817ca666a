package orlop.testing;

import java.awt.image.BufferedImage;

/** Pictures compared dot by dot. */
public final class Dots {
    /** Grey levels by which a dot may differ: what programs that share no code make of one edge. */
    private static final int LEVELS = 64;

    private Dots() {}

    /**
     * The share of the dots to which the other picture has nothing near, looked at both ways: no dot within one of it comes
     * within {@value #LEVELS} grey levels.
     */
    public static double differing(BufferedImage a, BufferedImage b) {
        if (a.getWidth() != b.getWidth() || a.getHeight() != b.getHeight()) {
            return 1;
        }
        int[] greyA = grey(a);
        int[] greyB = grey(b);
        return Math.max(
                lost(greyA, greyB, a.getWidth(), a.getHeight()), lost(greyB, greyA, a.getWidth(), a.getHeight()));
    }

    private static double lost(int[] a, int[] b, int w, int h) {
        long count = 0;
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                count += far(a[y * w + x], b, x, y, w, h) ? 1 : 0;
            }
        }
        return count / (double) (w * (long) h);
    }

    private static boolean far(int level, int[] b, int x, int y, int w, int h) {
        for (int v = Math.max(0, y - 1); v <= Math.min(h - 1, y + 1); v++) {
            for (int u = Math.max(0, x - 1); u <= Math.min(w - 1, x + 1); u++) {
                if (Math.abs(level - b[v * w + u]) <= LEVELS) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int[] grey(BufferedImage image) {
        int w = image.getWidth();
        int[] rgb = image.getRGB(0, 0, w, image.getHeight(), null, 0, w);
        for (int i = 0; i < rgb.length; i++) {
            int p = rgb[i];
            rgb[i] = (299 * (p >> 16 & 255) + 587 * (p >> 8 & 255) + 114 * (p & 255)) / 1000;
        }
        return rgb;
    }
}
