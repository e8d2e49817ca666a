package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import orlop.desk.Arranging;
import orlop.desk.Insertions;
import orlop.desk.Session;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.Note;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/**
 * The sheet without a mouse: arrows move what is selected, what is about to be placed, or the end of a cable, and with
 * nothing selected the sheet; Enter puts down or goes to the card. How to get from item to item is up to {@link ItemKeys},
 * labels, legs and bars to {@link HandKeys}.
 */
final class CanvasKeys {
    static final Set<Role> ITEMS = Set.of(Role.COMPONENT, Role.BAR, Role.CABLE, Role.LINK, Role.NOTE);

    private static final Set<Role> TAKES_ROOM =
            Set.of(Role.COMPONENT, Role.BAR, Role.LABEL, Role.NOTE, Role.LEGEND, Role.TITLE_BLOCK, Role.CAUTION);

    /** What feeds what, the last first. */
    private static final List<Group> FEEDS = List.of(Group.LOADS, Group.CONVERSION, Group.DISTRIBUTION, Group.SOURCES);

    /** So far from the terminal that feeds it: clear of the frame of a board. */
    private static final double NEAR_MM = 17.5;

    /** What stands at the foot of a sheet. */
    private static final Set<Role> FOOT = Set.of(Role.LEGEND, Role.TITLE_BLOCK, Role.CAUTION);

    /** So much on each side a new component is to have for itself. */
    private static final double ROOM_MM = 9;

    /** How far from the last component a new one is offered. */
    private static final double BESIDE_MM = 35;

    /** How far below a bar a new component is offered: there is room for its fuse and what stands beside the cable. */
    private static final double BELOW_MM = 60;

    private static final int PAN_PX = 60;

    private final SheetCanvas canvas;
    private final Session session;
    private final EditCommands edits;
    private final Supplier<Optional<Component>> card;
    private @Nullable Tool placing;
    private Point at = new Point(0, 0);

