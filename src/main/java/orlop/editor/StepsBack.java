package orlop.editor;

import java.lang.ref.WeakReference;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import orlop.desk.Changes;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Place;
import orlop.layout.Rect;

/**
 * Goes back and on in the history in such a way that the work goes on from there: what was selected when the drawing was
 * this one is selected again; where that has nothing to do with the step, what has come back or is other now. It is
 * shown, on its sheet, and the status line says which step it was.
 */
final class StepsBack {
    /** What comes back in greater number, such as by taking back a change of all tags, isn't selected. */
    private static final int MOST_BACK = 30;

    /** So many drawings of the history are remembered with what was selected; they aren't kept alive by it. */
    private static final int REMEMBERED = 500;

    private final Session session;
    private final SheetCanvas canvas;
    private final Deque<Left> left = new ArrayDeque<>();

    /** What was shown and selected when a drawing was left for another one. */
    private record Left(WeakReference<Drawing> drawing, Set<String> selection, String sheet, String condition) {}

    StepsBack(Session session, SheetCanvas canvas) {
        this.session = session;
        this.canvas = canvas;
        session.listen(this::remember);
    }

    private void remember(SessionState before, SessionState after) {
        if (!Same.object(before.drawing(), after.drawing())) {
            left.removeIf(
                    l -> l.drawing().get() == null || Same.object(l.drawing().get(), before.drawing()));
            left.addLast(new Left(
                    new WeakReference<>(before.drawing()), before.selection(), before.sheet(), before.condition()));
            if (left.size() > REMEMBERED) {
                left.removeFirst();
            }
        }
    }

    void undo() {
        step(session::undo, session.state().undo(), "editor.say.undone");
    }

    void redo() {
        step(session::redo, session.state().redo(), "editor.say.redone");
    }

    private void step(Runnable step, @Nullable Message what, String said) {
        if (what == null) {
            return;
        }
        Drawing before = session.state().drawing();
        step.run();
        Drawing now = session.state().drawing();
        Left then = left.stream()
                .filter(l -> Same.object(l.drawing().get(), now))
                .findFirst()
                .orElse(new Left(
                        new WeakReference<>(now),
                        session.state().selection(),
                        session.state().sheet(),
                        session.state().condition()));
        Set<String> selection = selection(then, Changes.of(before, now), now);
        Optional<Place> place =
                selection.stream().flatMap(id -> place(now, id).stream()).findFirst();
        if (!Same.object(before.sheets(), now.sheets()) || place.isPresent()) {
            session.showSheet(place.map(Place::sheet).orElse(then.sheet()));
        }
        if (!Same.object(before.conditions(), now.conditions())) {
            session.showCondition(then.condition());
        }
        session.select(selection);
        place.ifPresent(p -> canvas.view().reveal(Rect.of(p.at().xMm(), p.at().yMm(), 0, 0)));
        session.say(Message.of(said, what));
    }

    private static Set<String> selection(Left then, Set<String> changed, Drawing now) {
        Set<String> was = new LinkedHashSet<>(then.selection());
        was.removeIf(id -> place(now, id).isEmpty());
        boolean concerned = changed.isEmpty() || !Collections.disjoint(was, changed);
        return concerned || changed.size() > MOST_BACK ? was : changed;
    }

    /** Where an item stands: a cable or a direct connection at the component from which it comes. */
    private static Optional<Place> place(Drawing d, String id) {
        Optional<Component> c = Stream.of(
                        d.components().find(id),
                        d.cables()
                                .find(id)
                                .flatMap(w -> d.components().find(w.from().component())),
                        d.links()
                                .find(id)
                                .flatMap(l -> d.components().find(l.from().component())))
                .flatMap(Optional::stream)
                .findFirst();
        return c.map(Component::place)
                .or(() -> d.notes().find(id).map(n -> new Place(n.sheet(), n.at(), 0, false, null)));
    }
}
