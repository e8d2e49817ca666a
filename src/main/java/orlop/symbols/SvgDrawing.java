package orlop.symbols;

import java.util.List;

/**
 * What was read from an SVG file.
 *
 * @param outlines in the order of painting, at least one
 * @param extent what they cover, however the symbol stands
 * @param viewBox what the file says they cover
 */
record SvgDrawing(List<Outline> outlines, Extent extent, Bounds viewBox) {
    SvgDrawing {
        outlines = List.copyOf(outlines);
    }

    /** What they cover as drawn in the file. */
    Bounds ink() {
        return extent.at(Turn.NONE);
    }
}
