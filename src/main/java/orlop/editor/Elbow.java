package orlop.editor;

import java.util.List;
import orlop.drawing.Point;
import orlop.scene.TerminalSpot;

/** A line along the grid from a terminal to the mouse, for the moment: the layout finds the proper way afterwards. */
final class Elbow {
    private Elbow() {}

    static List<Point> between(TerminalSpot from, Point to) {
        Point a = new Point(from.xMm(), from.yMm());
        if (from.heading().horizontal()) {
            double middle = (a.xMm() + to.xMm()) / 2;
            return List.of(a, new Point(middle, a.yMm()), new Point(middle, to.yMm()), to);
        }
        double middle = (a.yMm() + to.yMm()) / 2;
        return List.of(a, new Point(a.xMm(), middle), new Point(to.xMm(), middle), to);
    }
}
