package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Locked;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.TerminalRef;
import orlop.scene.Route;

/**
 * Ways and labels that a person sets: corners of cables and places of labels that the layout honours as they are.
 *
 * <p>Edits with the same key are one step of the history. An edit of something that is gone or
 * locked is refused.
 */
public final class HandSet {
    private HandSet() {}

    /**
     * Moves one leg of a cable aside. All corners of the cable are set by hand from then on. A leg that ends at a
     * component's terminal leaves a short piece there; one that ends at a bar moves along it.
     *
     * @param route of the cable as it is shown
     * @param leg index of the leg, 0 for the first
     * @param toMm where it is to lie: y of a lying leg, x of a standing one
     */
    public static Edit moveLeg(Drawing d, Route route, int leg, double toMm, Object mergeKey) {
        List<Point> bends = Bends.legMoved(route.points(), leg, toMm, isBar(d, route.from()), isBar(d, route.to()));
        return bends(route.id(), mergeKey, w -> bends);
    }

    private static boolean isBar(Drawing d, TerminalRef end) {
        Component c = d.components().get(end.component());
        return c != null && c.particulars() instanceof Distribution.Bar;
    }

    /** Leads a cable through a point, with a new bend there; its other corners stay as they are shown. */
    public static Edit setBend(Route route, Point at, Object mergeKey) {
        int leg = route.nearest(at.xMm(), at.yMm()).segment();
        List<Point> bends = Bends.through(route.points(), leg, at);
        return bends(route.id(), mergeKey, w -> bends);
    }

    /**
     * Moves one of the bends that a cable has.
     *
     * @param bend its index, 0 for the first; one that is not there changes nothing
     */
    public static Edit moveBend(String cable, int bend, Point to, Object mergeKey) {
        return bends(cable, mergeKey, w -> {
            List<Point> all = new ArrayList<>(w.bends());
            if (bend >= 0 && bend < all.size()) {
                all.set(bend, to);
            }
            return all;
        });
    }

    /** Takes away one of the bends that a cable has; with the last, its way is the layout's again. */
    public static Edit removeBend(String cable, int bend) {
        return bends(cable, new Object(), w -> {
            List<Point> all = new ArrayList<>(w.bends());
            if (bend >= 0 && bend < all.size()) {
                all.remove(bend);
            }
            return all;
        });
    }

    private static Edit bends(String cable, Object mergeKey, Function<Cable, List<Point>> change) {
        return Edit.merging(Message.of("desk.edit.bend", cable), mergeKey, d -> {
            Cable w = cable(d, cable);
            Locked.refuse(d, cable);
            return d.with(w.withBends(change.apply(w)));
        });
    }

    /**
     * Puts the label of a cable or component in a place.
     *
     * @param upperLeft of the label, on the sheet
     */
    public static Edit moveLabel(String item, Point upperLeft, Object mergeKey) {
        return Edit.merging(Message.of("desk.edit.label", item), mergeKey, d -> {
            Locked.refuse(d, item);
            Component c = d.components().get(item);
            if (c == null) {
                return d.with(cable(d, item).withLabelAt(upperLeft));
            }
            Point at = c.place().at();
            return d.with(c.withPlace(c.place().withLabelAt(upperLeft.plus(-at.xMm(), -at.yMm()))));
        });
    }

    /** Leaves the ways and labels of these cables and components to the layout again; other ids are passed over. */
    public static Edit automatic(Set<String> items) {
        Set<String> ids = Set.copyOf(items);
        Message label = ids.size() == 1
                ? Message.of("desk.edit.automatic-one", ids.iterator().next())
                : Message.of("desk.edit.automatic", ids.size());
        return Edit.of(label, d -> {
            Drawing after = d;
            for (String id : ids) {
                after = automatic(after, id);
            }
            return after;
        });
    }

    private static Drawing automatic(Drawing d, String id) {
        if (Locked.is(d, id)) {
            return d;
        }
        Component c = d.components().get(id);
        if (c != null) {
            return c.place().labelAt() == null
                    ? d
                    : d.with(c.withPlace(c.place().withLabelAt(null)));
        }
        Cable w = d.cables().get(id);
        return w == null || !byHand(w) ? d : d.with(w.withBends(List.of()).withLabelAt(null));
    }

    private static boolean byHand(Cable w) {
        return !w.bends().isEmpty() || w.labelAt() != null;
    }

    /** Whether any of these has a way or a label that was set by hand. */
    public static boolean any(Drawing d, Set<String> items) {
        for (String id : items) {
            Component c = d.components().get(id);
            Cable w = d.cables().get(id);
            if ((c != null && c.place().labelAt() != null) || (w != null && byHand(w))) {
                return true;
            }
        }
        return false;
    }

    private static Cable cable(Drawing d, String id) {
        Cable w = d.cables().get(id);
        if (w == null) {
            throw new Edit.Refusal(Message.of("drawing.refuse.gone", id));
        }
        return w;
    }
}
