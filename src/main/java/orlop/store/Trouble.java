package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Checks;
import orlop.drawing.Message;

/**
 * Something in a text that is no drawing. It is thrown where it is found and gathers its path on the way out: keys and
 * indices, the outermost first. {@link DrawingFile} makes a {@link FileProblem} of it.
 */
final class Trouble extends Exception {
    static final String CURE = ".cure";

    private static final long serialVersionUID = 1L;
    /** Refusals whose texts do not say what to do. */
    private static final Set<String> WITHOUT_CURE = Set.of(
            "drawing.range.positive",
            "drawing.range.not-negative",
            "drawing.range.finite",
            "drawing.range.between",
            "drawing.range.rotation",
            "drawing.range.class",
            "drawing.range.systems");

    private final transient Message cause;
    private final transient @Nullable Message cure;
    private final transient Deque<Object> path = new ArrayDeque<>();
    private transient JsonNode tree = MissingNode.getInstance();
    private boolean atKey;
    private int line;
    private int column;

    Trouble(Message cause, @Nullable Message cure) {
        super(cause.key(), null, false, false);
        this.cause = cause;
        this.cure = cure;
    }

    /** Trouble with the texts of {@code key} and {@code key.cure}. */
    static Trouble of(String key, Object... arguments) {
        return new Trouble(Message.of(key, arguments), Message.of(key + CURE, arguments));
    }

    /** A value that a record refuses, by the name under which it stands in the file. */
    static Trouble range(Checks.OutOfRange e, String key) {
        List<Object> arguments = new ArrayList<>(e.reason().arguments());
        if (!arguments.isEmpty()) {
            arguments.set(0, key);
        }
        Message cause = new Message(e.reason().key(), arguments);
        return new Trouble(cause, WITHOUT_CURE.contains(cause.key()) ? Message.of("store.range.cure") : null);
    }

    /** This trouble, inside the value of a key or at an index. */
    Trouble within(Object step) {
        path.addFirst(step);
        return this;
    }

    /** This trouble, with the key itself rather than with its value. */
    Trouble withKey(String key) {
        path.addFirst(key);
        atKey = true;
        return this;
    }

    /** This trouble at a known place of the text. */
    Trouble at(int atLine, int atColumn) {
        line = atLine;
        column = atColumn;
        return this;
    }

    /** This trouble, in a tree or in what has been read of it. */
    Trouble in(JsonNode root) {
        tree = root;
        return this;
    }

    JsonNode tree() {
        return tree;
    }

    Message reason() {
        return cause;
    }

    @Nullable
    Message cure() {
        return cure;
    }

    List<Object> path() {
        return List.copyOf(path);
    }

    boolean atKey() {
        return atKey;
    }

    /** Line in the text, 0 if only the path is known. */
    int line() {
        return line;
    }

    int column() {
        return column;
    }
}
