package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import orlop.drawing.Point;

/** What lies on the sheet while ways are sought: bodies to go round, zones to spare, lines that are there already. */
final class Obstacles {
    /** Least distance of a line from a foreign body. */
    static final double CLEARANCE_MM = 1.5;

    private static final double BUCKET_MM = 10;

    /** One thing in the way. The stamp keeps a thing in two buckets from being met twice by one question. */
    static final class Thing {
        final Rect rect;
        final String owner;
        final Sort sort;
        final List<String> nets;
        private int stamp;

        Thing(Rect rect, String owner, Sort sort, List<String> nets) {
            this.rect = rect;
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

    private final Map<Long, List<Thing>> buckets = new HashMap<>();
    private int question;

    /** A component or another block that lines go round. */
    void body(String owner, Rect rect) {
        add(new Thing(rect, owner, Sort.BODY, List.of()));
    }

    /** A place that lines had better leave to a text. */
    void zone(Rect rect) {
        add(new Thing(rect, "", Sort.ZONE, List.of()));
    }

    /** A way that has been found. */
    void line(String owner, List<String> nets, List<Point> points) {
        for (int i = 1; i < points.size(); i++) {
            Rect r = Rect.around(points.get(i - 1), points.get(i));
            boolean horizontal = r.height() < r.width();
            add(new Thing(r, owner, horizontal ? Sort.HORIZONTAL : Sort.VERTICAL, nets));
        }
    }

    private void add(Thing t) {
        for (long bx = bucket(t.rect.minX()); bx <= bucket(t.rect.maxX()); bx++) {
            for (long by = bucket(t.rect.minY()); by <= bucket(t.rect.maxY()); by++) {
                buckets.computeIfAbsent(key(bx, by), k -> new ArrayList<>()).add(t);
            }
        }
    }

    /** Everything that touches the rectangle or lies in a bucket with it. */
    void near(Rect r, Consumer<Thing> visit) {
        question++;
        for (long bx = bucket(r.minX()); bx <= bucket(r.maxX()); bx++) {
            for (long by = bucket(r.minY()); by <= bucket(r.maxY()); by++) {
                for (Thing t : buckets.getOrDefault(key(bx, by), List.of())) {
                    if (t.stamp != question) {
                        t.stamp = question;
                        visit.accept(t);
                    }
                }
            }
        }
    }

    private static long bucket(double mm) {
        return (long) Math.floor(mm / BUCKET_MM);
    }

    private static long key(long bx, long by) {
        return bx * 1_000_003L + by;
    }
}
