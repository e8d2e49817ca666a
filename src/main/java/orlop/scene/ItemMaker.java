package orlop.scene;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;
import orlop.layout.Rect;

/** Collects the items of a scene: gives each a safe and unique id and finds the bounds of its marks. */
final class ItemMaker {
    private final List<SceneItem> items = new ArrayList<>();
    private final Set<String> ids;
    private final Map<Role, Map<String, Kept>> before;
    private final Map<Role, Map<String, Kept>> now = new EnumMap<>(Role.class);

    ItemMaker() {
        this(Map.of());
    }

    /** @param before what a maker of the same sheet kept */
    ItemMaker(Map<Role, Map<String, Kept>> before) {
        this.before = before;
        int items = before.values().stream().mapToInt(Map::size).sum();
        this.ids = new HashSet<>(2 * items);
    }

    /** How a thing is drawn. */
    record Drawn(String title, Rect bounds, List<Mark> marks) {
        Drawn {
            marks = List.copyOf(marks);
        }
    }

    /**
     * How a thing is drawn, what that was made from, and its id if no other item has it.
     *
     * @param item null if it has data: these hold a whole study in memory
     */
    record Kept(From from, Drawn drawn, String id, @Nullable SceneItem item) {}

    /** What serves when the sheet is made the next time, by role and subject. */
    Map<Role, Map<String, Kept>> kept() {
        return now;
    }

    /**
     * Adds an item. It is drawn as before if it is made from the same and nothing has changed around it.
     *
     * @param from all that the maker makes it from, comparable
     * @param unchanged whether what the maker finds around it is the same, too
     */
    void add(Role role, String subject, From from, boolean unchanged, Supplier<Drawn> maker, Map<String, String> data) {
        Map<String, Kept> last = before.get(role);
        Kept old = last == null ? null : last.get(subject);
        if (old != null && unchanged && old.from.equals(from)) {
            String id = unique(old.id);
            SceneItem o = old.item;
            Drawn d = old.drawn;
            boolean same = o != null && bare(data) && o.id().equals(id);
            items.add(same ? o : new SceneItem(id, role, subject, d.title, d.bounds, d.marks, data));
            keep(role, subject, old, last);
            return;
        }
        String wanted = old == null ? id(role, subject) : old.id;
        Drawn d = maker.get();
        SceneItem item = new SceneItem(unique(wanted), role, subject, d.title, d.bounds, d.marks, data);
        items.add(item);
        keep(role, subject, new Kept(from, d, wanted, bare(data) ? item : null), last);
    }

    /** Whether there are no values, without writing them out. */
    private static boolean bare(Map<String, String> data) {
        return !(data instanceof OnDemand) && data.isEmpty();
    }

    private void keep(Role role, String subject, Kept kept, @Nullable Map<String, Kept> last) {
        int expected = last == null ? 16 : 2 * last.size();
        now.computeIfAbsent(role, r -> new HashMap<>(expected)).put(subject, kept);
    }

    List<SceneItem> items() {
        return items;
    }

    void add(Role role, String subject, String title, List<Mark> marks, Map<String, String> data) {
        add(role, subject, title, bounds(marks), marks, data);
    }

    void add(Role role, String subject, String title, Rect bounds, List<Mark> marks, Map<String, String> data) {
        items.add(new SceneItem(unique(id(role, subject)), role, subject, title, bounds, marks, data));
    }

    private static String id(Role role, String subject) {
        StringBuilder s = new StringBuilder(role.word());
        if (!subject.isEmpty()) {
            s.append('-');
        }
        for (int i = 0; i < subject.length(); i++) {
            char c = subject.charAt(i);
            boolean safe = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
            if (safe) {
                s.append(c);
            } else {
                s.append('_').append(Integer.toHexString(c)).append('_');
            }
        }
        return s.toString();
    }

    private String unique(String wanted) {
        String id = wanted;
        for (int n = 2; !ids.add(id); n++) {
            id = wanted + "_" + n;
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
