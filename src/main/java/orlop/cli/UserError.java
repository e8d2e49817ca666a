package orlop.cli;

/** Something that the person at the keyboard can cure: becomes one line on the error stream, and exit code 2. */
final class UserError extends Exception {
    private static final long serialVersionUID = 1;

    /** The line is the text of {@code key} with its arguments. */
    UserError(String key, Object... arguments) {
        super(Words.text(key, arguments));
    }
}
