package orlop.scene;

import java.util.List;
import java.util.Map;
import orlop.drawing.SheetSize;
import orlop.drawing.Words;
import orlop.layout.Rect;

/**
 * The division of a sheet: frame and grid reference after ISO 5457 (from memory), title block, printed margin, room for the
 * drawing.
 */
final class SheetFrame {
    /** Left margin of the paper, for filing. */
    static final double LEFT_MM = 20;

    /** The other margins of the paper. */
    static final double EDGE_MM = 10;

    /** Height of the title block, and of legend and cautions where they stand beside it. */
    static final double STRIP_MM = 36;

    /** Width of the title block, ISO 7200. */
    static final double TITLE_MM = 180;

    /** Height of legend and cautions where they stand above the title block. */
    private static final double FOOT_MM = 32;

    private static final double LEAST_FOOT_MM = 60;

    private final SheetSize size;
    private final boolean margined;

    SheetFrame(SheetSize size) {
        this(size, true);
    }

    /** @param margined whether a margin is kept free for the checker's notes */
    SheetFrame(SheetSize size, boolean margined) {
        this.size = size;
        this.margined = margined;
    }

    /** Whether a margin is kept free for the checker's notes. */
    boolean margined() {
        return margined;
    }

    Rect frame() {
        return new Rect(LEFT_MM, EDGE_MM, size.widthMm() - EDGE_MM, size.heightMm() - EDGE_MM);
    }

    Rect titleBlock() {
        Rect f = frame();
        return new Rect(f.maxX() - TITLE_MM, f.maxY() - STRIP_MM, f.maxX(), f.maxY());
    }

    /** Legend and cautions: left of the title block, or above it on a narrow sheet. */
    Rect foot() {
        Rect f = frame();
        double bottom = f.maxY() - (narrow() ? STRIP_MM : 0);
        return new Rect(f.minX(), bodyBottom(), f.maxX() - (narrow() ? 0 : TITLE_MM), bottom);
    }

    private boolean narrow() {
        return frame().width() - TITLE_MM < LEAST_FOOT_MM;
    }

    private double bodyBottom() {
        return frame().maxY() - STRIP_MM - (narrow() ? FOOT_MM : 0);
    }

    /** All above legend and title block. */
    Rect body() {
        Rect f = frame();
        return new Rect(f.minX(), f.minY(), f.maxX(), bodyBottom());
    }

    /** The printed margin, right of the drawing, above the title block; without width where none is kept free. */
    Rect margin() {
        Rect f = frame();
        double width = switch (size) {
            case A4, A4_UPRIGHT -> 62;
            case A3 -> 76;
            case A2, A1 -> 90;
        };
        return new Rect(f.maxX() - (margined ? width : 0), f.minY(), f.maxX(), bodyBottom());
    }

    /** Where the drawing itself may lie. */
    Rect drawable() {
        Rect f = frame();
        return new Rect(f.minX(), f.minY(), margin().minX(), bodyBottom());
    }

    /** What the centring marks cover within the frame: no text lies there. */
    List<Rect> centringMarks() {
        Rect f = frame();
        double in = FrameMarks.CENTRING_MM;
        double x = size.widthMm() / 2;
        double y = size.heightMm() / 2;
        return List.of(
                new Rect(x, f.minY(), x, f.minY() + in).grown(0.5),
                new Rect(f.minX(), y, f.minX() + in, y).grown(0.5),
                new Rect(f.maxX() - in, y, f.maxX(), y).grown(0.5));
    }

    void draw(ItemMaker items, Words words) {
        items.add(Role.FRAME, "", words.text("scene.frame"), FrameMarks.of(frame(), size), Map.of());
    }
}
