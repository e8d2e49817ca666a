package orlop.store;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;
import orlop.drawing.Words;

/** Why a file could not be read or written: file, place, cause and cure. It has no stack trace: it is for persons. */
public final class FileProblem extends Exception {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final String place;
    private final transient Message cause;
    private final transient @Nullable Message cure;

    FileProblem(String file, int line, int column, String place, Message cause, @Nullable Message cure) {
        super(cause.key(), null, false, false);
        this.file = printable(file);
        this.line = line;
        this.column = column;
        this.place = printable(place);
        this.cause = cause;
        this.cure = cure;
    }

    /** A problem with the file as a whole; its texts are those of {@code key} and {@code key.cure}. */
    static FileProblem whole(String file, String key, Object... arguments) {
        return new FileProblem(file, 0, 0, "", Message.of(key, arguments), Message.of(key + Trouble.CURE, arguments));
    }

    /** The file as it was named. */
    public String file() {
        return file;
    }

    /** Line in the file, from 1; 0 if the problem is with the file as a whole. */
    public int line() {
        return line;
    }

    /** Character in that line, from 1; 0 if the problem is with the file as a whole. */
    public int column() {
        return column;
    }

    /** Where in the drawing: {@code components[3] FC2 · ratingA}; "" if the problem is with the file as a whole. */
    public String place() {
        return place;
    }

    /** What is wrong. */
    public Message reason() {
        return cause;
    }

    /** What to do; empty where the reason says that already. */
    public Optional<Message> cure() {
        return Optional.ofNullable(cure);
    }

    /** {@code FILE:LINE:COLUMN: place: cause: cure} on one line. */
    public String oneLine(Words words) {
        StringBuilder s = new StringBuilder(file);
        if (line > 0) {
            s.append(':').append(line).append(':').append(column);
        }
        if (!place.isEmpty()) {
            s.append(": ").append(place);
        }
        s.append(": ").append(printable(words.text(cause)));
        if (cure != null) {
            s.append(": ").append(printable(words.text(cure)));
        }
        return s.toString();
    }

    /** The one line in English. */
    @Override
    public String getMessage() {
        return oneLine(Words.english());
    }

    private static String printable(String s) {
        StringBuilder out = new StringBuilder(s.length());
        for (int i = 0; i < s.length(); i++) {
            char c = s.charAt(i);
            boolean breaksLine = Character.isISOControl(c) || c == '\u2028' || c == '\u2029';
            out.append(breaksLine ? '\uFFFD' : c);
        }
        return out.toString();
    }
}
