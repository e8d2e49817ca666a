package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Sheet;
import orlop.layout.Placing;
import orlop.layout.Rect;
import orlop.symbols.SymbolLibrary;

/**
 * Makes scenes. It remembers how each sheet was laid out the last time, so that after an edit only what it touched is laid
 * out anew; a scene never hangs on what was built before. Safe for use by many threads.
 */
public final class SceneBuilder {
    /** How a sheet was laid out. */
    private record Laid(boolean margined, SheetComposer.Kept composed, Map<Role, Map<String, ItemMaker.Kept>> items) {}

    private final SymbolLibrary library;
    private final Placing placing;
    private final Map<String, Laid> laid = new ConcurrentHashMap<>();
    private final Map<String, Stand> stands = new ConcurrentHashMap<>();

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
        Sheet sheet = request.drawing().sheets().require(request.sheet());
        Stand stand = stand(request.drawing(), sheet, request.results().condition());
        SheetFrame frame = stand.frame();
        Laid before = before(sheet.id(), frame);
        SheetView view = SheetView.of(request, stand, frame.drawable());
        List<FoundPlace> found = FoundPlace.all(view, frame.drawable());
        SheetComposer.Composed composed =
                new SheetComposer(view, frame, placing, found, before == null ? null : before.composed()).compose();
        ItemMaker items = new ItemMaker(before == null ? Map.of() : before.items());
        List<Scene> more = paper(items, view, frame, found, composed);
        new SheetItems(view, composed, stand.joints(), found, items).draw();
        laid.put(sheet.id(), new Laid(frame.margined(), composed.kept(), items.kept()));
        List<Scene> pages = new ArrayList<>();
        pages.add(new Scene(
                sheet.id(),
                title(view, sheet),
                sheet.size().widthMm(),
                sheet.size().heightMm(),
                frame.drawable(),
                items.items(),
                stand.terminals(),
                stand.bars(),
                stand.routes()));
        pages.addAll(more);
        return pages;
    }

    /**
     * Finds out where the things of a sheet stand and how its lines run, which hangs on no figure: a scene of the same drawing
     * is made the sooner for it. Any thread.
     *
     * @param condition as it will be asked for with the results
     */
    public void prepare(Drawing drawing, String sheet, String condition) {
        stand(drawing, drawing.sheets().require(sheet), condition);
    }

    private Stand stand(Drawing drawing, Sheet sheet, String condition) {
        OperatingCondition c = drawing.conditions().get(condition);
        Stand last = stands.get(sheet.id());
        if (last != null && last.isOf(drawing, c)) {
            return last;
        }
        Stand now = Stand.of(placing, drawing, sheet, c, last);
        stands.put(sheet.id(), now);
        return now;
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
}
