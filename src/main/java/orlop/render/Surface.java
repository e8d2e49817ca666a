package orlop.render;

import java.util.List;
import orlop.drawing.Point;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.Mark;
import orlop.scene.SceneItem;
import orlop.symbols.Symbol;

/** What a {@link Painter} paints on. Sizes in millimetres, colours as 0xRRGGBB, {@link #NONE} for none. */
public interface Surface {
    /** No colour. */
    int NONE = -1;

    /** All that follows belongs to this item, until {@link #endItem()}. */
    void beginItem(SceneItem item);

    void endItem();

    /**
     * An open line, corners mitred.
     *
     * @param roundEnds half discs at the ends, or else cut square
     */
    void line(List<Point> points, double widthMm, Mark.Dash dash, boolean roundEnds, int rgb);

    /** A closed outline, corners mitred. */
    void area(List<Point> points, int fillRgb, int strokeRgb, double widthMm, Mark.Dash dash);

    void disc(double xMm, double yMm, double radiusMm, int fillRgb, int strokeRgb, double widthMm);

    /**
     * A symbol in one colour: mirrored, then turned clockwise, then scaled, then moved to its point. Its letters and signs
     * that stay upright only move with it.
     */
    void symbol(Symbol symbol, double xMm, double yMm, int rotationDegree, boolean mirrored, double scale, int rgb);

    /**
     * One line of text in the bundled font.
     *
     * @param leftMm where it starts
     * @param yMm its base line
     * @param sizeMm size of the font
     * @param widthMm how wide it is
     */
    void text(double leftMm, double yMm, double sizeMm, Weight weight, int rgb, String text, double widthMm);
}
