package orlop.desk;

import java.util.List;
import java.util.Optional;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;
import orlop.scene.Route;

/** A cable that ends in the middle of another: a junction parts that one, and it ends there. */
public final class Branches {
    private Branches() {}

    /**
     * One step of the history.
     *
     * @param cable id of the cable that is run
     * @param said what has become of the length of the other
     */
    public record Branch(Edit edit, String cable, Message said) {}

    /**
     * The cable from a terminal to this place of another; empty where none can end there: it comes from one of the other's
     * own ends or from another system, or the other is locked. What the other is long is shared out between its parts, and
     * both are marked as estimates.
     */
    public static Optional<Branch> of(Drawing d, Route.Spot spot, TerminalRef from) {
        Cable w = d.cables().get(spot.id());
        boolean within = spot.share() > 0 && spot.share() < 1;
        if (w == null || !within || w.locked() || w.from().equals(from) || w.to().equals(from)) {
            return Optional.empty();
        }
        String system =
                d.components().require(w.from().component()).systemOf(w.from().terminal());
        Place sheet = d.components().require(w.from().component()).place();
        Point at = new Point(onGrid(spot.xMm()), onGrid(spot.yMm()));
        Component junction = Component.of(
                Tags.next(d, Kind.JUNCTION),
                Kind.JUNCTION.defaults(),
                Place.at(sheet.sheet(), at.xMm(), at.yMm()),
                List.of(system));
        List<Double> lengths = Insertions.lengths(w.lengthM(), spot.share());
        Edit part = Edit.of(
                Message.of("drawing.edit.insert", junction.kind().term(), junction.id(), w.id()),
                before ->
                        Edits.sound(before, parted(Edits.place(junction).applyTo(before), w, junction.id(), lengths)));
        Drawing cut = part.applyTo(d);
        TerminalRef end = new TerminalRef(junction.id(), "3");
        if (CableRuns.refusal(cut, from, end).isPresent()) {
            return Optional.empty();
        }
        Edit run = CableRuns.cable(cut, from, end);
        Edit both = Edit.of(run.label(), before -> run.applyTo(part.applyTo(before)));
        Message said = Insertions.said(w, junction.id(), Tags.nextCable(d), spot.share(), lengths);
        return Optional.of(new Branch(both, Tags.nextCable(cut), said));
    }

    private static Drawing parted(Drawing d, Cable w, String junction, List<Double> lengths) {
        boolean known = w.lengthM() != null;
        Cable part = w.withBends(List.of()).withLengthEstimated(known);
        Cable first = part.withEnds(w.from(), new TerminalRef(junction, "1"));
        Cable second = part.withId(Tags.nextCable(d)).withEnds(new TerminalRef(junction, "2"), w.to());
        return lengths.isEmpty()
                ? d.with(first).with(second)
                : d.with(first.withLengthM(lengths.get(0))).with(second.withLengthM(lengths.get(1)));
    }

    private static double onGrid(double mm) {
        return Math.rint(mm / Arranging.GRID_MM) * Arranging.GRID_MM;
    }
}
