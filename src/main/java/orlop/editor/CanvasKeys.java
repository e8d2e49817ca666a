package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import orlop.desk.Insertions;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/**
 * The sheet without a mouse: arrows move what is selected or what is about to be placed, Enter puts that down or goes to the
 * card, full stop and comma go from item to item, with Shift they add the item to the selection.
 */
final class CanvasKeys {
    private static final Set<Role> ITEMS = Set.of(Role.COMPONENT, Role.BAR, Role.CABLE, Role.LINK, Role.NOTE);

    /** How far from the last component a new one is offered. */
    private static final double BESIDE_MM = 35;

    private final SheetCanvas canvas;
    private final Session session;
    private final EditCommands edits;
    private final Container margin;
    private @Nullable Tool placing;
    private Point at = new Point(0, 0);

    CanvasKeys(SheetCanvas canvas, EditCommands edits, Container margin) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.edits = edits;
        this.margin = margin;
        arrow("LEFT", -1, 0);
        arrow("RIGHT", 1, 0);
        arrow("UP", 0, -1);
        arrow("DOWN", 0, 1);
        key("ENTER", this::enter);
        key("PERIOD", () -> next(1, false));
        key("COMMA", () -> next(-1, false));
        key("shift PERIOD", () -> next(1, true));
        key("shift COMMA", () -> next(-1, true));
    }

    private void arrow(String arrow, int dx, int dy) {
        key(arrow, () -> step(dx, dy, false));
        key("shift " + arrow, () -> step(dx, dy, true));
    }

    private void key(String key, Runnable body) {
        canvas.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), "keys." + key);
        canvas.getActionMap().put("keys." + key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                body.run();
            }
        });
    }

    private void step(int dx, int dy, boolean far) {
        if (canvas.tool() instanceof PlaceTool tool) {
            begin(tool);
            double step = MoveGesture.GRID_MM * (far ? 8 : 2);
            at = at.plus(dx * step, dy * step);
            tool.moved(Spot.at(at.xMm(), at.yMm(), canvas.viewport()));
        } else {
            edits.nudge(dx, dy, far);
        }
    }

    private void enter() {
        if (canvas.tool() instanceof PlaceTool tool) {
            begin(tool);
            tool.released(Spot.at(at.xMm(), at.yMm(), canvas.viewport()));
            placing = null;
        } else {
            firstField(margin).ifPresent(Component::requestFocusInWindow);
        }
    }

    /** A component is offered in the selected cable, else beside the selected component, else in the middle. */
    private void begin(PlaceTool tool) {
        if (placing != tool) {
            placing = tool;
            Optional<Scene> scene = canvas.scene();
            at = session.state()
                    .soleSelection()
                    .flatMap(id -> scene.flatMap(s -> beside(s, id, tool.kind())))
                    .orElseGet(() -> scene.map(s ->
                                    free(s, s.drawable().centreX(), s.drawable().centreY()))
                            .orElse(new Point(0, 0)));
        }
    }

    private static Optional<Point> beside(Scene s, String id, Kind kind) {
        Route r = s.routes().get(id);
        if (r != null && Insertions.inline(kind)) {
            return Optional.of(r.at(0.5));
        }
        return s.items().stream()
                .filter(i -> i.subject().equals(id) && ITEMS.contains(i.role()))
                .findFirst()
                .map(SceneItem::bounds)
                .map(b -> free(s, b.centreX() + BESIDE_MM, b.centreY()));
    }

    /** The nearest place to the right, or a row further down, at which nothing stands. */
    private static Point free(Scene s, double x, double y) {
        Rect paper = s.drawable();
        for (double down = y; down < paper.maxY() - BESIDE_MM / 2; down += BESIDE_MM) {
            for (double right = x; right < paper.maxX() - BESIDE_MM / 2; right += BESIDE_MM / 2) {
                double px = right;
                double py = down;
                boolean taken = s.items().stream()
                        .filter(i -> ITEMS.contains(i.role()))
                        .anyMatch(i -> i.bounds().grown(5).contains(px, py));
                if (!taken) {
                    return new Point(px, py);
                }
            }
        }
        return new Point(x, y);
    }

    private void next(int by, boolean add) {
        List<String> ids = canvas.scene().stream()
                .flatMap(s -> s.items().stream())
                .filter(i -> ITEMS.contains(i.role()))
                .map(SceneItem::subject)
                .distinct()
                .toList();
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
        Set<String> selection = new LinkedHashSet<>(add ? selected : List.of());
        selection.add(ids.get(to));
        session.select(selection);
        String shown = ids.get(to);
        canvas.scene()
                .flatMap(s -> s.items().stream()
                        .filter(i -> i.subject().equals(shown))
                        .findFirst())
                .ifPresent(i -> canvas.reveal(i.bounds()));
    }

    /** The first field of the card. */
    private static Optional<Component> firstField(Container in) {
        for (Component c : in.getComponents()) {
            boolean field = (c instanceof JTextComponent t && t.isEditable()) || c instanceof JComboBox;
            if (field
                    || (c instanceof AbstractButton
                            && c.getName() != null
                            && c.getName().startsWith("field."))) {
                return Optional.of(c);
            }
            Optional<Component> deeper = c instanceof Container k ? firstField(k) : Optional.empty();
            if (deeper.isPresent()) {
                return deeper;
            }
        }
        return Optional.empty();
    }
}
