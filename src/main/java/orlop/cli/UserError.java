package orlop.cli;

import orlop.drawing.Message;
import orlop.drawing.Words;
import orlop.store.FileProblem;

/** Something that the person at the keyboard can cure: becomes one line on the error stream, and exit code 2. */
final class UserError extends Exception {
    private static final long serialVersionUID = 1;

    /** The line is the text of {@code key} with its arguments, each a type that {@link Message} takes. */
    UserError(String key, Object... arguments) {
        super(Words.english().text(Message.of(key, arguments)));
    }

    /** The line is the problem's own. */
    UserError(FileProblem problem) {
        super(problem.oneLine(Words.english()));
    }
}
