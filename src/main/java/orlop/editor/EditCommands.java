package orlop.editor;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import orlop.desk.Arranging;
import orlop.desk.CableRuns;
import orlop.desk.Changes;
import orlop.desk.Clip;
import orlop.desk.HandSet;
import orlop.desk.PasteRoom;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.SwitchPositions;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;
import orlop.store.FileProblem;

/** The commands of the menus Edit and Draw. */
final class EditCommands {
    private final Session session;
    private final SheetCanvas canvas;
    private final Prompts prompts;
    private final Consumer<String> onNote;
    private final StepsBack steps;
    private final Clipboards clipboard = new Clipboards();
    private int pasted;

    /** @param onNote asks for other words of a note */
    EditCommands(Session session, SheetCanvas canvas, Prompts prompts, Consumer<String> onNote) {
        this.onNote = onNote;
        this.session = session;
        this.canvas = canvas;
        this.prompts = prompts;
        this.steps = new StepsBack(session, canvas);
        canvas.hand().renamer(this::rename);
    }

    void addTo(Commands c) {
        c.add(CommandId.UNDO, steps::undo, () -> state().undo() != null);
        c.add(CommandId.REDO, steps::redo, () -> state().redo() != null);
        c.add(CommandId.CUT, this::cut, () -> !movable().isEmpty());
        c.add(CommandId.COPY, this::copy, () -> !movable().isEmpty());
        c.add(CommandId.PASTE, this::paste, () -> state().shownSheet().isPresent());
        c.add(CommandId.DUPLICATE, this::duplicate, () -> !movable().isEmpty());
        c.add(CommandId.DELETE, this::delete, this::any);
        c.add(CommandId.SELECT_ALL, this::selectAll);
        c.add(CommandId.RENAME, () -> state().soleSelection().ifPresent(this::rename), this::renamable);
        c.add(CommandId.BACK_OUT, canvas::backOut);
        c.add(CommandId.TURN, this::turn, this::anyComponent);
        c.add(CommandId.MIRROR, this::mirror, this::anyComponent);
        c.add(CommandId.JOIN, () -> join(false), this::two);
        c.add(CommandId.LINK, () -> join(true), this::two);
        c.add(CommandId.RUN, this::run, () -> !state().drawing().components().isEmpty());
        c.add(CommandId.SWITCH, this::turnSwitches, this::anySwitch);
        c.add(
                CommandId.AUTOMATIC,
                () -> session.apply(HandSet.automatic(state().selection())),
                () -> HandSet.any(state().drawing(), state().selection()));
    }

    private SessionState state() {
        return session.state();
    }

    private boolean any() {
        return !state().selection().isEmpty();
    }

    private boolean anyComponent() {
        return state().selection().stream().anyMatch(state().drawing().components()::contains);
    }

    /** The components and notes that are selected. */
    private Set<String> movable() {
        Drawing d = state().drawing();
        Set<String> ids = new LinkedHashSet<>(state().selection());
        ids.removeIf(id -> !d.components().contains(id) && !d.notes().contains(id));
        return ids;
    }

    private boolean renamable() {
        return state().soleSelection()
                .filter(id -> !state().drawing().links().contains(id))
                .isPresent();
    }

    private boolean anySwitch() {
        return components().stream()
                .anyMatch(c -> !SwitchPositions.of(c.particulars()).isEmpty());
    }

    private List<Component> components() {
        Drawing d = state().drawing();
        return state().selection().stream()
                .flatMap(id -> d.components().find(id).stream())
                .toList();
    }

    private void copy() {
        String text = Clip.write(state().drawing(), state().selection());
        if (!text.isEmpty()) {
            clipboard.put(text);
            pasted = 0;
            session.say(Message.of("editor.say.copied", movable().size()));
        }
    }

    private void cut() {
        copy();
        delete();
        pasted = -1; // the first one goes where it was
    }

    private void paste() {
        pasted++;
        put(clipboard.text(), pasted);
    }

    private void duplicate() {
        put(Clip.write(state().drawing(), state().selection()), 1);
    }

    /** Puts what was copied in, with its middle at this place on the sheet. */
    void pasteAt(double xMm, double yMm) {
        pasted++;
        put(
                clipboard.text(),
                c -> new Point(Arranging.onGrid(xMm), Arranging.onGrid(yMm))
                        .plus(-c.middle().xMm(), -c.middle().yMm()));
    }

    private void put(String text, int times) {
        double off = 4 * MoveGesture.GRID_MM * times;
        Point wish = new Point(off, off);
        put(
                text,
                c -> canvas.scene()
                        .filter(s -> times > 0) // what was cut goes where it was
                        .flatMap(s -> PasteRoom.near(c, s, wish))
                        .orElse(wish));
    }

    /** @param by how far it is moved */
    private void put(String text, Function<Clip, Point> by) {
        try {
            Clip clip = Clip.read(text);
            Point off = by.apply(clip);
            Clip.Pasted p = clip.onto(state().drawing(), state().sheet(), off.xMm(), off.yMm());
            session.apply(p.edit(), p.ids());
        } catch (FileProblem e) {
            session.say(Message.of("editor.say.no-clip"));
        }
    }

