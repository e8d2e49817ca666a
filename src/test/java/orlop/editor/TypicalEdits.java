package orlop.editor;

import java.util.List;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;

/** The edits of which most of the work at a drawing consists, in turn, on a {@link GrownBoat} of 200 components or more. */
final class TypicalEdits {
    /** What they are called. */
    static final List<String> NAMES = List.of("length", "power", "nudge", "add");

    /** What the edit "add" adds. */
    static final String ADDED = "E99";

    private TypicalEdits() {}

    static String name(int i) {
        return NAMES.get(i % NAMES.size());
    }

    /** What the edit of this number changes: a load, or the cable to it. */
    static String subject(Drawing d, int i) {
        int item = i / NAMES.size() * 7 % 90;
        String load = "E" + item / 16 + "_" + item % 16;
        return i % NAMES.size() == 0 ? cableTo(d, load).id() : load;
    }

    /**
     * The edit of this number.
     *
     * @param start the drawing before all of them
     * @param d the drawing as it is
     */
    static Edit of(Drawing start, Drawing d, int i) {
        String subject = subject(d, i);
        return switch (name(i)) {
            case "length" -> {
                Cable w = d.cables().require(subject);
                double was = w.lengthM() == null ? 0 : w.lengthM();
                yield Edits.change(w.withLengthM(was > 3.5 ? 3.0 : was + 0.1));
            }
            case "power" -> Edits.change(otherPower(d.components().require(subject)));
            case "nudge" -> {
                boolean there = at(start, subject).equals(at(d, subject));
                yield Edits.move(Set.of(subject), there ? 2.5 : -2.5, 0, new Object());
            }
            default ->
                Edits.place(Component.of(ADDED, Kind.LIGHTING, Place.at("1", 40 + i % 100 * 5, 560), List.of("24")));
        };
    }

    private static Component otherPower(Component c) {
        var lamp = (Consumer.Lighting) c.particulars();
        double was = lamp.powerW() == null ? 0 : lamp.powerW();
        return c.withParticulars(new Consumer.Lighting(
                was > 24 ? 20.0 : was + 1,
                lamp.powerFactor(),
                lamp.points(),
                lamp.filament(),
                lamp.phase(),
                lamp.vital()));
    }

    private static Point at(Drawing d, String component) {
        return d.components().require(component).place().at();
    }

    private static Cable cableTo(Drawing d, String component) {
        return d.cables().stream()
                .filter(w -> w.to().component().equals(component))
                .findFirst()
                .orElseThrow();
    }
}
