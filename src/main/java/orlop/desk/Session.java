package orlop.desk;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Checks;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.History;
import orlop.drawing.Message;
import orlop.study.Results;

/**
 * One drawing at work. Everything that changes, changes here, on the session's own thread; every call from elsewhere is
 * refused.
 *
 * <p>An edit makes a new drawing; its review is asked for at once and comes when it is ready. Until then the old one
 * stays, and {@link SessionState#fresh()} says that it is old.
 */
public final class Session {
    private record Change(SessionState before, SessionState after) {}

    private final UiThread ui;
    private final Recalculator recalculator;
    private final Explainer explainer;
    private final List<SessionListener> listeners = new ArrayList<>();
    private final Deque<Change> untold = new ArrayDeque<>();
    private Consumer<SessionState> asking = s -> {};
    private boolean telling;
    private History history;
    private SessionState state;

    /**
     * Begins to work at a drawing, and asks for its review.
     *
     * @param file where it is kept, null if nowhere yet
     * @param worker runs one task at a time, in order, away from the session's thread
     * @param onFailure told, on the session's thread, of an error in the calculation
     */
    public Session(
            Drawing start,
            @Nullable Path file,
            Review.Maker maker,
            Executor worker,
            UiThread ui,
            Consumer<Throwable> onFailure) {
        this.ui = ui;
        this.history = new History(start);
        this.recalculator = new Recalculator(maker, worker, ui, this::take, onFailure);
        this.explainer = new Explainer(worker, ui, onFailure);
        this.state = fresh(start, file);
        recalculator.request(start);
    }

    private static SessionState fresh(Drawing start, @Nullable Path file) {
        return new SessionState(
                start, null, Set.of(), firstSheet(start), Results.GOVERNING, null, file, false, null, null, null);
    }

    private static String firstSheet(Drawing d) {
        return d.sheets().stream().findFirst().map(s -> s.id()).orElse("");
    }

    /** What holds now. */
    public SessionState state() {
        return state;
    }

    /** Tells how figures came about. */
    public Explainer explainer() {
        return explainer;
    }

    /**
     * @param first told of each review by the thread that made it, before the session has it: what can be done with it there
     *     is done when it comes; must not fail
     */
    public void ahead(Consumer<Review> first) {
        mine();
        recalculator.ahead(first);
    }

    /**
     * @param first told of a state after an edit before its review is asked for, which on paper alone takes no time; must not
     *     fail, nor use the session
     */
    public void asking(Consumer<SessionState> first) {
        mine();
        asking = first;
    }

    /** From now on this listener is told. */
    public void listen(SessionListener listener) {
        mine();
        listeners.add(listener);
    }

    /** This listener is told no longer. */
    public void forget(SessionListener listener) {
        mine();
        listeners.remove(listener);
    }

    /**
     * Makes an edit, as one step of the history.
     *
     * @return why it was refused, the drawing being as before; empty if it was made. The refusal is the notice too.
     */
    public Optional<Message> apply(Edit edit) {
        mine();
        Drawing before = history.current();
        Optional<Message> refusal = refusal(() -> history.apply(edit));
        if (refusal.isPresent()) {
            become(state.withPreview(null).withNotice(refusal.get()));
        } else {
            settle(before, edit.label());
        }
        return refusal;
    }

    /**
     * Makes an edit while a person is still typing: one step of the history with all that came with the same key just
     * before. Nothing is said.
     *
     * @param key of all edits of what is being typed
     * @return why it was refused, the drawing being as before; empty if it was made
     */
    public Optional<Message> applyTyped(Edit edit, Object key) {
        mine();
        Drawing before = history.current();
        Optional<Message> refusal = refusal(() -> history.apply(Edit.merging(edit.label(), key, edit::applyTo)));
        if (refusal.isEmpty()) {
            settle(before, state.notice());
        }
        return refusal;
    }

    /** As {@link #apply(Edit)}; what the edit brought in is selected afterwards. */
    public Optional<Message> apply(Edit edit, Set<String> select) {
        Optional<Message> refusal = apply(edit);
        if (refusal.isEmpty()) {
            select(select);
        }
        return refusal;
    }

    /**
     * Shows what an edit would make of the drawing at work, without making it. An edit that would be refused leaves the
     * last preview.
     *
     * @return why it would be refused
     */
    public Optional<Message> preview(Edit edit) {
        mine();
        Drawing[] made = {history.current()};
        Optional<Message> refusal = refusal(() -> made[0] = edit.applyTo(history.current()));
        if (refusal.isEmpty()) {
            become(state.withPreview(made[0]));
        }
        return refusal;
    }

    /** Shows the drawing at work again. */
    public void endPreview() {
        mine();
        if (state.preview() != null) {
            become(state.withPreview(null));
        }
    }

    private static Optional<Message> refusal(Runnable attempt) {
        try {
            attempt.run();
            return Optional.empty();
        } catch (Edit.Refusal e) {
            return Optional.of(e.reason());
        } catch (Checks.OutOfRange e) {
            return Optional.of(e.reason());
        }
    }

    /** Ends the merging of edits into one step: at mouse release, at focus loss. */
    public void seal() {
        mine();
        history.seal();
    }

