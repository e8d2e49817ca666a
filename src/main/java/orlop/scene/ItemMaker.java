package orlop.scene;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;
import orlop.layout.Rect;

/** Collects the items of a scene: gives each a safe and unique id and finds the bounds of its marks. */
final class ItemMaker {
    private final List<SceneItem> items = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();

    List<SceneItem> items() {
        return items;
    }

    void add(Role role, String subject, String title, List<Mark> marks, Map<String, String> data) {
        add(role, subject, title, bounds(marks), marks, data);
    }

    void add(Role role, String subject, String title, Rect bounds, List<Mark> marks, Map<String, String> data) {
        items.add(new SceneItem(unique(role, subject), role, subject, title, bounds, marks, data));
    }

    private String unique(Role role, String subject) {
        StringBuilder s = new StringBuilder(role.word());
        if (!subject.isEmpty()) {
            s.append('-');
        }
        for (int i = 0; i < subject.length(); i++) {
            char c = subject.charAt(i);
            boolean safe = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
            s.append(safe ? String.valueOf(c) : "_" + Integer.toHexString(c) + "_");
        }
        String id = s.toString();
        for (int n = 2; !ids.add(id); n++) {
            id = s + "_" + n;
        }
        return id;
    }

    /** Around all marks; symbols count as a point: their items are given bounds. */
    static Rect bounds(List<Mark> marks) {
        Rect all = null;
        for (Mark m : marks) {
            Rect r = m.match(BOUNDS);
            all = all == null ? r : all.union(r);
        }
        return all == null ? new Rect(0, 0, 0, 0) : all;
    }

    private static final Mark.Cases<Rect> BOUNDS = new Mark.Cases<>() {
        @Override
        public Rect line(Mark.Line m) {
            return around(m.points()).grown(m.widthMm() / 2);
        }

        @Override
        public Rect area(Mark.Area m) {
            return around(m.points()).grown(m.stroke() == null ? 0 : m.widthMm() / 2);
        }

        @Override
        public Rect disc(Mark.Disc m) {
            return Rect.of(m.xMm(), m.yMm(), 0, 0).grown(m.radiusMm() + edge(m.stroke(), m.widthMm()));
        }

        @Override
        public Rect box(Mark.Box m) {
            return m.rect().grown(edge(m.stroke(), m.widthMm()));
        }

        @Override
        public Rect symbol(Mark.SymbolAt m) {
            return Rect.of(m.xMm(), m.yMm(), 0, 0);
        }

        @Override
        public Rect text(Mark.Text m) {
            return Rect.of(m.leftMm(), m.yMm() - 0.8 * m.sizeMm(), m.widthMm(), 1.02 * m.sizeMm());
        }
    };

    private static double edge(@Nullable Ink stroke, double widthMm) {
        return stroke == null ? 0 : widthMm / 2;
    }

    private static Rect around(List<Point> points) {
        Rect r = Rect.around(points.get(0), points.get(0));
        for (Point p : points) {
            r = r.union(Rect.around(p, p));
        }
        return r;
    }
}
