package orlop.scene;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.Message;
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
import orlop.symbols.SymbolLibrary;

/**
 * Makes scenes. It remembers how each sheet was laid out the last time, so that after an edit only what it touched is laid
 * out anew; a scene never hangs on what was built before. Safe for use by many threads.
 */
public final class SceneBuilder {
    /** How a sheet was laid out. */
    private record Laid(
            boolean margined,
            Routing routing,
            SheetComposer.Kept composed,
            Joints joints,
            Map<String, ItemMaker.Kept> items) {}

    private final SymbolLibrary library;
    private final Placing placing;
    private final Map<String, Laid> laid = new ConcurrentHashMap<>();

    private SceneBuilder(SymbolLibrary library) {
        this.library = library;
        this.placing = new Placing(library);
    }

    /** A builder that uses the program's own symbols. */
    public static SceneBuilder bundled() {
        return new SceneBuilder(SymbolLibrary.bundled());
    }

    /** A builder that uses these symbols. What paints its scenes needs the same ones. */
    public static SceneBuilder with(SymbolLibrary library) {
        return new SceneBuilder(library);
    }

    /** The sheet that was asked for, as data. The same request gives the same scene. */
    public Scene build(SceneRequest request) {
        return pages(request).get(0);
    }

    /**
     * The sheet that was asked for and, where its margin or its legend is full, the sheets of findings on which they go on:
     * {@code 1}, {@code 1/F1}, {@code 1/F2} … Without a printed margin it is the sheet alone.
     */
    public List<Scene> pages(SceneRequest request) {
        Drawing drawing = request.drawing();
        Sheet sheet = drawing.sheets().require(request.sheet());
        OperatingCondition condition =
                drawing.conditions().get(request.results().condition());
        List<Placed> placed = placing.place(drawing, sheet.id(), condition);
        SheetFrame frame = new SheetFrame(sheet.size(), MarginNotes.free(drawing, sheet, placed));
        Laid before = before(sheet.id(), frame);
        Routing routing = Router.route(
                placed,
                connections(drawing),
                frame.drawable().grown(-2.5),
                List.of(frame.titleBlock(), frame.foot(), frame.margin()),
                before == null ? null : before.routing());
        Map<String, Way> ways = routing.ways();
        SheetView view = SheetView.of(request, placed, ways, frame.drawable());
        List<FoundPlace> found = FoundPlace.all(view, frame.drawable());
        SheetComposer.Composed composed =
                new SheetComposer(view, frame, placing, found, before == null ? null : before.composed()).compose();
        ItemMaker items = new ItemMaker(before == null ? Map.of() : before.items());
        Joints joints = Joints.of(view, before == null ? null : before.joints());
        List<Scene> more = paper(items, view, frame, found, composed);
        new SheetItems(view, composed, joints, found, items).draw();
        laid.put(sheet.id(), new Laid(frame.margined(), routing, composed.kept(), joints, items.kept()));
        List<Scene> pages = new ArrayList<>();
        pages.add(new Scene(
                sheet.id(),
                title(view, sheet),
                sheet.size().widthMm(),
                sheet.size().heightMm(),
                frame.drawable(),
                items.items(),
                terminals(placed, ways),
                bars(drawing, placed),
                routes(drawing, ways)));
        pages.addAll(more);
        return pages;
    }

    /** Draws what belongs to the paper, and makes the sheets on which it goes on. */
    private List<Scene> paper(
            ItemMaker items,
            SheetView view,
            SheetFrame frame,
            List<FoundPlace> found,
            SheetComposer.Composed composed) {
        SceneRequest request = view.request();
        SheetNumber number = SheetNumber.of(view.drawing(), request.sheet(), 0);
        String next = new SheetNumber(number.position(), number.of(), 1).text();
        frame.draw(items, view.words());
        new TitleBlock(request, number).draw(items, frame.titleBlock());
        List<LegendRow> rows = LegendRows.of(view, found, library);
        List<FoundPlace> notes = List.of();
        Rect beside = new Rect(0, 0, 0, 0);
        MarginNotes margin = new MarginNotes(request, frame.margin());
        if (request.margin() && frame.margined()) {
            notes = margin.draw(items, found, next);
            beside = margin.rest();
        } else if (request.margin()) {
            notes = found;
            margin.elsewhere(items, frame.body(), composed.labeller()::open, next, found.isEmpty());
        } else if (frame.margined()) { // a window has its notes elsewhere
            margin.outline(items);
            beside = frame.margin().grown(-3);
        }
        Legend.Spare spare = new Legend.Spare(beside, frame.drawable(), composed.labeller()::open);
        List<LegendRow> legend = new Legend(view.words(), frame.foot()).draw(items, rows, next, spare);
        NoteItems.draw(items, view);
        return request.margin() ? new FindingSheets(request).scenes(notes, legend) : List.of();
    }

    private @Nullable Laid before(String sheet, SheetFrame frame) {
        Laid last = laid.get(sheet);
        return last == null || last.margined() != frame.margined() ? null : last;
    }

    private static String title(SheetView view, Sheet sheet) {
        String vessel = view.drawing().vessel().name();
        return view.words().text(Message.of("scene.sheet", vessel, sheet.number(), sheet.title()));
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
