package orlop.drawing;

import java.util.function.UnaryOperator;

/**
 * One change that a person makes: a function from drawing to drawing, with a label.
 *
 * <p>There is no inverse: undo keeps the old drawing. An edit holds ids, never live lists of selected items.
 */
public interface Edit {
    /** What was done, for the menu: "Move GB1". */
    Message label();

    /**
     * The changed drawing.
     *
     * @throws Refusal if the change cannot be made; nothing has changed then
     */
    Drawing applyTo(Drawing before);

    /** Edits in a row with equal keys merge into one step of the history. The default merges with nothing. */
    default Object mergeKey() {
        return new Object();
    }

    /** An edit of this label and function. A value that a record refuses is a refusal. */
    static Edit of(Message label, UnaryOperator<Drawing> change) {
        return new Edit() {
            @Override
            public Message label() {
                return label;
            }

            @Override
            public Drawing applyTo(Drawing before) {
                return apply(change, before);
            }
        };
    }

    /** As {@link #of}, merging with edits of the same key. */
    static Edit merging(Message label, Object key, UnaryOperator<Drawing> change) {
        return new Edit() {
            @Override
            public Message label() {
                return label;
            }

            @Override
            public Drawing applyTo(Drawing before) {
                return apply(change, before);
            }

            @Override
            public Object mergeKey() {
                return key;
            }
        };
    }

    private static Drawing apply(UnaryOperator<Drawing> change, Drawing before) {
        try {
            return change.apply(before);
        } catch (Checks.OutOfRange e) {
            throw new Refusal(e.reason());
        }
    }

    /** Why a change cannot be made. */
    final class Refusal extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Message reason;

        public Refusal(Message reason) {
            super(reason.key());
            this.reason = reason;
        }

        /** What to tell the person. */
        public Message reason() {
            return reason;
        }
    }
}
