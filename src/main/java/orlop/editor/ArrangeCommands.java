package orlop.editor;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import orlop.desk.Arranging;
import orlop.desk.Layering;
import orlop.desk.Locks;
import orlop.desk.Renumbering;
import orlop.desk.RepeatPlaces;
import orlop.desk.Repeats;
import orlop.desk.Selecting;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.desk.SheetEdits;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.SceneItem;

/** The commands of the menu Arrange, and those that select what belongs together. */
final class ArrangeCommands {
    private final Session session;
    private final SheetCanvas canvas;
    private final Prompts prompts;

    ArrangeCommands(Session session, SheetCanvas canvas, Prompts prompts) {
        this.session = session;
        this.canvas = canvas;
        this.prompts = prompts;
    }

    void addTo(Commands c) {
        c.add(CommandId.SELECT_KIND, this::selectKind, this::any);
        c.add(CommandId.SELECT_CONNECTED, this::selectConnected, this::any);
        align(c, CommandId.ALIGN_LEFT, Arranging.Line.LEFT);
        align(c, CommandId.ALIGN_RIGHT, Arranging.Line.RIGHT);
        align(c, CommandId.ALIGN_TOP, Arranging.Line.TOP);
        align(c, CommandId.ALIGN_BOTTOM, Arranging.Line.BOTTOM);
        align(c, CommandId.ALIGN_COLUMN, Arranging.Line.COLUMN);
        align(c, CommandId.ALIGN_ROW, Arranging.Line.ROW);
        distribute(c, CommandId.DISTRIBUTE_ACROSS, Arranging.Direction.ACROSS);
        distribute(c, CommandId.DISTRIBUTE_DOWN, Arranging.Direction.DOWN);
        c.add(CommandId.FROM_SOURCES, this::fromSources, () -> !layered().isEmpty());
        c.add(CommandId.REPEAT, this::repeat, () -> drawn() > 0);
        c.add(CommandId.RENUMBER, () -> renumber(Set.of()));
        c.add(CommandId.RENUMBER_SELECTED, () -> renumber(state().selection()), this::any);
        c.add(CommandId.LOCK, () -> lock(true), () -> Locks.anyFree(drawing(), state().selection()));
        c.add(CommandId.UNLOCK, () -> lock(false), () -> Locks.any(drawing(), state().selection()));
    }

    private void align(Commands c, CommandId id, Arranging.Line line) {
        c.add(id, () -> arrange(2, boxes -> Arranging.align(boxes, line)), () -> drawn() >= 2);
    }

    private void distribute(Commands c, CommandId id, Arranging.Direction direction) {
        c.add(id, () -> arrange(3, boxes -> Arranging.distribute(boxes, direction)), () -> drawn() >= 3);
    }

    /** Not while the sheet is still being laid out for the first time. */
    private void arrange(int least, Function<Map<String, Rect>, Edit> edit) {
        Map<String, Rect> boxes = boxes();
        if (boxes.size() >= least) {
            session.apply(edit.apply(boxes));
        }
    }

    private SessionState state() {
        return session.state();
    }

    private Drawing drawing() {
        return state().drawing();
    }

    private boolean any() {
        return !state().selection().isEmpty();
    }

    /** How many components and notes are selected on the sheet: asked with every change, so without its scene. */
    private int drawn() {
        SessionState s = state();
        Drawing d = s.shown();
        int n = 0;
        for (String id : s.selection()) {
            Component c = d.components().get(id);
            Note note = d.notes().get(id);
            boolean here = c != null
                    ? c.place().sheet().equals(s.sheet())
                    : note != null && note.sheet().equals(s.sheet());
            n += here ? 1 : 0;
        }
        return n;
    }

    /** What the selected components and notes cover. */
    private Map<String, Rect> boxes() {
        return state().selection().isEmpty()
                ? Map.of()
                : canvas.scene()
                        .map(s -> Arranging.boxes(s, state().selection()))
                        .orElse(Map.of());
    }

    private void selectKind() {
        session.select(Selecting.ofKind(drawing(), state().sheet(), state().selection()));
        saySelected();
    }

    private void selectConnected() {
        session.select(Selecting.connected(drawing(), state().sheet(), state().selection()));
        saySelected();
    }

    private void saySelected() {
        session.say(Message.of("editor.say.selected", state().selection().size()));
    }

    private void lock(boolean locked) {
        session.apply(Locks.set(state().selection(), locked));
    }

    /** What the selected items cover, labels and all: so much room a copy needs. */
    private Optional<Rect> labelled() {
        Set<String> ids = state().selection();
        return canvas.scene()
                .flatMap(s -> s.items().stream()
                        .filter(i -> ids.contains(i.subject()))
                        .filter(i -> i.role() != Role.FINDING && i.role() != Role.PROPOSED && i.role() != Role.MARGIN)
                        .map(SceneItem::bounds)
                        .reduce(Rect::union));
    }

    private Set<String> layered() {
        return Layering.moved(drawing(), state().sheet(), state().selection());
    }

    private void fromSources() {
        Set<String> placed = layered();
        if (session.apply(Layering.edit(state().sheet(), state().selection())).isEmpty()) {
            Set<String> beyond = SheetEdits.beyond(drawing(), state().sheet());
            beyond.retainAll(placed);
            if (!beyond.isEmpty()) {
                String paper = state().shownSheet().orElseThrow().size().designation();
                session.select(beyond);
                session.say(Message.of("editor.say.beyond", beyond.size(), paper));
            }
        }
    }

    private void repeat() {
        Drawing before = drawing();
        Set<String> ids = state().selection();
        RepeatForm form = new RepeatForm(canvas.scene().map(s -> new RepeatPlaces(before, s, ids)), labelled());
        Supplier<Optional<Message>> taken =
                () -> form.refusal().or(() -> session.apply(form.edit(state().selection())));
        if (prompts.form(Texts.of("editor.repeat.title"), form.panel(), taken)) {
            session.select(Repeats.added(before, drawing()));
        }
    }

    private void renumber(Set<String> ids) {
        Drawing before = drawing();
        Map<String, String> tags = Renumbering.tags(before, ids);
        Set<String> selected = new LinkedHashSet<>();
        for (String id : state().selection()) {
            if (!before.links().contains(id)) { // its id may have been made of tags
                selected.add(tags.getOrDefault(id, id));
            }
        }
        if (session.apply(Renumbering.edit(ids), selected).isEmpty()) {
            long notes = Renumbering.notesNaming(before, tags.keySet());
            session.say(
                    notes == 0
                            ? Message.of("editor.say.renumbered", tags.size())
                            : Message.of("editor.say.renumbered-notes", tags.size(), (int) notes));
        }
    }
}
