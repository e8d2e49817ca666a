package orlop.desk;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Earth;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Stage;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;

/**
 * Repeats circuits at a step: each copy has fresh tags (IEC 81346-2), and is tapped off the same bars as what it was
 * copied from.
 *
 * <p>A copy is as its original in everything that was drawn and in every operating condition. It is planned work, not
 * locked, and nothing has been measured or accepted at it.
 */
public final class Repeats {
    /** More are hardly meant. */
    public static final int MOST = 100;

    private final Drawing original;
    private final Set<String> ids;
    private final Tags.Run fresh = new Tags.Run();
    private Drawing after;

    private Repeats(Drawing original, Set<String> ids) {
        this.original = original;
        this.ids = ids;
        this.after = original;
    }

    /**
     * Copies the components and notes among these, the cables and links between them and those to a bar.
     *
     * @param dxMm from each copy to the next
     * @param dyMm from each copy to the next
     * @param times how many copies, 1 to {@link #MOST}
     */
    public static Edit edit(Set<String> ids, double dxMm, double dyMm, int times) {
        return edit(ids, dxMm, dyMm, IntStream.rangeClosed(1, times).boxed().toList());
    }

    /**
     * Copies to chosen places.
     *
     * @param places multiples of the step, one for each copy, in order; 1 to {@link #MOST} of them
     */
    public static Edit edit(Set<String> ids, double dxMm, double dyMm, List<Integer> places) {
        List<Integer> at = List.copyOf(places);
        if (at.isEmpty() || at.size() > MOST) {
            throw new IllegalArgumentException("copies: " + at.size());
        }
        Set<String> chosen = new LinkedHashSet<>(ids);
        return Edit.of(Message.of("desk.repeat", at.size()), d -> {
            Repeats r = new Repeats(d, chosen);
            at.forEach(n -> r.copy(n * dxMm, n * dyMm));
            return Edits.sound(d, r.after);
        });
    }

    /** What is in the one drawing and not in the other: components, cables, links and notes. */
    public static Set<String> added(Drawing before, Drawing after) {
        Set<String> ids = new LinkedHashSet<>();
        after.components().forEach(e -> ids.add(e.getKey()));
        after.cables().forEach(e -> ids.add(e.getKey()));
        after.links().forEach(e -> ids.add(e.getKey()));
        after.notes().forEach(e -> ids.add(e.getKey()));
        ids.removeIf(id -> before.hasItem(id) || before.notes().contains(id));
        return ids;
    }

    private void copy(double dx, double dy) {
        Map<String, String> tags = new LinkedHashMap<>();
        for (Component c : original.components().values()) {
            if (ids.contains(c.id())) {
                String tag = fresh.next(after, c.kind());
                tags.put(c.id(), tag);
                after = after.with(copied(c, tag, dx, dy));
            }
        }
        tags.forEach((from, to) -> after = after.with(named(after.components().require(to), tags)));
        conditions(tags);
        for (Cable w : original.cables().values()) {
            cable(w, tags, dx, dy);
        }
        for (Link l : original.links().values()) {
            link(l, tags);
        }
        for (Note n : original.notes().values()) {
            if (ids.contains(n.id())) {
                String id = Tags.nextNote(after);
                Note copy = new Note(id, n.sheet(), n.at().plus(dx, dy), n.text(), n.heightMm(), n.extras());
                after = after.withNotes(after.notes().with(id, copy));
            }
        }
    }

    private static Component copied(Component c, String tag, double dx, double dy) {
        Place p = c.place();
        Component copy = c.withId(tag).withLocked(false).withPlace(p.withAt(p.at().plus(dx, dy)));
        return RecordParts.with(copy, "stage", Stage.PLANNED);
    }

    /** A copy names the copy of what its original names, and nothing where that was not copied. */
    private static Component named(Component c, Map<String, String> tags) {
        if (c.particulars() instanceof Distribution.SheetLink l) {
            return c.withParticulars(new Distribution.SheetLink(tags.getOrDefault(l.mate(), "")));
        }
        if (c.particulars() instanceof Earth.NeutralEarthLink n) {
            return c.withParticulars(new Earth.NeutralEarthLink(tags.getOrDefault(n.source(), "")));
        }
        return c;
    }

    private void conditions(Map<String, String> tags) {
        for (OperatingCondition o : original.conditions().values()) {
            OperatingCondition now = after.conditions().require(o.id());
            for (Map.Entry<String, String> t : tags.entrySet()) {
                now = likewise(o, now, t.getKey(), t.getValue());
            }
            after = after.with(now);
        }
    }

    private static OperatingCondition likewise(OperatingCondition o, OperatingCondition now, String from, String to) {
        OperatingCondition next = now;
        if (o.loads().contains(from)) {
            next = next.withLoad(to, o.loads().require(from));
        }
        if (o.sources().contains(from)) {
            next = next.withSource(to, o.sourceOn(from));
        }
        if (o.switches().contains(from)) {
            next = next.withSwitch(to, o.switches().require(from));
        }
        return next;
    }

    private void cable(Cable w, Map<String, String> tags, double dx, double dy) {
        Map<TerminalRef, TerminalRef> ends = ends(w.from(), w.to(), tags);
        TerminalRef from = ends.get(w.from());
        TerminalRef to = ends.get(w.to());
        if (from == null || to == null) {
            return;
        }
        boolean whole = tags.containsKey(w.from().component()) && tags.containsKey(w.to().component());
        Cable copy = w.withId(fresh.nextCable(after))
                .withEnds(from, to)
                .withBends(whole ? w.bends().stream().map(p -> p.plus(dx, dy)).toList() : List.of());
        copy = RecordParts.with(copy, "stage", Stage.PLANNED);
        Point label = w.labelAt();
        after = after.with(RecordParts.with(copy, "labelAt", label == null ? null : label.plus(dx, dy)));
    }

    private void link(Link l, Map<String, String> tags) {
        Map<TerminalRef, TerminalRef> ends = ends(l.from(), l.to(), tags);
        TerminalRef from = ends.get(l.from());
        TerminalRef to = ends.get(l.to());
        if (from != null && to != null && !after.hasItem(Link.idOf(from, to))) {
            after = after.with(new Link(Link.idOf(from, to), from, to, l.lengthM(), l.ratingA(), l.extras()));
        }
    }

    /** The ends of the copy by those of the original; one is missing where it would hang in the air. */
    private Map<TerminalRef, TerminalRef> ends(TerminalRef a, TerminalRef b, Map<String, String> tags) {
        Map<TerminalRef, TerminalRef> ends = new HashMap<>();
        if (tags.containsKey(a.component()) || tags.containsKey(b.component())) {
            put(ends, a, tags);
            put(ends, b, tags);
        }
        return ends;
    }

    private void put(Map<TerminalRef, TerminalRef> ends, TerminalRef end, Map<String, String> tags) {
        String copy = tags.get(end.component());
        Component bar = copy == null ? original.components().get(end.component()) : null;
        if (copy != null) {
            ends.put(end, new TerminalRef(copy, end.terminal()));
        } else if (isBar(bar)) {
            ends.put(end, new TerminalRef(end.component(), Tags.freeTap(after, end.component())));
        }
    }

    private static boolean isBar(@Nullable Component c) {
        return c != null && c.kind().isOnePiece();
    }
}
