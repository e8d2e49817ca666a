package orlop.editor;

import java.awt.geom.Point2D;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.layout.Rect;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/**
 * From item to item by keys: full stop and comma in the order in which they are drawn, Ctrl and an arrow to the next one
 * that way; with Shift the item is added to the selection.
 */
final class ItemKeys {
    private final SheetCanvas canvas;
    private final Session session;
    private @Nullable Rect place;

    ItemKeys(SheetCanvas canvas) {
        this.canvas = canvas;
        this.session = canvas.session();
        CanvasKeys.key(canvas, "PERIOD", () -> next(1, false));
        CanvasKeys.key(canvas, "COMMA", () -> next(-1, false));
        CanvasKeys.key(canvas, "shift PERIOD", () -> next(1, true));
        CanvasKeys.key(canvas, "shift COMMA", () -> next(-1, true));
        arrow("LEFT", -1, 0);
        arrow("RIGHT", 1, 0);
        arrow("UP", 0, -1);
        arrow("DOWN", 0, 1);
    }

    private void arrow(String arrow, int dx, int dy) {
        CanvasKeys.key(canvas, "ctrl " + arrow, () -> that(dx, dy, false));
        CanvasKeys.key(canvas, "ctrl shift " + arrow, () -> that(dx, dy, true));
    }

    private List<SceneItem> items() {
        return canvas.scene().map(Scene::items).orElse(List.of()).stream()
                .filter(i -> CanvasKeys.ITEMS.contains(i.role()))
                .toList();
    }

    private void next(int by, boolean add) {
        if (canvas.tool() instanceof RunTool tool) {
            tool.next(by);
            return;
        }
        List<String> ids = items().stream().map(SceneItem::subject).distinct().toList();
        if (ids.isEmpty()) {
            return;
        }
        Drawing d = session.state().drawing();
        List<String> selected = List.copyOf(session.state().selection());
        int last = selected.isEmpty() ? -1 : ids.indexOf(selected.get(selected.size() - 1));
        int to = last < 0 ? (by > 0 ? 0 : ids.size() - 1) : Math.floorMod(last + by, ids.size());
        // What is added is nearly always a component: a cable is to be run between the two.
        for (int i = 0; add && !d.components().contains(ids.get(to)) && i < ids.size(); i++) {
            to = Math.floorMod(to + by, ids.size());
        }
        select(ids.get(to), add);
    }

    /** Goes to the next item in a direction, from the last one that was selected, else from the middle of what is seen. */
    private void that(int dx, int dy, boolean add) {
        if (canvas.tool() instanceof RunTool tool) {
            tool.step(dx, dy);
            return;
        }
        Drawing d = session.state().drawing();
        List<String> selected = List.copyOf(session.state().selection());
        String last = selected.isEmpty() ? "" : selected.get(selected.size() - 1);
        List<SceneItem> others = items().stream()
                .filter(i -> !i.subject().equals(last))
                .filter(i -> !add || d.components().contains(i.subject()))
                .toList();
        Rect from = items().stream()
                .filter(i -> i.subject().equals(last))
                .findFirst()
                .map(SceneItem::bounds)
                .orElseGet(this::lastPlace);
        if (last.isEmpty()) {
            others.stream()
                    .min(java.util.Comparator.comparingDouble(i -> i.bounds().distance(from.centreX(), from.centreY())))
                    .ifPresent(i -> select(i.subject(), add));
        } else {
            Directions.next(
                            from.centreX(),
                            from.centreY(),
                            dx,
                            dy,
                            others,
                            i -> i.bounds().centreX(),
                            i -> i.bounds().centreY())
                    .ifPresent(i -> select(i.subject(), add));
        }
    }

    /** Where the keys were last, if that is seen; else the middle of what is seen. */
    private Rect lastPlace() {
        Rect was = place;
        if (was != null) {
            Point2D px = canvas.viewport().toView(was.centreX(), was.centreY());
            if (canvas.contains((int) px.getX(), (int) px.getY())) {
                return was;
            }
        }
        Point2D p = canvas.viewport().toSheet(canvas.getWidth() / 2.0, canvas.getHeight() / 2.0);
        return Rect.of(p.getX(), p.getY(), 0, 0);
    }

    private void select(String id, boolean add) {
        Set<String> selection = new LinkedHashSet<>(add ? session.state().selection() : List.of());
        selection.add(id);
        session.select(selection);
        canvas.scene()
                .flatMap(s ->
                        s.items().stream().filter(i -> i.subject().equals(id)).findFirst())
                .ifPresent(i -> place = i.bounds());
        reveal(canvas, id);
    }

    /** Moves the sheet so that this item is seen. */
    static void reveal(SheetCanvas canvas, String id) {
        canvas.scene()
                .flatMap(s ->
                        s.items().stream().filter(i -> i.subject().equals(id)).findFirst())
                .ifPresent(i -> canvas.view().reveal(i.bounds()));
    }
}
