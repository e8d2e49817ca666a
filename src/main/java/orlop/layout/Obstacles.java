package orlop.layout;

import java.util.List;
import java.util.function.Consumer;
import orlop.drawing.Point;

/** What lies on the sheet while ways are sought: bodies to go round, zones to spare, lines that are there already. */
final class Obstacles {
    /** Least distance of a line from a foreign body. */
    static final double CLEARANCE_MM = 1.5;

    /** One thing in the way. */
    static final class Thing extends Grid.Item {
        final String owner;
        final Sort sort;
        final List<String> nets;

        Thing(Rect rect, String owner, Sort sort, List<String> nets) {
            super(rect);
            this.owner = owner;
            this.sort = sort;
            this.nets = nets;
        }

        boolean horizontal() {
            return sort == Sort.HORIZONTAL;
        }
    }

    enum Sort {
        BODY,
        ZONE,
        HORIZONTAL,
        VERTICAL
    }

    private final Grid<Thing> things;

    Obstacles(Rect area) {
        things = new Grid<>(area);
    }

    /** A component or another block that lines go round. */
    void body(String owner, Rect rect) {
        things.add(new Thing(rect, owner, Sort.BODY, List.of()));
    }

    /** A place that lines had better leave to a text. */
    void zone(Rect rect) {
        things.add(new Thing(rect, "", Sort.ZONE, List.of()));
    }

    /** A way that has been found. */
    void line(String owner, List<String> nets, List<Point> points) {
        for (int i = 1; i < points.size(); i++) {
            Rect r = Rect.around(points.get(i - 1), points.get(i));
            boolean horizontal = r.height() < r.width();
            things.add(new Thing(r, owner, horizontal ? Sort.HORIZONTAL : Sort.VERTICAL, nets));
        }
    }

    /** Everything that touches the rectangle. */
    void near(Rect r, Consumer<Thing> visit) {
        things.near(r, visit);
    }
}
