package orlop.drawing;

import org.jspecify.annotations.Nullable;

/**
 * Range checks for the compact constructors of records. Every refusal names the argument and shows the value.
 *
 * <p>A refusal is a {@link OutOfRange}: the store and the desk turn it into a message that says where and what to do.
 */
public final class Checks {
    private Checks() {}

    /** A value that a record refuses. The message is for developers; {@link #reason()} is for the person. */
    public static final class OutOfRange extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;
        private final String field;
        private final transient Message reason;

        OutOfRange(String field, Message reason, String text) {
            super(text);
            this.field = field;
            this.reason = reason;
        }

        /** The name of the particular, as it stands in the file. */
        public String field() {
            return field;
        }

        /** Why, in a message with the value and the permitted range. */
        public Message reason() {
            return reason;
        }
    }

    /** Finite and greater than zero. */
    public static double positive(double value, String field) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw refuse(field, value, "drawing.range.positive", "must be finite and > 0");
        }
        return value;
    }

    /** Finite and zero or more. */
    public static double notNegative(double value, String field) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw refuse(field, value, "drawing.range.not-negative", "must be finite and >= 0");
        }
        return value;
    }

    /** Any finite number. */
    public static double finite(double value, String field) {
        if (!Double.isFinite(value)) {
            throw refuse(field, value, "drawing.range.finite", "must be a finite number");
        }
        return value;
    }

    /** Finite and from {@code least} to {@code greatest}, both included. */
    public static double between(double value, double least, double greatest, String field) {
        if (!(value >= least && value <= greatest)) {
            throw new OutOfRange(
                    field,
                    Message.of("drawing.range.between", field, number(value), number(least), number(greatest)),
                    field + " must be from " + least + " to " + greatest + " but is " + value);
        }
        return value;
    }

    /** A share: above 0 to 1. */
    public static double share(double value, String field) {
        positive(value, field);
        return between(value, 0, 1, field);
    }

    /** As {@link #positive(double, String)}; null (not known) passes. */
    public static void positiveOrUnknown(@Nullable Double value, String field) {
        if (value != null) {
            positive(value, field);
        }
    }

    /** As {@link #notNegative(double, String)}; null (not known) passes. */
    public static void notNegativeOrUnknown(@Nullable Double value, String field) {
        if (value != null) {
            notNegative(value, field);
        }
    }

    /** As {@link #finite(double, String)}; null (not known) passes. */
    public static void finiteOrUnknown(@Nullable Double value, String field) {
        if (value != null) {
            finite(value, field);
        }
    }

    /** As {@link #between(double, double, double, String)}; null (not known) passes. */
    public static void betweenOrUnknown(@Nullable Double value, double least, double greatest, String field) {
        if (value != null) {
            between(value, least, greatest, field);
        }
    }

    /** A whole number of at least {@code least}. */
    public static int atLeast(int value, int least, String field) {
        return between(value, least, 1_000_000, field);
    }

    /** A whole number from {@code least} to {@code greatest}. */
    public static int between(int value, int least, int greatest, String field) {
        between((double) value, least, greatest, field);
        return value;
    }

    /**
     * An id of a component, cable, sheet …: 1 to 64 characters without white space, control characters or quotes. A
     * terminal is written COMPONENT.TERMINAL and parted at its last dot, so that a component's id may hold dots.
     */
    public static String id(String value, String field) {
        return id(value, 64, field);
    }

    /** As {@link #id(String, String)}, of 1 to {@code longest} characters. */
    static String id(String value, int longest, String field) {
        boolean good = !value.isEmpty() && value.length() <= longest;
        for (int i = 0; good && i < value.length(); i++) {
            char c = value.charAt(i);
            good = printable(value, i)
                    && !Character.isWhitespace(c)
                    && !Character.isSpaceChar(c)
                    && !Character.isISOControl(c)
                    && "\"'<>&\\".indexOf(c) < 0;
        }
        if (!good) {
            throw new OutOfRange(
                    field,
                    Message.of("drawing.range.id", field, Message.quote(value)),
                    field + " is no usable id: '" + value + "'");
        }
        return value;
    }

    /** Text of at most 2,000 characters without control characters other than line breaks and tabs. */
    public static String text(String value, String field) {
        boolean good = value.length() <= 2_000;
        for (int i = 0; good && i < value.length(); i++) {
            char c = value.charAt(i);
            good = printable(value, i) && (!Character.isISOControl(c) || c == '\n' || c == '\t');
        }
        if (!good) {
            throw new OutOfRange(
                    field,
                    Message.of("drawing.range.text", field),
                    field + " is longer than 2,000 characters or holds characters that cannot be printed");
        }
        return value;
    }

    /** Whether the character is one that XML can hold, control characters aside. */
    private static boolean printable(String value, int i) {
        char c = value.charAt(i);
        return c != '\uFFFE' && c != '\uFFFF' && (!Character.isSurrogate(c) || pairedSurrogate(value, i));
    }

    private static boolean pairedSurrogate(String value, int i) {
        char c = value.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 < value.length() && Character.isLowSurrogate(value.charAt(i + 1));
        }
        return i > 0 && Character.isHighSurrogate(value.charAt(i - 1));
    }

    private static OutOfRange refuse(String field, double value, String key, String rule) {
        return new OutOfRange(field, Message.of(key, field, number(value)), field + " " + rule + " but is " + value);
    }

    private static Quantity number(double value) {
        return new Quantity(value, Unit.NONE);
    }
}
