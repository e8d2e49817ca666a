package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The places of a sheet that are no longer as they were. */
final class Changes {
    private final List<Rect> rects = new ArrayList<>();
    private @Nullable Rect around;

    void add(Rect r) {
        rects.add(r);
        around = around == null ? r : around.union(r);
    }

    void add(Label.Put put) {
        add(put.rect());
        if (put.leader() != null) {
            add(put.leader().box());
        }
    }

    void add(Way w) {
        for (int i = 1; i < w.points().size(); i++) {
            add(Rect.around(w.points().get(i - 1), w.points().get(i)));
        }
    }

    /** Whether one of them touches the rectangle. */
    boolean touch(Rect r) {
        if (around == null || !around.touches(r)) {
            return false;
        }
        for (Rect c : rects) {
            if (c.touches(r)) {
                return true;
            }
        }
        return false;
    }
}
