package orlop.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.Point;
import orlop.layout.Junctions;
import orlop.layout.Placed;
import orlop.layout.Port;
import orlop.layout.Way;

/** Where the lines of a sheet meet one another and their components. Not changed once made. */
final class Joints {
    private final Map<String, Way> ways;
    private final List<String> order;
    private final Map<String, Junctions.Shared> shared;
    private final Map<String, List<Port>> ends = new HashMap<>();
    private final Map<String, List<Point>> dots = new HashMap<>();

    private Joints(Map<String, Way> ways, List<Placed> placed, List<Way> ordered, List<String> order) {
        this.ways = ways;
        this.order = order;
        shared = Junctions.shared(ordered);
        for (Way w : ways.values()) {
            for (Port q : List.of(w.start(), w.end())) {
                ends.computeIfAbsent(q.terminal().component(), k -> new ArrayList<>())
                        .add(q);
            }
        }
        Junctions.dots(ways.values(), placed)
                .forEach((p, id) ->
                        dots.computeIfAbsent(id, k -> new ArrayList<>()).add(p));
    }

    /**
     * @param ways by id of the connection, found among the components
     * @param last those of the sheet when it was made last, which are taken again if its ways are the same; null if none
     */
    @SuppressWarnings("ReferenceEquality") // ways that are the very same were found among the same components
    static Joints of(Drawing drawing, Map<String, Way> ways, List<Placed> placed, @Nullable Joints last) {
        List<Way> ordered = new ArrayList<>();
        List<Way> links = new ArrayList<>();
        ways.forEach((id, w) -> (drawing.cables().contains(id) ? ordered : links).add(w));
        ordered.addAll(links);
        List<String> order = ordered.stream().map(w -> w.connection().id()).toList();
        if (last != null && last.ways == ways && last.order.equals(order)) {
            return last;
        }
        return new Joints(ways, placed, ordered, order);
    }

    /** How much of a way others draw; null if nothing. */
    Junctions.@Nullable Shared shared(Way way) {
        return shared.get(way.connection().id());
    }

    /** The ends of lines at a component. */
    List<Port> ends(Placed p) {
        return ends.getOrDefault(p.id(), List.of());
    }

    /** The dots that a way draws. */
    List<Point> dots(Way way) {
        return dots.getOrDefault(way.connection().id(), List.of());
    }
}
