package orlop.symbols;

import java.util.List;

/**
 * What was read from an SVG file.
 *
 * @param outlines in the order of painting, at least one
 * @param ink what they cover
 * @param viewBox what the file says they cover
 */
record SvgDrawing(List<Outline> outlines, Bounds ink, Bounds viewBox) {
    SvgDrawing {
        outlines = List.copyOf(outlines);
    }
}
