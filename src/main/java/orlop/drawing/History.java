package orlop.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The drawing at work and the steps that led to it. Not safe for several threads: the desk uses it from one.
 *
 * <p>Undo puts the old drawing back, the very same object. Edits in a row with equal merge keys are one step until
 * {@link #seal()}, which the desk calls at mouse release and at save. An edit that changes nothing leaves no step, nor
 * do edits in a row that end where they began.
 */
public final class History {
    private record Step(Message label, Object mergeKey, Drawing before, Drawing after) {}

    private final List<Step> steps = new ArrayList<>();
    private int done;
    private boolean sealed = true;
    private Drawing current;
    private @Nullable Drawing saved;

    /** A history that starts, saved, with this drawing. */
    public History(Drawing start) {
        this.current = start;
        this.saved = start;
    }

    public Drawing current() {
        return current;
    }

    /**
     * Makes the edit.
     *
     * @return whether the drawing has changed
     * @throws Edit.Refusal if the edit refuses; the history is as before
     */
    @SuppressWarnings("ReferenceEquality") // the same object is the quick case; equals decides the rest
    public boolean apply(Edit edit) {
        Drawing before = current;
        Drawing after = edit.applyTo(before);
        if (after == before || after.equals(before)) {
            return false;
        }
        while (steps.size() > done) {
            steps.remove(steps.size() - 1);
        }
        Step last = sealed || steps.isEmpty() ? null : steps.get(done - 1);
        if (last != null && last.mergeKey().equals(edit.mergeKey())) {
            if (after.equals(last.before())) {
                undo();
                steps.remove(steps.size() - 1);
                return true;
            }
            steps.set(done - 1, new Step(last.label(), last.mergeKey(), last.before(), after));
        } else {
            steps.add(new Step(edit.label(), edit.mergeKey(), before, after));
            done++;
        }
        sealed = false;
        current = after;
        return true;
    }

    /** Ends the merging of edits: the next one starts a step of its own. */
    public void seal() {
        sealed = true;
    }

    /** What undo would take back. */
    public Optional<Message> undoLabel() {
        return done == 0 ? Optional.empty() : Optional.of(steps.get(done - 1).label());
    }

    /** What redo would make again. */
    public Optional<Message> redoLabel() {
        return done == steps.size()
                ? Optional.empty()
                : Optional.of(steps.get(done).label());
    }

    /** Takes the last step back; does nothing if there is none. */
    public void undo() {
        if (done > 0) {
            done--;
            current = steps.get(done).before();
            sealed = true;
        }
    }

    /** Makes the step that was taken back last again; does nothing if there is none. */
    public void redo() {
        if (done < steps.size()) {
            current = steps.get(done).after();
            done++;
            sealed = true;
        }
    }

    /** Remembers that the present drawing is the one in the file. */
    public void markSaved() {
        saved = current;
        sealed = true;
    }

    /** The file holds another drawing than any of these, or there is none. */
    public void markUnsaved() {
        saved = null;
    }

    /** Whether the present drawing differs from the one in the file; undo back to it is clean again. */
    @SuppressWarnings("ReferenceEquality") // undo puts the very same object back
    public boolean dirty() {
        return current != saved;
    }
}
