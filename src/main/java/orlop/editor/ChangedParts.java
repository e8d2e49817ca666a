package orlop.editor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.desk.Same;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Mark;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.symbols.Bounds;
import orlop.symbols.SymbolLibrary;

/** What all items of a scene cover when they are painted, and where that differs from another scene of the same sheet. */
final class ChangedParts {
    /** More than so many places are painted no sooner than the whole sheet. */
    private static final int MOST = 60;

    private final Scene scene;
    private final SymbolLibrary symbols;
    private final Rect[] covers; // by item
    private final List<Rect> changed = new ArrayList<>();
    private Map<String, Integer> places = Map.of(); // by id, once one is not where it was
    private boolean comparable;

    /** @param last of the scene that was painted before; null if there is none */
    ChangedParts(Scene scene, SymbolLibrary symbols, @Nullable ChangedParts last) {
        this.scene = scene;
        this.symbols = symbols;
        covers = new Rect[scene.items().size()];
        comparable = last != null
                && Same.object(symbols, last.symbols)
                && scene.widthMm() == last.scene.widthMm()
                && scene.heightMm() == last.scene.heightMm();
        if (comparable && last != null) {
            compare(last);
        } else {
            for (int i = 0; i < covers.length; i++) {
                covers[i] = cover(scene.items().get(i).marks());
            }
        }
    }

    private void compare(ChangedParts last) {
        List<SceneItem> old = last.scene.items();
        boolean[] kept = new boolean[old.size()];
        int before = -1;
        for (int i = 0; i < covers.length; i++) {
            SceneItem item = scene.items().get(i);
            int at = last.place(item, before + 1);
            if (at >= 0 && same(old.get(at).marks(), item.marks())) {
                comparable &= at > before;
                before = at;
                kept[at] = true;
                covers[i] = last.covers[at];
            } else {
                covers[i] = cover(item.marks());
                changed.add(covers[i]);
            }
        }
        last.places = Map.of();
        for (int i = 0; i < kept.length; i++) {
            if (!kept[i]) {
                changed.add(last.covers[i]);
            }
        }
    }

    /** The place of the item that goes by the same id: mostly where it is looked for first; −1 for none. */
    private int place(SceneItem item, int first) {
        List<SceneItem> items = scene.items();
        if (first < items.size() && items.get(first).id().equals(item.id())) {
            return first;
        }
        if (places.isEmpty()) {
            places = new HashMap<>(2 * items.size());
            for (int i = 0; i < items.size(); i++) {
                places.put(items.get(i).id(), i);
            }
        }
        return places.getOrDefault(item.id(), -1);
    }

    /** What an item covers, edges and mitres included, by its place in the scene. */
    Rect covers(int item) {
        return covers[item];
    }

    /**
     * The places at which the scene is painted otherwise than the one before; empty if they are too many, if what is the same
     * is painted in another order, or if symbols look otherwise.
     */
    Optional<List<Rect>> changed() {
        return comparable && changed.size() <= MOST ? Optional.of(changed) : Optional.empty();
    }

    @SuppressWarnings("ReferenceEquality") // most are the very same
    private static boolean same(List<Mark> a, List<Mark> b) {
        return a == b || a.equals(b);
    }

    private Rect cover(List<Mark> marks) {
        Rect all = null;
        for (Mark m : marks) {
            Rect r = m.match(cover);
            all = all == null ? r : all.union(r);
        }
        return all == null ? new Rect(0, 0, 0, 0) : all;
    }

    private static Rect around(List<Point> points, double widthMm) {
        Rect r = Rect.around(points.get(0), points.get(0));
        for (Point p : points) {
            r = r.union(Rect.around(p, p));
        }
        return r.grown(2 * widthMm); // as far as a mitre may reach
    }

    private final Mark.Cases<Rect> cover = new Mark.Cases<>() {
        @Override
        public Rect line(Mark.Line m) {
            return around(m.points(), m.widthMm());
        }

        @Override
        public Rect area(Mark.Area m) {
            return around(m.points(), m.widthMm());
        }

        @Override
        public Rect disc(Mark.Disc m) {
            return Rect.of(m.xMm(), m.yMm(), 0, 0).grown(m.radiusMm() + m.widthMm());
        }

        @Override
        public Rect box(Mark.Box m) {
            return m.rect().grown(2 * m.widthMm());
        }

        /** However it is turned. */
        @Override
        public Rect symbol(Mark.SymbolAt m) {
            Bounds b = symbols.named(m.name()).orElseThrow().bounds();
            double x = Math.max(Math.abs(b.minXMm()), Math.abs(b.maxXMm()));
            double y = Math.max(Math.abs(b.minYMm()), Math.abs(b.maxYMm()));
            return Rect.of(m.xMm(), m.yMm(), 0, 0).grown(m.scale() * Math.max(x, y) + 1);
        }

        /** Letters reach a little beyond their advances. */
        @Override
        public Rect text(Mark.Text m) {
            double em = m.sizeMm();
            return Rect.of(m.leftMm() - em / 2, m.yMm() - 1.3 * em, m.widthMm() + em, 1.9 * em);
        }
    };
}
