package orlop.editor;

import java.awt.Cursor;
import java.awt.Graphics2D;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import orlop.desk.BarStretch;
import orlop.desk.PathProfile;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.desk.SwitchEdits;
import orlop.drawing.Component;
import orlop.drawing.Locked;
import orlop.drawing.SwitchPositions;
import orlop.findings.Finding;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.scene.TerminalSpot;

/**
 * The usual tool: selects, moves, runs cables from terminals, sets switches, renames.
 *
 * <p>A bar takes a cable anywhere: a drag from it runs one, unless it is selected; then it moves.
 */
final class HandTool implements Tool {
    /** Longer than the pause within a double click: a click on a selected switch waits to see whether it is one. */
    private static final int CLICK_MS = 260;

    private final SheetCanvas canvas;
    private final Session session;
    private final Pointing pointing;
    private final HoverMarks marks;
    private Renamer renamer = id -> {};
    private Consumer<Finding> onMark = f -> {};
    private @Nullable Spot pressedAt;
    private @Nullable Gesture gesture;
    private @Nullable Gesture letGo;
    private boolean wasSelected;
    private @Nullable EndGrip grip;
    private @Nullable Timer click;

    /** Asks for a new tag of a component or cable. */
    @FunctionalInterface
    interface Renamer {
        void rename(String id);
    }

    HandTool(SheetCanvas canvas, Session session, Pointing pointing) {
        this.canvas = canvas;
        this.session = session;
        this.pointing = pointing;
        this.marks = new HoverMarks(canvas);
    }

    void renamer(Renamer r) {
        renamer = r;
    }

    /** @param listener told of the finding whose mark on the sheet was clicked */
    void onMark(Consumer<Finding> listener) {
        onMark = listener;
    }

    boolean busy() {
        return gesture != null;
    }

    private Optional<SceneItem> item(Spot at) {
        return item(canvas.scene(), at);
    }

    private static Optional<SceneItem> item(Optional<Scene> scene, Spot at) {
        return scene.flatMap(s -> s.itemAt(at.xMm(), at.yMm(), at.nearMm() / 2));
    }

    /** What can be clicked: in a large drawing what is seen, since a scene of what has just been edited takes its time. */
    private Optional<Scene> clickable() {
        return ShownScene.large(session.state().drawing()) ? canvas.seen() : canvas.scene();
    }

    /** The mark of a finding under the mouse. */
    private Optional<SceneItem> mark(Spot at) {
        return item(at).filter(HandTool::isMark);
    }

    private static boolean isMark(SceneItem i) {
        return i.role() == Role.FINDING || i.role() == Role.PROPOSED;
    }

    /** The tag of the component or cable, or the id of the note, under the mouse. */
    private Optional<String> subject(Spot at) {
        return subject(item(at));
    }

    private static Optional<String> subject(Optional<SceneItem> item) {
        return item.filter(i -> !isMark(i) && i.role() != Role.MARGIN).map(SceneItem::subject);
    }

    /** Selects what lies at this place, unless it is already among what is selected; nothing where nothing lies. */
    void meant(Spot at) {
        Optional<String> id = subject(at);
        Optional<String> marked =
                mark(at).flatMap(this::finding).map(f -> f.finding().place().item());
        Set<String> now = id.or(() -> marked).map(Set::of).orElse(Set.of());
        if (now.isEmpty() || !session.state().selection().containsAll(now)) {
            session.select(now);
        }
    }

    private Optional<TerminalSpot> terminal(Spot at) {
        return terminal(canvas.scene(), at);
    }

    private Optional<TerminalSpot> terminal(Optional<Scene> scene, Spot at) {
        Optional<TerminalSpot> near = scene.flatMap(s -> s.terminalNear(at.xMm(), at.yMm(), at.nearMm()));
        boolean ofSelectedBar = near.isPresent()
                && scene.orElseThrow().terminals().stream().noneMatch(t -> t.equals(near.get()))
                && session.state().selection().contains(near.get().terminal().component());
        return ofSelectedBar ? Optional.empty() : near;
    }

