package orlop.render;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.Locale;

/** Numbers and paths as SVG writes them, at most four digits after the point. */
final class SvgNumbers {
    private SvgNumbers() {}

    static String number(double v) {
        String s = String.format(Locale.ROOT, "%.4f", v);
        int end = s.length();
        while (s.charAt(end - 1) == '0') {
            end--;
        }
        String cut = s.substring(0, s.charAt(end - 1) == '.' ? end - 1 : end);
        return cut.equals("-0") ? "0" : cut;
    }

    static String colour(int rgb) {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }

    static String path(Shape shape) {
        StringBuilder s = new StringBuilder();
        double[] c = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> step(s, 'M', c, 2);
                case PathIterator.SEG_LINETO -> step(s, 'L', c, 2);
                case PathIterator.SEG_QUADTO -> step(s, 'Q', c, 4);
                case PathIterator.SEG_CUBICTO -> step(s, 'C', c, 6);
                default -> s.append('Z');
            }
        }
        return s.toString();
    }

    private static void step(StringBuilder s, char command, double[] c, int count) {
        s.append(command);
        for (int i = 0; i < count; i++) {
            s.append(i == 0 ? "" : " ").append(number(c[i]));
        }
    }
}
