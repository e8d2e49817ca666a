package orlop.desk;

import java.math.BigDecimal;
import java.math.RoundingMode;
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
import orlop.scene.Scene;

/** A device that is dropped on a cable, to stand in it. */
public final class Insertions {
    /** The ends of a cable are kept free for devices that sit right on a terminal. */
    private static final double LEAST_SHARE = 0.02;

    private Insertions() {}

    /**
     * What the drop comes to.
     *
     * @param edit parts the cable
     * @param id tag of the new device
     */
    public record Inserted(Edit edit, String id) {}

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
            double share = Math.max(LEAST_SHARE, Math.min(1 - LEAST_SHARE, spot.share()));
            Edit insert = Edits.insert(w.id(), device, share);
            Edit lengths = roundLengths(w, Tags.nextCable(d), share);
            return new Inserted(Edits.all(insert.label(), List.of(insert, lengths)), device.id());
        });
    }

    /** Nobody measures where the mouse was to the millimetre: the first part is given in tenths of a metre. */
    private static Edit roundLengths(Cable whole, String second, double share) {
        return Edit.of(Message.of("drawing.edit.change", whole.id()), d -> {
            Double length = whole.lengthM();
            Cable a = d.cables().get(whole.id());
            Cable b = d.cables().get(second);
            if (length == null || a == null || b == null) {
                return d;
            }
            BigDecimal all = BigDecimal.valueOf(length);
            BigDecimal first = BigDecimal.valueOf(length * share).setScale(1, RoundingMode.HALF_UP);
            BigDecimal rest = all.subtract(first).max(BigDecimal.ZERO);
            return d.with(a.withLengthM(all.subtract(rest).doubleValue())).with(b.withLengthM(rest.doubleValue()));
        });
    }
}