    @Override
    public void pressed(Spot at) {
        pressedAt = at;
        stopClick();
        Optional<Scene> scene = clickable();
        grip = at.shift() ? null : EndGrip.under(canvas, scene, at).orElse(null); // of what was selected before
        Optional<SceneItem> item = item(scene, at);
        Optional<String> id = subject(item);
        wasSelected = id.isPresent() && session.state().selection().contains(id.get());
        Optional<SceneItem> marker = item.filter(HandTool::isMark);
        if (marker.isPresent()) {
            finding(marker.get())
                    .ifPresent(f -> session.select(Set.of(f.finding().place().item())));
        } else if (at.clicks() == 2 && id.isPresent()) {
            renamer.rename(id.get());
        } else if (id.isPresent() && at.shift()) {
            toggle(id.get());
        } else if (id.isPresent() && !wasSelected && terminal(scene, at).isEmpty()) {
            session.select(Set.of(id.get()));
        }
    }

    private void toggle(String id) {
        Set<String> ids = new LinkedHashSet<>(session.state().selection());
        if (!ids.remove(id)) {
            ids.add(id);
        }
        session.select(ids);
    }

    @Override
    public void dragged(Spot at) {
        Spot from = pressedAt;
        if (from == null) {
            return;
        }
        if (gesture == null && at.dragged(from)) {
            letGo = null;
            gesture = begun(from);
        }
        if (gesture != null) {
            gesture.dragged(at);
        }
    }

    private Gesture begun(Spot from) {
        marks.none();
        pointing.at(null);
        Optional<Gesture> stretch = StretchGesture.at(canvas, from);
        if (stretch.isPresent() && !from.shift()) {
            return stretch.get();
        }
        EndGrip end = grip;
        if (end != null) {
            return new LeadingGesture(canvas, end, from);
        }
        Optional<TerminalSpot> t = terminal(from);
        if (t.isPresent() && !from.shift()) {
            return new CableGesture(canvas, t.get(), from);
        }
        Optional<String> id = subject(from);
        if (id.isPresent()) {
            if (!session.state().selection().contains(id.get())) {
                session.select(Set.of(id.get()));
            }
            Optional<Gesture> byHand = HandSetGestures.at(canvas, item(from), from);
            if (byHand.isPresent()) {
                return byHand.get();
            }
            return new MoveGesture(canvas, session.state().selection(), from);
        }
        return new RubberGesture(canvas, from);
    }

    @Override
    public void released(Spot at) {
        Spot from = pressedAt;
        Gesture g = gesture;
        pressedAt = null;
        gesture = null;
        if (g != null) {
            g.released(at);
            if (ShownScene.large(session.state().drawing())) {
                letGo = g instanceof RubberGesture
                        ? null
                        : g; // it is seen over the picture before until the next one is there
            } else {
                canvas.blink().end(); // what was dragged stays where it was let go
            }
        } else if (from != null && from.clicks() == 1 && !from.shift()) {
            clicked(from);
        }
    }

    private void clicked(Spot at) {
        Optional<SceneItem> item = item(clickable(), at);
        Optional<String> id = subject(item);
        if (id.isEmpty()) {
            if (item.isEmpty()) {
                session.select(Set.of());
            }
            item.filter(HandTool::isMark).flatMap(this::finding).ifPresent(f -> onMark.accept(f.finding()));
            return;
        }
        session.select(Set.of(id.get()));
        if (wasSelected && switchable(id.get())) {
            click = new Timer(CLICK_MS, e -> turn(id.get()));
            click.setRepeats(false);
            click.start();
        }
    }

    private void stopClick() {
        if (click != null) {
            click.stop();
            click = null;
        }
    }

    private boolean switchable(String id) {
        Component c = session.state().drawing().components().get(id);
        return c != null && !SwitchPositions.of(c.particulars()).isEmpty();
    }

    /** Moves a switch on to its next position in the condition that is shown. */
    void turn(String id) {
        SessionState s = session.state();
        Component c = s.drawing().components().get(id);
        if (c != null) {
            SwitchEdits.next(s.drawing(), c, s.condition()).ifPresent(session::apply);
        }
    }