    /** Takes the last step back. */
    public void undo() {
        mine();
        Drawing before = history.current();
        history.undo();
        settle(before, null);
    }

    /** Makes the step that was taken back last again. */
    public void redo() {
        mine();
        Drawing before = history.current();
        history.redo();
        settle(before, null);
    }

    /** Selects these and nothing else; ids that the drawing hasn't are left out. */
    public void select(Set<String> ids) {
        mine();
        Set<String> there = there(state.drawing(), ids);
        if (!there.equals(state.selection())) {
            become(state.withSelection(there).withNotice(null));
        }
    }

    /** Shows another sheet; nothing is selected then. An unknown id is ignored. */
    public void showSheet(String id) {
        mine();
        if (state.drawing().sheets().contains(id) && !id.equals(state.sheet())) {
            become(state.withSelection(Set.of()).withView(id, state.condition()).withNotice(null));
        }
    }

    /** Shows another operating condition, or {@link Results#GOVERNING}. An unknown id is ignored. */
    public void showCondition(String id) {
        mine();
        boolean known =
                id.equals(Results.GOVERNING) || state.drawing().conditions().contains(id);
        if (known && !id.equals(state.condition())) {
            become(state.withView(state.sheet(), id).withNotice(null));
        }
    }

    /** Tells the person something, once more if it is what was told last; or takes the last notice away. */
    public void say(@Nullable Message notice) {
        mine();
        if (!Same.object(notice, state.notice())) {
            become(state.withNotice(notice));
        }
    }

    /** Puts another drawing on the desk, with a history of its own. */
    public void open(Drawing drawing, @Nullable Path file) {
        mine();
        history = new History(drawing);
        become(fresh(drawing, file));
        recalculator.request(drawing);
    }

    /** Puts another drawing on the desk that stands in no file as it is: a recovered one, a copy. */
    public void openUnsaved(Drawing drawing, @Nullable Path file) {
        mine();
        history = new History(drawing);
        history.markUnsaved();
        become(fresh(drawing, file).withFile(file, history.dirty()));
        recalculator.request(drawing);
    }

    /** Remembers that the file holds something else than the present drawing: somebody else has written it. */
    public void unsaved() {
        mine();
        history.markUnsaved();
        become(state.withFile(state.file(), history.dirty()));
    }

    /** Remembers that the present drawing stands in this file. */
    public void saved(Path file) {
        saved(file, Message.of("desk.saved", String.valueOf(file.getFileName())));
    }

    /**
     * Remembers that the present drawing stands in this file.
     *
     * @param notice what the person is told
     */
    public void saved(Path file, @Nullable Message notice) {
        mine();
        history.markSaved();
        become(state.withFile(file, history.dirty()).withNotice(notice));
    }

    /** Asks for the review of the present drawing again. */
    public void review() {
        mine();
        recalculator.request(history.current());
    }

    /** Ends the work: what is being calculated is given up. */
    public void close() {
        mine();
        recalculator.cancel();
        listeners.clear();
    }

    private void take(Review review) {
        become(state.withReview(review));
    }

    /** After the history has moved: the state follows, and a review is asked for if the drawing is another. */
    @SuppressWarnings("ReferenceEquality") // another drawing is another object
    private void settle(Drawing before, @Nullable Message notice) {
        Drawing now = history.current();
        String sheet = now.sheets().contains(state.sheet()) ? state.sheet() : firstSheet(now);
        String condition = now.conditions().contains(state.condition()) ? state.condition() : Results.GOVERNING;
        SessionState next = new SessionState(
                now,
                null,
                there(now, state.selection()),
                sheet,
                condition,
                state.review(),
                state.file(),
                history.dirty(),
                history.undoLabel().orElse(null),
                history.redoLabel().orElse(null),
                notice);
        become(next, () -> {
            if (now != before) {
                asking.accept(state);
                recalculator.request(now); // it is studied while the window is told
            }
        });
    }

    private static Set<String> there(Drawing d, Set<String> ids) {
        Set<String> there = new LinkedHashSet<>(ids);
        there.removeIf(id -> !d.hasItem(id) && !d.notes().contains(id));
        return there;
    }

    private void become(SessionState next) {
        become(next, () -> {});
    }

    /**
     * A listener may call the session: what it brings about is told after all listeners have heard the first change.
     *
     * @param begun done when the next state holds, before anybody is told of it
     */
    private void become(SessionState next, Runnable begun) {
        untold.add(new Change(state, next));
        state = next;
        begun.run();
        if (telling) {
            return;
        }
        telling = true;
        RuntimeException first = null;
        for (Change c = untold.poll(); c != null; c = untold.poll()) {
            for (SessionListener l : List.copyOf(listeners)) {
                try {
                    l.changed(c.before(), c.after());
                } catch (RuntimeException e) {
                    first = first == null ? e : first; // the others must hear of the change nevertheless
                }
            }
        }
        telling = false;
        if (first != null) {
            throw first;
        }
    }

    private void mine() {
        if (!ui.isCurrent()) {
            throw new IllegalStateException("a session may be used by its own thread only");
        }
    }
}
