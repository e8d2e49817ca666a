package orlop.desk;

import java.util.List;
import java.util.Optional;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
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
            Component device = Component.of(Tags.next(d, kind), kind, place, List.of(system));
            double share = Math.max(LEAST_SHARE, Math.min(1 - LEAST_SHARE, spot.share()));
            return new Inserted(Edits.insert(w.id(), device, share), device.id());
        });
    }
}
