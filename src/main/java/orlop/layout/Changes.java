package orlop.layout;

import java.util.ArrayList;
import java.util.List;

/** The places of a sheet that are no longer as they were. */
final class Changes {
    private final List<Rect> rects = new ArrayList<>();

    void add(Rect r) {
        rects.add(r);
    }

    void add(Way w) {
        for (int i = 1; i < w.points().size(); i++) {
            rects.add(Rect.around(w.points().get(i - 1), w.points().get(i)));
        }
    }

    /** Whether one of them touches the rectangle. */
    boolean touch(Rect r) {
        for (Rect c : rects) {
            if (c.touches(r)) {
                return true;
            }
        }
        return false;
    }
}
