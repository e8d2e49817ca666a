package orlop.drawing;

/** Gives a component or a cable a new tag everywhere it is named. */
final class Renaming {
    private Renaming() {}

    static Drawing rename(Drawing d, String id, String newId) {
        Checks.id(newId, "id");
        if (id.equals(newId)) {
            return d;
        }
        if (d.hasItem(newId)) {
            throw Edits.refusal("drawing.refuse.tag-taken", newId);
        }
        Cable w = d.cables().get(id);
        if (w != null) {
            return records(d.withCables(d.cables().renamed(id, newId, w.withId(newId))), id, newId);
        }
        Component c = Edits.component(d, id);
        Drawing after = d.withComponents(d.components().renamed(id, newId, c.withId(newId)));
        after = ends(after, id, newId);
        after = conditions(after, id, newId);
        return records(mates(after, id, newId), id, newId);
    }

    private static Drawing ends(Drawing d, String id, String newId) {
        Drawing after = d;
        for (Cable w : d.cables().values()) {
            if (w.from().component().equals(id) || w.to().component().equals(id)) {
                after = after.with(w.withEnds(moved(w.from(), id, newId), moved(w.to(), id, newId)));
            }
        }
        for (Link l : d.links().values()) {
            if (l.from().component().equals(id) || l.to().component().equals(id)) {
                Link changed = l.withEnds(moved(l.from(), id, newId), moved(l.to(), id, newId));
                if (!changed.id().equals(l.id()) && after.hasItem(changed.id())) {
                    throw Edits.refusal("drawing.refuse.tag-taken", changed.id());
                }
                after = after.withLinks(after.links().renamed(l.id(), changed.id(), changed));
                after = records(after, l.id(), changed.id());
            }
        }
        return after;
    }

    private static TerminalRef moved(TerminalRef t, String id, String newId) {
        return t.component().equals(id) ? new TerminalRef(newId, t.terminal()) : t;
    }

    private static Drawing conditions(Drawing d, String id, String newId) {
        Drawing after = d;
        for (OperatingCondition c : d.conditions().values()) {
            after = after.with(new OperatingCondition(
                    c.id(),
                    c.name(),
                    key(c.loads(), id, newId),
                    key(c.sources(), id, newId),
                    key(c.switches(), id, newId),
                    c.extras()));
        }
        return after;
    }

    private static <V> Ledger<V> key(Ledger<V> ledger, String id, String newId) {
        return ledger.contains(id) ? ledger.renamed(id, newId, ledger.require(id)) : ledger;
    }

    private static Drawing mates(Drawing d, String id, String newId) {
        Drawing after = d;
        for (Component c : d.components().values()) {
            if (c.particulars() instanceof Distribution.SheetLink l && l.mate().equals(id)) {
                after = after.with(c.withParticulars(new Distribution.SheetLink(newId)));
            } else if (c.particulars() instanceof Earth.NeutralEarthLink n
                    && n.source().equals(id)) {
                after = after.with(c.withParticulars(new Earth.NeutralEarthLink(newId)));
            }
        }
        return after;
    }

    /** What was accepted and what was measured at an item follows it. */
    private static Drawing records(Drawing d, String id, String newId) {
        Drawing after = accepted(d, id, newId);
        for (Measurement m : d.measurements().values()) {
            if (m.item().equals(id)) {
                Measurement moved = new Measurement(
                        m.id(), newId, m.quantity(), m.value(), m.unit(), m.date(), m.remark(), m.extras());
                after = after.withMeasurements(after.measurements().with(m.id(), moved));
            }
        }
        return after;
    }

    private static Drawing accepted(Drawing d, String id, String newId) {
        Drawing after = d;
        for (Acceptance a : d.accepted().values()) {
            if (a.item().equals(id)) {
                after = after.withAccepted(after.accepted()
                        .with(
                                a.id(),
                                new Acceptance(
                                        a.id(),
                                        a.rule(),
                                        newId,
                                        a.reason(),
                                        a.by(),
                                        a.date(),
                                        a.messages(),
                                        a.extras())));
            }
        }
        return after;
    }
}