    /** @param card the field of the card in which typing begins; empty if there is none */
    CanvasKeys(SheetCanvas canvas, EditCommands edits, Supplier<Optional<Component>> card) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.edits = edits;
        this.card = card;
        arrow("LEFT", -1, 0);
        arrow("RIGHT", 1, 0);
        arrow("UP", 0, -1);
        arrow("DOWN", 0, 1);
        key(canvas, "ENTER", () -> enter(false, false));
        key(canvas, "shift ENTER", () -> enter(true, false));
        key(canvas, "alt ENTER", () -> enter(false, true));
        canvas.addKeyListener(new Pressed());
        canvas.onTool(tool -> {
            if (canvas.byKeys() && tool.placing()) {
                offer(tool);
            }
        });
        new ItemKeys(canvas);
        new HandKeys(canvas);
    }

    private void arrow(String arrow, int dx, int dy) {
        key(canvas, arrow, () -> step(dx, dy, false));
        key(canvas, "shift " + arrow, () -> step(dx, dy, true));
    }

    static void key(SheetCanvas canvas, String key, Runnable body) {
        canvas.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), "keys." + key);
        canvas.getActionMap().put("keys." + key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                canvas.byKeys(true);
                body.run();
            }
        });
    }

    /** From the first key on, the status line speaks of keys; letters and digits lead a cable to a component by its tag. */
    private final class Pressed extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent e) {
            canvas.byKeys(true);
        }

        @Override
        public void keyTyped(KeyEvent e) {
            int other = InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK | InputEvent.ALT_DOWN_MASK;
            if (canvas.tool() instanceof RunTool tool
                    && (e.getModifiersEx() & other) == 0
                    && Character.isLetterOrDigit(e.getKeyChar())) {
                tool.typed(e.getKeyChar());
                e.consume();
            }
        }
    }

    private void step(int dx, int dy, boolean far) {
        Tool tool = canvas.tool();
        if (tool.placing()) {
            begin(tool);
            double step = MoveGesture.GRID_MM * (far ? 8 : 2);
            at = at.plus(dx * step, dy * step);
            tool.moved(Spot.at(at.xMm(), at.yMm(), canvas.viewport()));
            canvas.view().reveal(Rect.of(at.xMm(), at.yMm(), 0, 0));
        } else if (tool instanceof RunTool run) {
            run.step(dx, dy);
        } else if (session.state().selection().isEmpty()) {
            int px = Look.px(PAN_PX) * (far ? 4 : 1);
            canvas.view(canvas.viewport().moved(-dx * px, -dy * px));
        } else {
            edits.nudge(dx, dy, far);
            session.state().soleSelection().ifPresent(this::reveal);
        }
    }

    /** Where it stands now is known before there is a scene of it. */
    private void reveal(String moved) {
        Drawing d = session.state().drawing();
        d.components()
                .find(moved)
                .map(c -> c.place().at())
                .or(() -> d.notes().find(moved).map(Note::at))
                .ifPresent(p -> canvas.view().reveal(Rect.of(p.xMm(), p.yMm(), 0, 0)));
    }

    private void enter(boolean again, boolean direct) {
        Tool tool = canvas.tool();
        if (tool.placing()) {
            begin(tool);
            Spot spot = Spot.at(at.xMm(), at.yMm(), canvas.viewport());
            tool.released(again ? spot.withShift() : spot);
            placing = null;
            if (again && canvas.tool() == tool) {
                offer(tool);
            }
        } else if (tool instanceof RunTool run) {
            run.take(again || direct);
        } else if (!again && !direct) {
            card.get().ifPresent(Component::requestFocusInWindow);
        }
    }

    /** Shows at once where it would stand. */
    private void offer(Tool tool) {
        begin(tool);
        tool.moved(Spot.at(at.xMm(), at.yMm(), canvas.viewport()));
        canvas.view().reveal(Rect.of(at.xMm(), at.yMm(), 0, 0));
    }

    /** A component is offered in the selected cable, else beside the selected component, else in the middle. */
    private void begin(Tool tool) {
        if (placing != tool) {
            placing = tool;
            Optional<Scene> scene = canvas.scene();
            at = session.state()
                    .soleSelection()
                    .flatMap(id -> scene.flatMap(s -> beside(s, id, tool)))
                    .orElseGet(() -> scene.map(s ->
                                    free(s, s.drawable().centreX(), s.drawable().centreY(), barMm(tool)))
                            .orElse(new Point(0, 0)));
        }
    }

    private static double barMm(Tool tool) {
        return tool instanceof PlaceTool p ? p.barMm() : 0;
    }

    private Optional<Point> beside(Scene s, String id, Tool tool) {
        Route r = s.routes().get(id);
        if (r != null && tool instanceof PlaceTool p && Insertions.inline(p.kind())) {
            return Optional.of(r.at(share(id, r.lengthMm(), p.kind())));
        }
        Optional<Rect> bar = s.item(Role.BAR, id).map(SceneItem::bounds).filter(b -> b.width() > b.height());
        if (bar.isPresent()) { // what feeds a bar stands above it, what it feeds below
            boolean feeds = tool instanceof PlaceTool p && p.kind().group() == Group.SOURCES;
            double y = bar.get().centreY() + (feeds ? -BELOW_MM : BELOW_MM);
            return Optional.of(free(s, bar.get().minX() + BELOW_MM / 4, Math.min(y, footMm(s)), barMm(tool)));
        }
        return s.items().stream()
                .filter(i -> i.subject().equals(id) && ITEMS.contains(i.role()))
                .findFirst()
                .map(SceneItem::bounds)
                .map(b -> free(s, b.centreX() + BESIDE_MM + barMm(tool) / 2, b.centreY(), barMm(tool)));
    }

    /** A protective device belongs where its cable is fed, anything else in the middle. */
    private double share(String cable, double lengthMm, Kind kind) {
        Drawing d = session.state().drawing();
        Cable w = d.cables().get(cable);
        if (w == null || kind.group() != Group.PROTECTION) {
            return 0.5;
        }
        int from = FEEDS.indexOf(
                d.components().require(w.from().component()).kind().group());
        int to = FEEDS.indexOf(d.components().require(w.to().component()).kind().group());
        double near = Math.min(0.5, NEAR_MM / lengthMm);
        return from == to ? 0.5 : from > to ? near : 1 - near;
    }

    /** So far down a new component is offered: the legend grows with what is drawn, and keeps the foot for itself. */
    private static double footMm(Scene s) {
        double top = s.items().stream()
                .filter(i -> FOOT.contains(i.role()))
                .mapToDouble(i -> i.bounds().minY())
                .min()
                .orElse(s.drawable().maxY());
        return Arranging.onGrid(top - 2 * ROOM_MM);
    }

    /**
     * The nearest place to the right, or a row further down, at which nothing stands.
     *
     * @param widthMm what the thing takes, 0 for that of a symbol
     */
    private static Point free(Scene s, double x, double y, double widthMm) {
        Rect paper = s.drawable();
        for (double down = y; down < paper.maxY() - BESIDE_MM / 2; down += BESIDE_MM) {
            for (double right = x; right < paper.maxX() - Math.max(BESIDE_MM, widthMm) / 2; right += BESIDE_MM / 2) {
                Rect room = Rect.of(right, down, 0, 0).grown(Math.max(widthMm / 2, ROOM_MM), ROOM_MM);
                boolean taken = s.cableAt(right, down, ROOM_MM).isPresent()
                        || s.items().stream()
                                .filter(i -> TAKES_ROOM.contains(i.role()))
                                .anyMatch(i -> i.bounds().overlaps(room));
                if (!taken) {
                    return new Point(right, down);
                }
            }
        }
        return new Point(x, y);
    }

    /** The first field of the card. */
    static Optional<Component> firstField(Container in) {
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
