package orlop.drawing;

import java.util.List;
import java.util.Set;

/** The edits from which the desk builds everything that a person can do. Each refuses rather than leave a flaw. */
public final class Edits {
    private Edits() {}

    /** Puts a new component on the drawing. */
    public static Edit place(Component component) {
        return Edit.of(Message.of("drawing.edit.place", component.kind().term(), component.id()), d -> {
            if (d.hasItem(component.id())) {
                throw refusal("drawing.refuse.tag-taken", component.id());
            }
            return sound(d, d.with(component));
        });
    }

    /**
     * Moves components and notes, and with them the hand-set bends of cables between the components. Moves with the same
     * key are one step.
     */
    public static Edit move(Set<String> componentsAndNotes, double dxMm, double dyMm, Object mergeKey) {
        Set<String> ids = Set.copyOf(componentsAndNotes);
        Message label = ids.size() == 1
                ? Message.of("drawing.edit.move-one", ids.iterator().next())
                : Message.of("drawing.edit.move", ids.size());
        return Edit.merging(label, mergeKey, d -> {
            Drawing after = d;
            for (String id : ids) {
                after = moved(after, id, dxMm, dyMm);
            }
            return BendEdits.follow(d, after, ids, dxMm, dyMm);
        });
    }

    private static Drawing moved(Drawing d, String id, double dxMm, double dyMm) {
        Note n = d.components().contains(id) ? null : d.notes().get(id);
        Locked.refuse(d, id);
        if (n != null) {
            return d.withNotes(d.notes().with(id, n.withAt(n.at().plus(dxMm, dyMm))));
        }
        Component c = component(d, id);
        return d.with(c.withPlace(c.place().withAt(c.place().at().plus(dxMm, dyMm))));
    }

    /** Runs a new cable between two terminals. */
    public static Edit runCable(Cable cable) {
        return Edit.of(
                Message.of(
                        "drawing.edit.cable",
                        cable.from().toString(),
                        cable.to().toString()),
                d -> {
                    if (d.hasItem(cable.id())) {
                        throw refusal("drawing.refuse.tag-taken", cable.id());
                    }
                    return sound(d, d.with(cable));
                });
    }

    /** Joins two terminals directly. */
    public static Edit joinDirectly(Link link) {
        return Edit.of(
                Message.of(
                        "drawing.edit.link", link.from().toString(), link.to().toString()),
                d -> {
                    if (d.hasItem(link.id())) {
                        throw refusal(
                                "drawing.refuse.joined",
                                link.from().toString(),
                                link.to().toString());
                    }
                    return sound(d, d.with(link));
                });
    }

    /** Puts a changed component in the place of the one with its id. */
    public static Edit change(Component component) {
        return change(component, new Object());
    }

    /** As {@link #change(Component)}; changes with the same key are one step. */
    public static Edit change(Component component, Object mergeKey) {
        return Edit.merging(Message.of("drawing.edit.change", component.id()), mergeKey, d -> {
            component(d, component.id());
            return sound(d, d.with(component));
        });
    }

    /** Puts a changed cable in the place of the one with its id. */
    public static Edit change(Cable cable) {
        return change(cable, new Object());
    }

    /** As {@link #change(Cable)}; changes with the same key are one step. */
    public static Edit change(Cable cable, Object mergeKey) {
        return Edit.merging(Message.of("drawing.edit.change", cable.id()), mergeKey, d -> {
            if (!d.cables().contains(cable.id())) {
                throw refusal("drawing.refuse.gone", cable.id());
            }
            return sound(d, d.with(cable));
        });
    }

    /** Puts a changed condition in the place of the one with its id, or adds it. */
    public static Edit change(OperatingCondition condition) {
        return Edit.of(Message.of("drawing.edit.condition", condition.title()), d -> sound(d, d.with(condition)));
    }

    /** Puts a changed vessel in place. */
    public static Edit change(Vessel vessel) {
        return Edit.of(Message.of("drawing.edit.vessel"), d -> d.withVessel(vessel));
    }

    /** Lives with a finding. */
    public static Edit accept(Acceptance acceptance) {
        return Edit.of(
                Message.of("drawing.edit.accept", acceptance.rule(), acceptance.item()),
                d -> d.withAccepted(d.accepted().with(acceptance.id(), acceptance)));
    }

    /** Lives no longer with what a rule says of an item: whatever was accepted of it stands open again. */
    public static Edit withdraw(String rule, String item) {
        return Edit.of(Message.of("drawing.edit.withdraw", rule, item), d -> {
            Ledger<Acceptance> accepted = d.accepted();
            for (Acceptance a : d.accepted().values()) {
                if (a.rule().equals(rule) && a.item().equals(item)) {
                    accepted = accepted.without(a.id());
                }
            }
            return d.withAccepted(accepted);
        });
    }

    /** Gives a component a new tag; cables, links, conditions and what else names it follow. */
    public static Edit rename(String id, String newId) {
        return Edit.of(Message.of("drawing.edit.rename", id, newId), d -> Renaming.rename(d, id, newId));
    }

    /** Takes an in-line device into a cable; see {@link InlineEdits#insert}. */
    public static Edit insert(String cable, Component device, double share) {
        return InlineEdits.insert(cable, device, share);
    }

    /**
     * Deletes components, cables, links and notes; an in-line device heals its cable (see {@link InlineEdits}). Something
     * locked among them, or a locked cable at one of them, makes it refuse all.
     */
    public static Edit delete(Set<String> ids) {
        return InlineEdits.delete(ids);
    }

    /** Several edits as one step; the first refusal refuses all. */
    public static Edit all(Message label, List<Edit> edits) {
        List<Edit> parts = List.copyOf(edits);
        return Edit.of(label, d -> {
            Drawing after = d;
            for (Edit e : parts) {
                after = e.applyTo(after);
            }
            return after;
        });
    }

    static Component component(Drawing d, String id) {
        Component c = d.components().get(id);
        if (c == null) {
            throw refusal("drawing.refuse.gone", id);
        }
        return c;
    }

    /**
     * The changed drawing, if the change brought no flaw in.
     *
     * @throws Edit.Refusal with the first flaw that was not there before
     */
    public static Drawing sound(Drawing before, Drawing after) {
        List<Soundness.Flaw> flaws = Soundness.flaws(after);
        if (!flaws.isEmpty()) {
            List<Soundness.Flaw> old = Soundness.flaws(before);
            for (Soundness.Flaw f : flaws) {
                if (!old.contains(f)) {
                    throw new Edit.Refusal(f.message());
                }
            }
        }
        return after;
    }

    static Edit.Refusal refusal(String key, Object... arguments) {
        return new Edit.Refusal(Message.of(key, arguments));
    }
}
