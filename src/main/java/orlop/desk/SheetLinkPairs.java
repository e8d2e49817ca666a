package orlop.desk;

import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Message;

/** Two sheet links that are one point: each names the other, whichever of the two a person was asked at. */
final class SheetLinkPairs {
    private SheetLinkPairs() {}

    /**
     * Makes a pair of the two. Ends to which either belonged before are left without one; the end to which nothing leads
     * yet takes the system of the other.
     *
     * @param other "" leaves the link without another end
     */
    static Edit pair(String link, String other) {
        return Edit.of(Message.of("drawing.edit.change", link), d -> {
            Drawing after = alone(d, link);
            if (!other.isEmpty()) {
                after = alone(after, other);
                Component a = after.components().require(link);
                Component b = after.components().require(other);
                if (!a.systems().equals(b.systems())) {
                    boolean follows = !CableEnds.connected(d).contains(link);
                    a = follows ? PolesFit.fitted(d, a.withSystems(b.systems())) : a;
                    b = follows ? b : following(d, b, a);
                }
                after = after.with(a.withParticulars(new Distribution.SheetLink(other)))
                        .with(b.withParticulars(new Distribution.SheetLink(link)));
            }
            return Edits.sound(d, after);
        });
    }

    private static Component following(Drawing d, Component end, Component to) {
        return CableEnds.connected(d).contains(end.id())
                ? end // the drawing then says that both ends are one point
                : PolesFit.fitted(d, end.withSystems(to.systems()));
    }

    /** Without its other end, and that one without it. */
    private static Drawing alone(Drawing d, String link) {
        Component c = d.components().require(link);
        Drawing after = d;
        if (c.particulars() instanceof Distribution.SheetLink l && !l.mate().isEmpty()) {
            after = d.components()
                    .find(l.mate())
                    .map(m -> d.with(m.withParticulars(new Distribution.SheetLink(""))))
                    .orElse(d);
            after = after.with(c.withParticulars(new Distribution.SheetLink("")));
        }
        return after;
    }
}
