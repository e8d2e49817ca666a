package orlop.desk;

import java.util.List;
import java.util.Optional;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Earthing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.Nature;

/** Adds, changes and takes away the electrical systems of a drawing. */
public final class SystemEdits {
    private SystemEdits() {}

    /** Adds a system; one whose short name is taken is refused. */
    public static Edit add(ElectricalSystem system) {
        return Edit.of(Message.of("desk.system.add", system.id()), d -> {
            if (d.systems().contains(system.id())) {
                throw new Edit.Refusal(Message.of("desk.system.taken", system.id()));
            }
            return Edits.sound(d, d.with(system));
        });
    }

    /** Puts a changed system in the place of the one with its short name. What it is fed by keeps its nature. */
    public static Edit change(ElectricalSystem system) {
        return Edit.of(Message.of("desk.system.change", system.id()), d -> {
            ElectricalSystem was = d.systems().require(system.id());
            Optional<Component> user = user(d, system.id());
            if (was.nature() != system.nature() && user.isPresent()) {
                throw new Edit.Refusal(
                        Message.of("desk.system.nature", system.id(), user.get().id()));
            }
            return Edits.sound(d, d.with(system));
        });
    }

    /** Takes a system away that nothing belongs to. */
    public static Edit remove(String id) {
        return Edit.of(Message.of("desk.system.remove", id), d -> {
            Optional<Component> user = user(d, id);
            if (user.isPresent()) {
                throw new Edit.Refusal(
                        Message.of("desk.system.used", id, user.get().id()));
            }
            return Edits.sound(d, d.withSystems(d.systems().without(id)));
        });
    }

    /** The first component that belongs to a system. */
    public static Optional<Component> user(Drawing d, String system) {
        return d.components().stream().filter(c -> c.systems().contains(system)).findFirst();
    }

    /** How a system of this nature can stand to the hull. */
    public static List<Earthing> earthings(Nature nature) {
        return List.of(
                Earthing.UNKNOWN,
                Earthing.INSULATED,
                nature.isDc() ? Earthing.NEGATIVE_BONDED : Earthing.NEUTRAL_BONDED);
    }
}
