package orlop.editor;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import orlop.desk.RecordParts;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.desk.SheetEdits;
import orlop.desk.SheetMoves;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.drawing.Sheet;
import orlop.layout.Rect;
import orlop.scene.SceneItem;

/** The commands of the drawing register: sheets come and go and change places; items move from one to another. */
final class SheetCommands {
    /** A sheet that is seen whole is brought nearer by this much when a link is followed. */
    private static final double NEARER = 1.5;

    private final Session session;
    private final SheetCanvas canvas;
    private final Prompts prompts;

    SheetCommands(Session session, SheetCanvas canvas, Prompts prompts) {
        this.session = session;
        this.canvas = canvas;
        this.prompts = prompts;
    }

    void addTo(Commands c) {
        c.add(CommandId.NEW_SHEET, this::add);
        c.add(CommandId.SHEET_EARLIER, () -> reorder(-1), () -> place(-1) >= 0);
        c.add(
                CommandId.SHEET_LATER,
                () -> reorder(1),
                () -> place(1) < drawing().sheets().size());
        c.add(CommandId.DELETE_SHEET, this::delete, () -> drawing().sheets().size() > 1);
        c.add(CommandId.MOVE_TO_SHEET, this::move, () -> !movable().isEmpty());
        c.add(
                CommandId.LARGER_PAPER,
                this::larger,
                () -> state().shownSheet()
                        .flatMap(s -> SheetEdits.larger(s.size()))
                        .isPresent());
        c.add(
                CommandId.FOLLOW_LINK,
                () -> state().soleSelection().ifPresent(this::follow),
                () -> state().soleSelection().flatMap(this::mate).isPresent());
    }

    private SessionState state() {
        return session.state();
    }

    private Drawing drawing() {
        return state().drawing();
    }

    private List<String> register() {
        return drawing().sheets().stream().map(Sheet::id).toList();
    }

    /** The place of the sheet that is shown, moved on by so much; -1 for no sheet. */
    private int place(int by) {
        int at = register().indexOf(state().sheet());
        return at < 0 ? -1 : at + by;
    }

    private void add() {
        Sheet fresh = fresh();
        if (session.apply(SheetEdits.add(fresh)).isEmpty()) {
            session.showSheet(fresh.id());
        }
    }

    private void larger() {
        if (session.apply(SheetEdits.larger(state().sheet())).isEmpty()) {
            state().shownSheet()
                    .ifPresent(s -> session.say(
                            Message.of("editor.say.larger-paper", s.size().designation())));
        }
    }

    /** A sheet that isn't in the register yet, of the paper that is shown. */
    private Sheet fresh() {
        Drawing d = drawing();
        String id = SheetEdits.freeId(d);
        Sheet model = state().shownSheet().orElse(Sheet.of(id, ""));
        Sheet fresh = RecordParts.with(
                Sheet.of(id, Texts.of("editor.new.next-sheet", d.sheets().size() + 1)), "size", model.size());
        return RecordParts.with(fresh, "number", SheetEdits.nextNumber(d, id));
    }

    private void reorder(int by) {
        session.apply(SheetEdits.reorder(state().sheet(), place(by)));
    }

    private void delete() {
        SessionState s = state();
        Optional<Sheet> sheet = s.shownSheet();
        if (sheet.isEmpty()) {
            return;
        }
        int items = SheetEdits.contents(s.drawing(), s.sheet()).size();
        if (items > 0) {
            String number = SheetStrip.number(s.drawing(), sheet.get());
            int answer = prompts.choose(
                    Texts.of("editor.ask.delete-sheet.title"),
                    Texts.of("editor.ask.delete-sheet", number, sheet.get().title(), items),
                    Texts.of("editor.ask.delete-sheet.yes"),
                    Texts.of("editor.ask.cancel"));
            if (answer != 0) {
                return;
            }
        }
        int at = place(0);
        if (session.apply(SheetEdits.delete(s.sheet())).isEmpty()) {
            session.showSheet(register().get(Math.min(at, register().size() - 1)));
        }
    }

    private Set<String> movable() {
        Set<String> ids = new LinkedHashSet<>(state().selection());
        ids.removeIf(
                id -> !drawing().components().contains(id) && !drawing().notes().contains(id));
        return ids;
    }

    private void move() {
        List<Sheet> others = new ArrayList<>();
        JComboBox<String> box = new JComboBox<>();
        for (Sheet s : drawing().sheets().values()) {
            if (!s.id().equals(state().sheet())) {
                others.add(s);
                box.addItem(SheetStrip.number(drawing(), s) + "   " + s.title());
            }
        }
        Set<String> ids = movable();
        JPanel page = Forms.page();
        Forms.line(page, "editor.form.to-sheet", box);
        page.add(new WrapText(Texts.of("editor.form.to-sheet.how"), Look::quiet, Look::small));
        box.addItem(Texts.of("editor.form.to-sheet.new"));
        if (prompts.form(Texts.of("editor.form.to-sheet.title", ids.size()), page)) {
            int chosen = Math.max(0, box.getSelectedIndex());
            if (chosen < others.size()) {
                moveTo(ids, others.get(chosen).id());
            } else {
                Sheet fresh = fresh();
                moved(SheetMoves.toNew(ids, fresh), ids, fresh.id());
            }
        }
    }

    /** Moves items to another sheet and shows them there. */
    void moveTo(Set<String> ids, String sheet) {
        moved(SheetMoves.to(ids, sheet), ids, sheet);
    }

    private void moved(Edit move, Set<String> ids, String sheet) {
        if (session.apply(move).isEmpty()) {
            session.showSheet(sheet);
            session.select(ids);
        }
    }

    private Optional<Component> mate(String id) {
        return drawing().components().find(id).flatMap(c -> SheetEdits.mate(drawing(), c));
    }

    /** Goes from one half of a sheet link to the other, and puts it into the middle; whether there was one. */
    boolean follow(String id) {
        Optional<Component> mate = mate(id);
        mate.ifPresent(m -> {
            double before = canvas.viewport().pxPerMm();
            session.showSheet(m.place().sheet());
            session.select(Set.of(m.id()));
            centre(m.id(), before);
        });
        return mate.isPresent();
    }

    private void centre(String id, double before) {
        canvas.fit();
        double scale = Math.max(before, canvas.viewport().pxPerMm() * NEARER);
        canvas.scene()
                .flatMap(s -> s.items().stream()
                        .filter(i -> i.subject().equals(id))
                        .map(SceneItem::bounds)
                        .reduce(Rect::union))
                .ifPresent(r -> {
                    Viewport v = new Viewport(scale, 0, 0);
                    Point2D p = v.toView(r.centreX(), r.centreY());
                    canvas.view(v.moved(canvas.getWidth() / 2.0 - p.getX(), canvas.getHeight() / 2.0 - p.getY()));
                });
    }
}
