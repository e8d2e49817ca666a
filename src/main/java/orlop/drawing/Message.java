package orlop.drawing;

import java.util.List;
import java.util.Objects;

/**
 * What the program has to say, free of any language: a key and its typed arguments.
 *
 * <p>An argument is a {@link String} (an id or what a person typed), an {@link Integer}, a {@link Quantity}, a
 * {@link Message} or a {@link List} of these. {@link Words} makes the sentence.
 *
 * @param key starts with the room's name: {@code findings.missing-fuse.title}
 * @param arguments in the order in which the text names them, {0} first
 */
public record Message(String key, List<Object> arguments) {
    public Message {
        Objects.requireNonNull(key, "key");
        arguments = List.copyOf(arguments);
        for (Object a : arguments) {
            if (!(a instanceof String
                    || a instanceof Integer
                    || a instanceof Quantity
                    || a instanceof Message
                    || a instanceof List)) {
                throw new IllegalArgumentException(
                        "argument of message " + key + " has no known type: " + a.getClass());
            }
        }
    }

    /** A message of this key and these arguments. */
    public static Message of(String key, Object... arguments) {
        return new Message(key, List.of(arguments));
    }

    /** What came from outside, cut to a length that leaves a message on one line, control characters made visible. */
    public static String quote(String fromOutside) {
        StringBuilder s = new StringBuilder();
        for (int i = 0; i < fromOutside.length() && s.length() < 60; i++) {
            char c = fromOutside.charAt(i);
            s.append(Character.isISOControl(c) || Character.isSurrogate(c) ? '�' : c);
        }
        return fromOutside.length() > 60 ? s + "…" : s.toString();
    }
}