    /** A cable that is whole again is selected, so that the keys go on from there. */
    private void delete() {
        if (any()) {
            Drawing before = state().drawing();
            Optional<Message> refusal = session.apply(Edits.delete(state().selection()));
            Set<String> healed = new LinkedHashSet<>(Changes.of(before, state().drawing()));
            healed.removeIf(id -> !state().drawing().cables().contains(id));
            if (refusal.isEmpty() && healed.size() == 1) {
                session.select(healed);
            }
        }
    }

    private void selectAll() {
        Set<String> ids = new LinkedHashSet<>();
        canvas.scene()
                .ifPresent(s -> s.items().stream()
                        .filter(i -> switch (i.role()) {
                            case COMPONENT, BAR, CABLE, LINK, NOTE -> true;
                            default -> false;
                        })
                        .forEach(i -> ids.add(i.subject())));
        session.select(ids);
    }

    /** Asks for a new tag of a component or cable, or for the words of a note. */
    void rename(String id) {
        if (state().drawing().notes().contains(id)) {
            onNote.accept(id);
            return;
        }
        if (state().drawing().links().contains(id)) {
            return; // its card is open; it has no tag
        }
        prompts.line(
                Texts.of("editor.rename.title", id),
                Texts.of("editor.rename"),
                id,
                typed -> typed.equals(id) ? Optional.empty() : session.apply(Edits.rename(id, typed), Set.of(typed)));
    }

    private void turn() {
        changeAll(p -> p.withRotationDegree((p.rotationDegree() + 90) % 360));
    }

    /** Left and right as they are seen are exchanged: a place is mirrored first, and then turned the other way round. */
    private void mirror() {
        changeAll(p -> p.withMirrored(!p.mirrored()).withRotationDegree((360 - p.rotationDegree()) % 360));
    }

    private void changeAll(java.util.function.UnaryOperator<Place> change) {
        Optional<Component> locked =
                components().stream().filter(Component::locked).findFirst();
        if (locked.isPresent()) {
            session.say(Message.of("drawing.refuse.locked", locked.get().id()));
            return;
        }
        List<Edit> edits = components().stream()
                .map(c -> Edits.change(c.withPlace(change.apply(c.place()))))
                .toList();
        if (!edits.isEmpty()) {
            session.apply(Edits.all(edits.get(0).label(), edits));
        }
    }

    private boolean two() {
        return components().size() == 2;
    }

    /** The ends of a cable between exactly two selected components, in the order in which they were selected. */
    private Optional<List<TerminalRef>> ends() {
        List<Component> two = components();
        if (!two()) {
            return Optional.empty();
        }
        return Optional.of(canvas.scene()
                .flatMap(s -> new NaturalEnds(state().drawing())
                        .best(
                                NaturalEnds.spots(s, two.get(0).id()),
                                NaturalEnds.spots(s, two.get(1).id())))
                .map(p -> List.of(p.from().terminal(), p.to().terminal()))
                .orElseGet(() -> List.of(freeEnd(two.get(0)), freeEnd(two.get(1)))));
    }

    private TerminalRef freeEnd(Component c) {
        Drawing d = state().drawing();
        List<String> names = c.particulars().terminals();
        if (names.isEmpty()) {
            return new TerminalRef(c.id(), Tags.freeTap(d, c.id()));
        }
        return names.stream()
                .map(n -> new TerminalRef(c.id(), n))
                .filter(t -> d.cables().stream().noneMatch(w -> w.from().equals(t) || w.to().equals(t)))
                .filter(t -> d.links().stream().noneMatch(l -> l.from().equals(t) || l.to().equals(t)))
                .reduce((first, second) -> c.kind().group() == orlop.drawing.Group.SOURCES ? first : second)
                .orElse(new TerminalRef(c.id(), names.get(0)));
    }

    private void join(boolean direct) {
        ends().ifPresent(e -> {
            Drawing d = state().drawing();
            if (direct) {
                session.apply(CableRuns.link(d, e.get(0), e.get(1)), Set.of(Link.idOf(e.get(0), e.get(1))));
            } else {
                session.apply(CableRuns.cable(d, e.get(0), e.get(1)), Set.of(Tags.nextCable(d)));
            }
        });
    }

    /** By keys, from the component that is selected. */
    private void run() {
        String from = state().soleSelection()
                .filter(state().drawing().components()::contains)
                .orElse("");
        RunTool tool = new RunTool(canvas, from);
        if (tool.possible()) {
            canvas.use(tool);
            canvas.requestFocusInWindow();
        }
    }

    private void turnSwitches() {
        components().forEach(c -> canvas.hand().turn(c.id()));
    }

    /** Moves what is selected by a step of the grid, as one step of the history while the key is held. */
    void nudge(int dx, int dy, boolean far) {
        Set<String> ids = movable();
        if (!ids.isEmpty()) {
            double step = MoveGesture.GRID_MM * (far ? 4 : 1);
            session.apply(Edits.move(ids, dx * step, dy * step, List.of("nudge", List.copyOf(ids))));
        }
    }
}
