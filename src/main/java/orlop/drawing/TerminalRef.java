package orlop.drawing;

import java.util.Objects;

/**
 * A terminal of a component, written {@code COMPONENT.n} ({@code GB1.1}, {@code 24MAIN.a}).
 *
 * @param component the component's id
 * @param terminal the terminal's name: for most kinds a number, for a busbar any name
 */
public record TerminalRef(String component, String terminal) {
    public TerminalRef {
        Checks.id(component, "component");
        Checks.id(terminal, "terminal");
        if (terminal.indexOf('.') >= 0) {
            throw new IllegalArgumentException("a terminal's name has no dot: " + terminal);
        }
    }

    /**
     * Reads {@code COMPONENT.n}, parted at the last dot.
     *
     * @throws Checks.OutOfRange if there is no dot, or nothing before or behind it
     */
    public static TerminalRef parse(String text, String field) {
        int dot = Objects.requireNonNull(text, "text").lastIndexOf('.');
        if (dot <= 0 || dot == text.length() - 1) {
            throw new Checks.OutOfRange(
                    field,
                    Message.of("drawing.range.terminal", field, Message.quote(text)),
                    field + " is no terminal: '" + text + "'");
        }
        Checks.id(text.substring(0, dot), field);
        Checks.id(text.substring(dot + 1), field);
        return new TerminalRef(text.substring(0, dot), text.substring(dot + 1));
    }

    /** As it stands in the file. */
    @Override
    public String toString() {
        return component + "." + terminal;
    }
}
