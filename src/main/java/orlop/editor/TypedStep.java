package orlop.editor;

import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import orlop.desk.Session;
import orlop.drawing.Edit;
import orlop.drawing.Message;

/**
 * What the drawing follows while a value is typed: one step of the history from the first figure to Enter, none if it is
 * put back.
 */
final class TypedStep {
    private final Session session;
    private final Function<@Nullable Object, Edit> edit;
    private @Nullable Object key;
    private @Nullable Object before;

    /** @param edit gives the drawing a value */
    TypedStep(Session session, Function<@Nullable Object, Edit> edit) {
        this.session = session;
        this.edit = edit;
    }

    /** Whether the drawing has followed something that is not taken yet. */
    boolean begun() {
        return key != null;
    }

    /**
     * The drawing follows.
     *
     * @param now the value that it has
     * @param value that is typed
     * @return why it doesn't
     */
    Optional<Message> follow(@Nullable Object now, @Nullable Object value) {
        boolean first = key == null;
        Object step = key == null ? new Object() : key;
        if (first) {
            key = step; // the session tells of the edit before it returns
            before = now;
        }
        Optional<Message> refusal = session.applyTyped(edit.apply(value), step);
        if (first && refusal.isPresent()) {
            key = null;
        }
        return refusal;
    }

    /** What the drawing followed stands. */
    void taken() {
        if (key != null) {
            key = null;
            session.seal();
        }
    }

    /** The drawing is as it was before. */
    void putBack() {
        Object step = key;
        if (step != null) {
            key = null;
            session.applyTyped(edit.apply(before), step);
            session.seal();
        }
    }
}
