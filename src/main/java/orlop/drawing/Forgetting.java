package orlop.drawing;

/** Takes a deleted component out of everything that names it, so that no reference dangles. */
final class Forgetting {
    private Forgetting() {}

    /**
     * Without what was measured and accepted at items that are gone: a later item of the same tag must not come to an
     * acceptance that nobody gave it.
     */
    static Drawing recordsOfGone(Drawing before, Drawing after) {
        Drawing d = after;
        for (Measurement m : before.measurements().values()) {
            if (before.hasItem(m.item()) && !after.hasItem(m.item())) {
                d = d.withMeasurements(d.measurements().without(m.id()));
            }
        }
        for (Acceptance a : before.accepted().values()) {
            if (before.hasItem(a.item()) && !after.hasItem(a.item())) {
                d = d.withAccepted(d.accepted().without(a.id()));
            }
        }
        return d;
    }

    static Drawing forget(Drawing d, String id) {
        Drawing after = d;
        for (OperatingCondition c : d.conditions().values()) {
            if (c.loads().contains(id)
                    || c.sources().contains(id)
                    || c.switches().contains(id)) {
                after = after.with(new OperatingCondition(
                        c.id(),
                        c.name(),
                        c.loads().without(id),
                        c.sources().without(id),
                        c.switches().without(id),
                        c.extras()));
            }
        }
        for (Component c : d.components().values()) {
            if (c.particulars() instanceof Distribution.SheetLink l && l.mate().equals(id)) {
                after = after.with(c.withParticulars(new Distribution.SheetLink("")));
            } else if (c.particulars() instanceof Earth.NeutralEarthLink n
                    && n.source().equals(id)) {
                after = after.with(c.withParticulars(new Earth.NeutralEarthLink("")));
            }
        }
        return after;
    }
}
