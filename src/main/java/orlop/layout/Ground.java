package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;

/** What lies on a sheet while texts are placed: symbols and lines, texts that stand, texts that may still move. */
final class Ground {
    /** A thing that stays where it is. */
    static final class Solid extends Grid.Item {
        final String owner;
        final boolean line;

        Solid(String owner, boolean line, Rect rect) {
            super(rect);
            this.owner = owner;
            this.line = line;
        }

        record Key(String owner, boolean line, Rect rect) {}

        Key key() {
            return new Key(owner, line, rect);
        }
    }

    /** A text. Its id is "" if it is none of the labels that are being placed. */
    static final class Text extends Grid.Item {
        final String id;

        Text(String id, Rect rect) {
            super(rect);
            this.id = id;
        }
    }

    /** A straight piece of the leader of a label. */
    static final class Lead extends Grid.Item {
        final String id;
        final Label.Leader piece;

        Lead(String id, Label.Leader piece) {
            super(piece.box());
            this.id = id;
            this.piece = piece;
        }
    }

    private final Rect area;
    private final Grid<Solid> solids;
    private final Grid<Text> texts;
    private final Grid<Lead> leads;
    private final List<Solid.Key> fixed = new ArrayList<>();

    Ground(Rect area) {
        this.area = area;
        solids = new Grid<>(area);
        texts = new Grid<>(area);
        leads = new Grid<>(area);
    }

    Rect area() {
        return area;
    }

    /** Everything that was put down and stays, in order. */
    List<Solid.Key> fixed() {
        return fixed;
    }

    void solid(Rect r) {
        add(new Solid("", false, r));
    }

    /** A bar, over which a leader may run if there is no better way. */
    void bar(Rect r) {
        add(new Solid("", true, r));
    }

    private void add(Solid s) {
        solids.add(s);
        fixed.add(s.key());
    }

    void text(Rect r) {
        texts.add(new Text("", r));
        fixed.add(new Solid.Key("\n", false, r));
    }

    void line(String owner, List<Point> points, double widthMm) {
        for (int i = 1; i < points.size(); i++) {
            add(new Solid(
                    owner, true, Rect.around(points.get(i - 1), points.get(i)).grown(widthMm / 2)));
        }
    }

    /**
     * Puts a label's text there.
     *
     * @param old the text where it was before; null if it was nowhere
     */
    Text put(@Nullable Text old, String id, Rect r) {
        if (old != null && old.rect.equals(r)) {
            return old;
        }
        if (old != null) {
            texts.remove(old);
        }
        Text t = new Text(id, r);
        texts.add(t);
        return t;
    }

    /** Puts a label's text where it stands for good, with its leader. */
    Text settle(@Nullable Text old, String id, Label.Put put) {
        if (put.leader() != null) {
            put.leader().pieces().forEach(p -> leads.add(new Lead(id, p)));
        }
        return put(old, id, put.rect());
    }

    /** Whether this would lie on nothing but lines of this owner. */
    boolean free(Rect r, String owner) {
        if (!area.contains(r)) {
            return false;
        }
        return !solids.any(r, s -> !s.line || !s.owner.equals(owner)) && !texts.any(r, t -> true);
    }

    /** Whether something that stays lies here. */
    boolean built(Rect r) {
        return solids.any(r, s -> true);
    }

    List<Solid> solids(Rect r) {
        return solids.overlapping(r);
    }

    List<Text> texts(Rect r) {
        return texts.overlapping(r);
    }

    /** Whether one of the texts that overlap a rectangle is of this kind. */
    boolean anyText(Rect r, Predicate<Text> kind) {
        return texts.any(r, kind);
    }

    List<Lead> leads(Rect r) {
        return leads.touching(r);
    }

    /** Whether a text here would touch no other thing. */
    boolean clear(String id, Rect r) {
        Rect room = r.grown(Labeller.GAP_MM);
        return area.contains(r)
                && !solids.any(room, s -> true)
                && !texts.any(room, t -> !t.id.equals(id))
                && crossing(id, room) == 0;
    }

    /** How many leaders of other labels run through a rectangle. */
    int crossing(String id, Rect room) {
        int n = 0;
        for (Lead l : leads.touching(room)) {
            if (!l.id.equals(id) && l.piece.crosses(room)) {
                n++;
            }
        }
        return n;
    }
}
