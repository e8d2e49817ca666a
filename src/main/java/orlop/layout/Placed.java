package orlop.layout;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;

/**
 * A component on the sheet.
 *
 * @param component the component
 * @param symbol name of its symbol, "" if it is drawn as a bar
 * @param ink what it covers
 * @param ports its terminals that have a spot; a bar has none
 * @param anySpot whether a line may end at whichever port is best: a junction, the hull, an earth bar
 * @param bar the bar itself, along which lines may end; null if it is none
 */
public record Placed(
        Component component,
        String symbol,
        Rect ink,
        List<Port> ports,
        boolean anySpot,
        @Nullable Rect bar) {
    public Placed {
        ports = List.copyOf(ports);
    }

    public String id() {
        return component.id();
    }

    /** The port of this terminal, if it has a spot of its own. */
    public Optional<Port> port(String terminal) {
        return ports.stream()
                .filter(p -> p.terminal().terminal().equals(terminal))
                .findFirst();
    }

    /** Whether a line finds the same here: extent, terminals and bar are those of the other. */
    @SuppressWarnings("ReferenceEquality") // the very same one needs no comparison
    boolean standsAs(Placed o) {
        return this == o
                || (ink.equals(o.ink) && anySpot == o.anySpot && Objects.equals(bar, o.bar) && ports.equals(o.ports));
    }

    /** How far a line runs from a port until it is clear of the component. */
    double exitMm(Port port) {
        double out = switch (port.heading()) {
            case UP -> port.y() - ink.minY();
            case DOWN -> ink.maxY() - port.y();
            case LEFT -> port.x() - ink.minX();
            case RIGHT -> ink.maxX() - port.x();
        };
        return Math.max(0, out);
    }
}