    @Override
    public void moved(Spot at) {
        Optional<Scene> seen = canvas.seen(); // none is made for a mouse that only goes by
        Optional<SceneItem> item = item(seen, at);
        pointing.at(item.filter(HandTool::isMark)
                .flatMap(this::finding)
                .map(FindingPlaces.Numbered::finding)
                .orElse(null));
        Optional<TerminalSpot> t = terminal(seen, at);
        Optional<String> id = subject(item);
        String hovered = t.isPresent() ? t.get().terminal().component() : id.orElse(null);
        Optional<BarStretch> end = StretchGesture.end(canvas, seen, at);
        canvas.hover(hovered);
        Optional<EndGrip> ring = end.isPresent() ? Optional.empty() : EndGrip.under(canvas, seen, at);
        canvas.cursor(end.map(e -> e.lying() ? Cursor.E_RESIZE_CURSOR : Cursor.S_RESIZE_CURSOR)
                .orElse(ring.isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        marks.at(end.isPresent() || ring.isPresent() ? Optional.empty() : t, hovered);
        canvas.hint(end.map(e -> Texts.of("editor.hint.stretch", e.bar()))
                .or(() -> ring.map(g -> Texts.of("editor.hint.lead", g.cable().id())))
                .orElseGet(() -> hint(t, id)));
    }

    /** The mouse has left the sheet. */
    void left() {
        pointing.at(null);
        marks.none();
    }

    private String hint(Optional<TerminalSpot> terminal, Optional<String> id) {
        if (terminal.isPresent()) {
            return Texts.of(
                    "editor.hint.terminal",
                    NaturalEnds.name(session.state().drawing(), terminal.get().terminal()));
        }
        if (id.isEmpty()) {
            return KeyHints.atRest(session.state(), false);
        }
        if (Locked.is(session.state().drawing(), id.get())) {
            boolean cable = session.state().drawing().cables().contains(id.get());
            return Texts.of(cable ? "editor.hint.locked-cable" : "editor.hint.locked", id.get());
        }
        if (session.state().drawing().notes().contains(id.get())) {
            return Texts.of("editor.hint.on-note");
        }
        if (switchable(id.get())) {
            return Texts.of(
                    session.state().selection().contains(id.get()) ? "editor.hint.switch-now" : "editor.hint.switch",
                    id.get());
        }
        Optional<PathProfile> fed = canvas.fed(id.get()).filter(p -> p.dropPercent() != null);
        if (fed.isPresent()) {
            return fedBy(fed.get());
        }
        if (!session.state().drawing().cables().contains(id.get())) {
            return Texts.of("editor.hint.on-component", id.get());
        }
        if (!session.state().soleSelection().equals(id)) {
            return Texts.of("editor.hint.on-cable", id.get());
        }
        boolean rings = !EndGrip.all(canvas, canvas.seen()).isEmpty();
        return Texts.of(rings ? "editor.hint.on-cable-now" : "editor.hint.on-cable-short", id.get());
    }

    private static String fedBy(PathProfile p) {
        return Texts.of(
                "editor.hint.fed",
                p.load(),
                p.stations().get(0).item(),
                String.format(Locale.ROOT, "%.1f", p.lengthM()),
                String.format(Locale.ROOT, "%.2f", p.dropPercent()));
    }

    private Optional<FindingPlaces.Numbered> finding(SceneItem marker) {
        return FindingPlaces.withAccepted(session.state()).stream()
                .filter(n -> Integer.toString(n.number()).equals(marker.subject()))
                .findFirst();
    }

    @Override
    public void backOut() {
        stopClick();
        if (gesture != null) {
            gesture.backOut();
            gesture = null;
            pressedAt = null;
        }
    }

    @Override
    public void paint(Graphics2D g) {
        if (!canvas.blink().waits()) {
            letGo = null;
        }
        if (gesture != null) {
            gesture.paint(g);
        } else if (letGo != null) {
            letGo.paint(g);
        } else {
            canvas.seen().ifPresent(s -> marks.paint(g, s, canvas.viewport().mm(1)));
        }
    }
}
