package orlop.desk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Quantity;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;
import orlop.drawing.Unit;
import orlop.scene.Route;
import orlop.scene.Scene;

/**
 * A device that is dropped on a cable, to stand in it.
 *
 * <p>A single-line drawing is not to scale. What is dropped at an end sits right there, joined directly, and the cable keeps
 * its length; what is dropped elsewhere shares the length out as drawn, and both shares are marked as estimates.
 */
public final class Insertions {
    private Insertions() {}

    /**
     * What the drop comes to.
     *
     * @param edit parts the cable
     * @param id tag of the new device
     * @param said what has become of the cable's length
     */
    public record Inserted(Edit edit, String id, Message said) {}

    /** Whether a kind can stand in a line. */
    public static boolean inline(Kind kind) {
        return kind.defaults().terminals().equals(List.of("1", "2"))
                && !kind.spansSystems()
                && kind.group() != orlop.drawing.Group.SOURCES
                && kind.group() != orlop.drawing.Group.LOADS;
    }

    /** A new device of this kind in a cable; empty if the kind can't stand in a line or the cable isn't on the scene. */
    public static Optional<Inserted> of(Drawing d, Scene scene, Route.Spot spot, Kind kind) {
        Cable w = d.cables().get(spot.id());
        Route route = scene.routes().get(spot.id());
        if (w == null || route == null || !inline(kind)) {
            return Optional.empty();
        }
        return InlinePlaces.of(scene, kind).map(places -> {
            Place place = places.near(route, spot.segment(), new Point(spot.xMm(), spot.yMm()));
            TerminalRef from = w.from();
            String system = d.components().require(from.component()).systemOf(from.terminal());
            Component device = PolesFit.fitted(d, Component.of(Tags.next(d, kind), kind, place, List.of(system)));
            double share = places.share(route, place);
            List<Double> lengths = lengths(w.lengthM(), share);
            String second = Tags.nextCable(d);
            Edit insert = Edits.insert(w.id(), device, share);
            Edit edit = lengths.isEmpty()
                    ? insert
                    : Edits.all(insert.label(), List.of(insert, given(w.id(), second, lengths)));
            return new Inserted(edit, device.id(), said(w, device.id(), second, share, lengths));
        });
    }

    private static Message said(Cable w, String device, String second, double share, List<Double> lengths) {
        if (share == 0 || share == 1) {
            TerminalRef end = share == 0 ? w.from() : w.to();
            return Message.of("desk.inserted.at-end", device, end.component(), w.id());
        }
        return lengths.isEmpty()
                ? Message.of("desk.inserted.parted", device, w.id(), second)
                : Message.of(
                        "desk.inserted.shared",
                        device,
                        w.id(),
                        second,
                        new Quantity(lengths.get(0), Unit.METRE),
                        new Quantity(lengths.get(1), Unit.METRE));
    }

    /**
     * Nobody measures where the mouse was to the millimetre: the first share is given in tenths of a metre, of a short cable
     * in hundredths. None is nothing, and both are the whole. Empty if the cable isn't parted, or has no length.
     */
    private static List<Double> lengths(@Nullable Double wholeM, double share) {
        if (wholeM == null || wholeM == 0 || share == 0 || share == 1) {
            return List.of();
        }
        BigDecimal all = BigDecimal.valueOf(wholeM);
        int digits = wholeM >= 1 ? 1 : 2;
        BigDecimal step = BigDecimal.ONE.movePointLeft(digits);
        BigDecimal first = BigDecimal.valueOf(wholeM * share).setScale(digits, RoundingMode.HALF_UP);
        first = first.max(step).min(all.subtract(step));
        return first.signum() <= 0
                ? List.of(wholeM / 2, wholeM / 2)
                : List.of(first.doubleValue(), all.subtract(first).doubleValue());
    }

    private static Edit given(String first, String second, List<Double> lengths) {
        return Edit.of(Message.of("drawing.edit.change", first), d -> {
            Cable a = d.cables().get(first);
            Cable b = d.cables().get(second);
            return a == null || b == null
                    ? d
                    : d.with(a.withLengthM(lengths.get(0))).with(b.withLengthM(lengths.get(1)));
        });
    }
}
