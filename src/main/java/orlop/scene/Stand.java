package orlop.scene;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;
import orlop.layout.Connection;
import orlop.layout.Placed;
import orlop.layout.Placing;
import orlop.layout.Port;
import orlop.layout.Rect;
import orlop.layout.Router;
import orlop.layout.Routing;
import orlop.layout.Way;

/**
 * Where the things of a sheet stand and how its lines run. It hangs on no figure, so that it is there before a study is.
 *
 * @param condition says how switches stand; null as drawn
 * @param drawnOver by component, the tags of those that it lies on or under
 */
record Stand(
        Drawing drawing,
        @Nullable OperatingCondition condition,
        SheetFrame frame,
        List<Placed> placed,
        Routing routing,
        Joints joints,
        Map<String, List<String>> drawnOver,
        List<TerminalSpot> terminals,
        List<BarSpan> bars,
        Map<String, Route> routes) {
    Stand {
        terminals = List.copyOf(terminals);
        bars = List.copyOf(bars);
    }

    /** @param last that of nearly the same sheet; null if there is none */
    static Stand of(
            Placing placing,
            Drawing drawing,
            Sheet sheet,
            @Nullable OperatingCondition condition,
            @Nullable Stand last) {
        List<Placed> placed = placing.place(drawing, sheet.id(), condition, last == null ? List.of() : last.placed);
        SheetFrame frame = new SheetFrame(sheet.size(), MarginNotes.free(drawing, sheet, placed));
        Routing routing = Router.route(
                placed,
                connections(drawing),
                frame.drawable().grown(-2.5),
                List.of(frame.titleBlock(), frame.foot(), frame.margin()),
                last == null ? null : last.routing);
        return new Stand(
                drawing,
                condition,
                frame,
                placed,
                routing,
                Joints.of(drawing, routing.ways(), placed, last == null ? null : last.joints),
                DrawnOver.all(placed),
                terminals(placed, routing.ways()),
                bars(drawing, placed),
                routes(drawing, routing.ways()));
    }

    /** Whether it is that of this drawing in this condition. */
    @SuppressWarnings("ReferenceEquality") // an edit makes another drawing
    boolean isOf(Drawing d, @Nullable OperatingCondition c) {
        return drawing == d && Objects.equals(condition, c);
    }

    private static List<Connection> connections(Drawing drawing) {
        List<Connection> all = new ArrayList<>();
        for (Link l : drawing.links().values()) {
            all.add(new Connection(l.id(), l.from(), l.to(), List.of()));
        }
        for (Cable c : drawing.cables().values()) {
            all.add(new Connection(c.id(), c.from(), c.to(), c.bends()));
        }
        return all;
    }

    private static List<TerminalSpot> terminals(List<Placed> placed, Map<String, Way> ways) {
        Set<TerminalRef> connected = new HashSet<>();
        for (Way w : ways.values()) {
            connected.add(w.start().terminal());
            connected.add(w.end().terminal());
        }
        List<TerminalSpot> spots = new ArrayList<>();
        for (Placed p : placed) {
            for (Port q : p.ports()) {
                spots.add(new TerminalSpot(q.terminal(), q.x(), q.y(), q.heading(), connected.contains(q.terminal())));
            }
        }
        return spots;
    }

    private static List<BarSpan> bars(Drawing drawing, List<Placed> placed) {
        Set<TerminalRef> used = new HashSet<>();
        for (Connection c : connections(drawing)) {
            used.add(c.from());
            used.add(c.to());
        }
        List<BarSpan> bars = new ArrayList<>();
        for (Placed p : placed) {
            Rect bar = p.bar();
            if (bar != null) {
                int n = 1;
                while (used.contains(new TerminalRef(p.id(), Integer.toString(n)))) {
                    n++;
                }
                bars.add(new BarSpan(p.id(), bar, Integer.toString(n)));
            }
        }
        return bars;
    }

    private static Map<String, Route> routes(Drawing drawing, Map<String, Way> ways) {
        Map<String, Route> routes = new LinkedHashMap<>();
        for (Way w : ways.values()) {
            Connection c = w.connection();
            boolean cable = drawing.cables().contains(c.id());
            routes.put(c.id(), new Route(c.id(), cable, c.from(), c.to(), w.points()));
        }
        return routes;
    }
}
