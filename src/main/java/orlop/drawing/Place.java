package orlop.drawing;

import org.jspecify.annotations.Nullable;

/**
 * Where a component stands on paper.
 *
 * @param sheet id of its sheet
 * @param at its origin on that sheet
 * @param rotationDegree 0, 90, 180 or 270, clockwise
 * @param mirrored left and right exchanged before it is turned
 * @param labelAt where a person dragged its label, relative to {@code at}; null leaves it to the layout
 */
public record Place(
        String sheet,
        Point at,
        int rotationDegree,
        boolean mirrored,
        @Nullable Point labelAt) {
    public Place {
        Checks.id(sheet, "sheet");
        if (rotationDegree != 0 && rotationDegree != 90 && rotationDegree != 180 && rotationDegree != 270) {
            throw new Checks.OutOfRange(
                    "rotationDegree",
                    Message.of("drawing.range.rotation", "rotationDegree", rotationDegree),
                    "rotationDegree must be 0, 90, 180 or 270 but is " + rotationDegree);
        }
    }

    /** Upright at this point. */
    public static Place at(String sheet, double xMm, double yMm) {
        return new Place(sheet, new Point(xMm, yMm), 0, false, null);
    }

    public Place withAt(Point p) {
        return new Place(sheet, p, rotationDegree, mirrored, labelAt);
    }

    public Place withRotationDegree(int degree) {
        return new Place(sheet, at, degree, mirrored, labelAt);
    }

    public Place withMirrored(boolean m) {
        return new Place(sheet, at, rotationDegree, m, labelAt);
    }

    /** @param p upper left corner of the label, relative to {@link #at}; null leaves it to the layout */
    public Place withLabelAt(@Nullable Point p) {
        return new Place(sheet, at, rotationDegree, mirrored, p);
    }
}
