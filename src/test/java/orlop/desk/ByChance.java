package orlop.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;
import orlop.layout.Rect;
import orlop.store.FileProblem;

/** Makes up what a person might do next. The same seed makes up the same. */
final class ByChance {
    private static final int ENOUGH = 45;

    private final Random random;

    ByChance(long seed) {
        random = new Random(seed);
    }

    int upTo(int bound) {
        return random.nextInt(bound);
    }

    <T> T any(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private static List<String> ids(Drawing d) {
        List<String> ids = new ArrayList<>();
        d.components().forEach(e -> ids.add(e.getKey()));
        d.cables().forEach(e -> ids.add(e.getKey()));
        d.links().forEach(e -> ids.add(e.getKey()));
        d.notes().forEach(e -> ids.add(e.getKey()));
        return ids;
    }

    /** One to four things. */
    Set<String> some(Drawing d) {
        Set<String> some = new LinkedHashSet<>();
        List<String> ids = ids(d);
        for (int i = 0; i <= upTo(4); i++) {
            some.add(any(ids));
        }
        return some;
    }

    private Component component(Drawing d) {
        List<Component> all = new ArrayList<>();
        d.components().values().forEach(all::add);
        return any(all);
    }

    private TerminalRef terminal(Drawing d) {
        Component c = component(d);
        List<String> names = c.particulars().terminals();
        return new TerminalRef(c.id(), names.isEmpty() ? Tags.freeTap(d, c.id()) : any(names));
    }

    private Point point() {
        return new Point(2.5 * upTo(160), 2.5 * upTo(110));
    }

    /** What a thing covers, without the work of making a scene. */
    private static Map<String, Rect> boxes(Drawing d, Set<String> ids) {
        Map<String, Rect> boxes = new LinkedHashMap<>();
        for (String id : ids) {
            Component c = d.components().get(id);
            Note n = d.notes().get(id);
            Point p = c != null ? c.place().at() : n != null ? n.at() : null;
            if (p != null) {
                boxes.put(id, Rect.of(p.xMm() - 4.2, p.yMm() - 6.1, 8.4, 12.2));
            }
        }
        return boxes;
    }

    /** The next thing that is done. */
    Edit edit(Drawing d) {
        if (d.components().size() < 3) {
            return place(d);
        }
        boolean full = d.components().size() > ENOUGH;
        int what = full ? 6 : upTo(23);
        return switch (what) {
            case 0, 1 -> place(d);
            case 2, 3 -> CableRuns.cable(d, terminal(d), terminal(d));
            case 4 -> CableRuns.link(d, terminal(d), terminal(d));
            case 5 -> Edits.move(boxes(d, some(d)).keySet(), 2.5 * upTo(9), -2.5 * upTo(9), List.of("key", upTo(3)));
            case 6 -> Edits.delete(some(d));
            case 7 -> Edits.rename(any(ids(d)), any(List.of("X9", "FC2", "MAIN", Tags.nextCable(d))));
            case 8 -> Arranging.align(boxes(d, some(d)), any(List.of(Arranging.Line.values())));
            case 22 -> Layering.edit("1", upTo(3) == 0 ? Set.of() : some(d));
            case 9 -> Arranging.distribute(boxes(d, some(d)), any(List.of(Arranging.Direction.values())));
            case 10 -> Renumbering.edit(upTo(2) == 0 ? Set.of() : some(d));
            case 11 -> Repeats.edit(some(d), 2.5 * upTo(20), 2.5 * upTo(20), 1 + upTo(3));
            case 12 -> Locks.set(some(d), upTo(4) == 0);
            case 13 -> note(d);
            case 14, 15 -> one(d);
            case 16 -> several(d);
            case 17 -> insert(d);
            case 18 -> turned(d);
            default -> pasted(d);
        };
    }

    private Edit place(Drawing d) {
        Kind kind = any(List.of(Kind.values()));
        Point p = point();
        String sheet = upTo(5) == 0 ? "2" : "1";
        return Edits.place(Placings.fresh(d, kind, Place.at(sheet, p.xMm(), p.yMm()), any(List.of("12", "230", ""))));
    }

    private Edit note(Drawing d) {
        List<Note> notes = new ArrayList<>();
        d.notes().values().forEach(notes::add);
        String text = any(List.of("dry", "see FC1\nand W2", " ", "½ done <&> \"so\""));
        double heightMm = any(List.of(1.0, 2.5, 5.0));
        return notes.isEmpty() || upTo(2) == 0
                ? NoteEdits.place(NoteEdits.fresh(d, "1", point(), text, any(List.of(2.5, 5.0))))
                : NoteEdits.write(any(notes).id(), text, heightMm);
    }

    private Edit one(Drawing d) {
        String item = any(ids(d));
        CardField f = any(CardFields.of(d, item, "sail"));
        return CardEdits.set(item, f.path(), value(f), "sail");
    }

    private Edit several(Drawing d) {
        Set<String> items = some(d);
        List<CardField> common = CardFields.common(d, items, "sail");
        if (common.isEmpty()) {
            return note(d);
        }
        CardField f = any(common);
        return CardEdits.setAll(items, f.path(), value(f), "sail");
    }

    private @Nullable Object value(CardField f) {
        if (f.type() == CardField.Type.CHOICE) {
            Object chosen = f.choices().isEmpty() ? "" : any(f.choices()).value();
            return f.optional() && chosen.equals("") ? null : chosen;
        }
        if (f.optional() && upTo(4) == 0) {
            return null;
        }
        return switch (f.type()) {
            case NUMBER -> any(List.of(0.0, 0.5, 1.0, 2.5, 60.0, 1000.0, -1.0));
            case WHOLE -> upTo(6);
            case FLAG -> upTo(2) == 0;
            default -> any(List.of("", "pump", "lamp"));
        };
    }

    private Edit insert(Drawing d) {
        List<String> cables = new ArrayList<>();
        d.cables().forEach(e -> cables.add(e.getKey()));
        if (cables.isEmpty()) {
            return place(d);
        }
        String cable = any(cables);
        TerminalRef from = d.cables().require(cable).from();
        String system = d.components().require(from.component()).systemOf(from.terminal());
        Kind kind = any(List.of(Kind.FUSE, Kind.ISOLATOR, Kind.SHUNT, Kind.MOTOR));
        Component device = Component.of(Tags.next(d, kind), kind, Place.at("1", 50, 50), List.of(system));
        return Edits.insert(cable, device, any(List.of(0.0, 0.3, 1.0)));
    }

    private Edit turned(Drawing d) {
        Component c = component(d);
        return SwitchEdits.next(d, c, any(List.of("sail", "governing")))
                .orElse(Edits.change(c.withPlace(c.place().withRotationDegree(90 * upTo(4)))));
    }

    private Edit pasted(Drawing d) {
        String text = Clip.write(d, some(d));
        if (text.isEmpty()) {
            return Edit.of(Message.of("drawing.edit.vessel"), before -> before);
        }
        try {
            return Clip.read(text).onto(d, any(List.of("1", "2")), 10, 10).edit();
        } catch (FileProblem e) {
            throw new AssertionError("what was cut out of a drawing is one", e);
        }
    }
}
