package orlop.store;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Earth;
import orlop.drawing.Ledger;
import orlop.drawing.Link;
import orlop.drawing.Note;

/** Part of a drawing as text for the clipboard: a whole small drawing in the format of the file. */
public final class Fragment {
    private final Drawing whole;
    private final Set<String> chosen;

    private Fragment(Drawing whole, Set<String> chosen) {
        this.whole = whole;
        this.chosen = Set.copyOf(chosen);
    }

    /**
     * The chosen components, cables and notes with the systems, sheets, locations and cableways that they name.
     *
     * <p>A cable comes along if it is chosen and both of its ends are; a link if both of its ends are. What names
     * something that is not chosen (a sheet link its other end) names nothing in the fragment.
     *
     * @param ids of components, cables and notes; others are passed over
     */
    public static String write(Drawing drawing, Set<String> ids) {
        return DrawingWriter.text(new Fragment(drawing, ids).drawing());
    }

    /**
     * Reads what {@link #write} or any drawing file gives.
     *
     * @param name what messages call it
     * @throws FileProblem if the text is no sound drawing
     */
    public static Drawing read(String text, String name) throws FileProblem {
        return DrawingFile.load(text.getBytes(StandardCharsets.UTF_8), name);
    }

    private Drawing drawing() {
        Drawing part = Drawing.empty("");
        for (Component c : whole.components().values()) {
            if (chosen.contains(c.id())) {
                part = part.with(freed(c));
            }
        }
        for (Cable w : whole.cables().values()) {
            if (chosen.contains(w.id()) && both(w.from().component(), w.to().component())) {
                part = part.with(w);
            }
        }
        for (Link l : whole.links().values()) {
            if (both(l.from().component(), l.to().component())) {
                part = part.with(l);
            }
        }
        for (Note n : whole.notes().values()) {
            if (chosen.contains(n.id())) {
                part = part.withNotes(part.notes().with(n.id(), n));
            }
        }
        return named(part);
    }

    private boolean both(String from, String to) {
        return has(from) && has(to);
    }

    private boolean has(String component) {
        return chosen.contains(component) && whole.components().contains(component);
    }

    /** The component, naming no component that stays behind. */
    private Component freed(Component c) {
        if (c.particulars() instanceof Distribution.SheetLink l && !has(l.mate())) {
            return c.withParticulars(new Distribution.SheetLink(""));
        }
        if (c.particulars() instanceof Earth.NeutralEarthLink n && !has(n.source())) {
            return c.withParticulars(new Earth.NeutralEarthLink(""));
        }
        return c;
    }

    /** The part with everything that it names. */
    private Drawing named(Drawing part) {
        Set<String> systems = new HashSet<>();
        Set<String> sheets = new HashSet<>();
        Set<String> locations = new HashSet<>();
        Set<String> cableways = new HashSet<>();
        for (Component c : part.components().values()) {
            systems.addAll(c.systems());
            sheets.add(c.place().sheet());
            locations.add(c.location());
        }
        part.notes().values().forEach(n -> sheets.add(n.sheet()));
        part.cables().values().forEach(w -> cableways.addAll(w.cableways()));
        return new Drawing(
                part.vessel(),
                only(whole.systems(), systems),
                part.conditions(),
                only(whole.locations(), locations),
                only(whole.sheets(), sheets),
                part.components(),
                part.cables(),
                part.links(),
                only(whole.cableways(), cableways),
                part.notes(),
                part.measurements(),
                part.accepted(),
                part.dayPlans(),
                part.extras());
    }

    private static <V> Ledger<V> only(Ledger<V> ledger, Set<String> ids) {
        Ledger<V> result = Ledger.empty();
        for (var e : ledger) {
            if (ids.contains(e.getKey())) {
                result = result.with(e.getKey(), e.getValue());
            }
        }
        return result;
    }
}
