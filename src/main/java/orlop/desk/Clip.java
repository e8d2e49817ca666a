package orlop.desk;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;
import orlop.store.FileProblem;
import orlop.store.Fragment;

/**
 * A part of a drawing, cut or copied: components, what joins them among themselves, and notes.
 *
 * @param part a small drawing of its own
 */
public record Clip(Drawing part) {

    /**
     * A clip ready to be put in.
     *
     * @param edit puts it in, under fresh tags where its own are taken
     * @param ids what will have been put in
     */
    public record Pasted(Edit edit, Set<String> ids) {}

    /** What of these ids can be copied, as text for the clipboard; "" if there is no component and no note among them. */
    public static String write(Drawing d, Set<String> ids) {
        Set<String> all = new LinkedHashSet<>();
        d.components().stream().map(Component::id).filter(ids::contains).forEach(all::add);
        Set<String> components = Set.copyOf(all);
        d.notes().stream().map(Note::id).filter(ids::contains).forEach(all::add);
        if (all.isEmpty()) {
            return "";
        }
        d.cables().stream()
                .filter(w -> components.contains(w.from().component()) && components.contains(w.to().component()))
                .map(Cable::id)
                .forEach(all::add);
        return Fragment.write(d, all);
    }

    /** @throws FileProblem if the text is no drawing */
    public static Clip read(String text) throws FileProblem {
        return new Clip(Fragment.read(text, "clipboard"));
    }

    /** The middle of what is in it, on the grid; the origin for an empty one. */
    public Point middle() {
        List<Point> at = Stream.concat(
                        part.components().stream().map(c -> c.place().at()),
                        part.notes().stream().map(Note::at))
                .toList();
        if (at.isEmpty()) {
            return new Point(0, 0);
        }
        var x = at.stream().mapToDouble(Point::xMm).summaryStatistics();
        var y = at.stream().mapToDouble(Point::yMm).summaryStatistics();
        return new Point(
                Arranging.onGrid((x.getMin() + x.getMax()) / 2), Arranging.onGrid((y.getMin() + y.getMax()) / 2));
    }

    /** This clip, to be put on a sheet of a drawing, moved by so much. */
    public Pasted onto(Drawing d, String sheet, double dxMm, double dyMm) {
        Map<String, String> tags = new LinkedHashMap<>();
        Tags.Run fresh = new Tags.Run();
        ForeignSystems systems = new ForeignSystems(part, d);
        Drawing after = systems.drawing();
        for (Component c : part.components().values()) {
            String tag = after.hasItem(c.id()) || after.notes().contains(c.id()) ? fresh.next(after, c.kind()) : c.id();
            tags.put(c.id(), tag);
            after = after.with(moved(c, tag, sheet, dxMm, dyMm, d).withSystems(systems.called(c.systems())));
        }
        Set<String> ids = new LinkedHashSet<>(tags.values());
        for (Cable w : part.cables().values()) {
            String tag = after.hasItem(w.id()) || after.notes().contains(w.id()) ? fresh.nextCable(after) : w.id();
            after = after.with(w.withId(tag)
                    .withEnds(end(w.from(), tags), end(w.to(), tags))
                    .withLocked(false)
                    .withBends(w.bends().stream().map(p -> p.plus(dxMm, dyMm)).toList()));
            ids.add(tag);
        }
        for (Link l : part.links().values()) {
            Link copy = l.withEnds(end(l.from(), tags), end(l.to(), tags));
            after = after.with(after.hasItem(copy.id()) ? Link.of(copy.from(), copy.to()) : copy);
        }
        for (Note n : part.notes().values()) {
            String id = after.hasItem(n.id()) || after.notes().contains(n.id()) ? Tags.nextNote(after) : n.id();
            Note copy = new Note(id, sheet, n.at().plus(dxMm, dyMm), n.text(), n.heightMm(), n.extras());
            after = after.withNotes(after.notes().with(id, copy));
            ids.add(id);
        }
        Drawing result = after;
        Message label =
                Message.of("desk.paste", part.components().size() + part.notes().size());
        return new Pasted(Edit.of(label, before -> onlyOn(before, d, result)), ids);
    }

    /** The tags were made for one drawing; on another the edit would overwrite what is there. */
    @SuppressWarnings("ReferenceEquality") // the very drawing for which it was made
    private static Drawing onlyOn(Drawing before, Drawing made, Drawing result) {
        if (before != made) {
            throw new Edit.Refusal(Message.of("desk.paste.other"));
        }
        return result;
    }

    private static TerminalRef end(TerminalRef t, Map<String, String> tags) {
        return new TerminalRef(tags.getOrDefault(t.component(), t.component()), t.terminal());
    }

    private static Component moved(Component c, String tag, String sheet, double dxMm, double dyMm, Drawing into) {
        Place p = c.place();
        Point at = p.at().plus(dxMm, dyMm);
        Component copy = c.withId(tag)
                .withLocked(false)
                .withPlace(new Place(sheet, at, p.rotationDegree(), p.mirrored(), p.labelAt()));
        return into.locations().contains(c.location()) ? copy : RecordParts.with(copy, "location", "");
    }
}
