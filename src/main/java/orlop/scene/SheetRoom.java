package orlop.scene;

import orlop.drawing.SheetSize;
import orlop.layout.Rect;

/** The room that a sheet has for components. */
public final class SheetRoom {
    /** From the frame to the first symbol. */
    private static final double IN_MM = 10;

    private SheetRoom() {}

    /**
     * Within the frame, above legend and title block, left of the printed margin.
     *
     * @param fromMm where it begins at the earliest, down from the upper edge of the paper; it has no height where that is too
     *     far down
     */
    public static Rect of(SheetSize size, double fromMm) {
        Rect r = new SheetFrame(size).drawable();
        double top = Math.max(r.minY() + IN_MM, fromMm);
        return new Rect(r.minX() + IN_MM, top, r.maxX(), Math.max(top, r.maxY()));
    }
}
