package orlop.network;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.TerminalRef;

/**
 * Numbers for the terminals of a drawing. Terminals of a bar, board, junction or hull share one number: they are one
 * piece of metal.
 */
final class Pins {
    private final Component[] components;
    private final int[] firstPin;
    private final int[] componentOfPin;
    private final Map<String, Integer> index;

    Pins(Drawing drawing) {
        components = drawing.components().stream().toArray(Component[]::new);
        firstPin = new int[components.length + 1];
        index = new HashMap<>(components.length * 2);
        for (int i = 0; i < components.length; i++) {
            index.put(components[i].id(), i);
            firstPin[i + 1] = firstPin[i] + pinCount(components[i]);
        }
        componentOfPin = new int[firstPin[components.length]];
        for (int i = 0; i < components.length; i++) {
            java.util.Arrays.fill(componentOfPin, firstPin[i], firstPin[i + 1], i);
        }
    }

    private static int pinCount(Component c) {
        return isOnePiece(c) ? 1 : c.particulars().terminals().size();
    }

    /** Whether all its terminals are one piece of metal. */
    static boolean isOnePiece(Component c) {
        return c.kind().terminals() == Kind.Terminals.ANY;
    }

    int count() {
        return componentOfPin.length;
    }

    /** The pin of a terminal, or −1 if the drawing has no such terminal. */
    int of(TerminalRef t) {
        Integer c = index.get(t.component());
        if (c == null) {
            return -1;
        }
        if (isOnePiece(components[c])) {
            return firstPin[c];
        }
        int n = number(t.terminal());
        return n >= 1 && n <= firstPin[c + 1] - firstPin[c] ? firstPin[c] + n - 1 : -1;
    }

    /** The pin of a component's terminal 1, 2 …; terminal 1 stands for a bar. */
    int of(Component c, int terminal) {
        Integer i = index.get(c.id());
        if (i == null) {
            throw new IllegalArgumentException("no such component: " + c.id());
        }
        return firstPin[i] + (isOnePiece(c) ? 0 : terminal - 1);
    }

    private static int number(String terminal) {
        int n = 0;
        for (int i = 0; i < terminal.length(); i++) {
            int digit = terminal.charAt(i) - '0';
            if (digit < 0 || digit > 9 || n > 1_000) {
                return -1;
            }
            n = 10 * n + digit;
        }
        return n;
    }

    Component componentOf(int pin) {
        return components[componentOfPin[pin]];
    }

    int positionOf(int pin) {
        return componentOfPin[pin];
    }

    /** The terminal's name; null for a bar, whose pin has many names. */
    @Nullable
    String terminalOf(int pin) {
        int c = componentOfPin[pin];
        return isOnePiece(components[c]) ? null : Integer.toString(pin - firstPin[c] + 1);
    }

    String systemOf(int pin) {
        String terminal = terminalOf(pin);
        return componentOf(pin).systemOf(terminal == null ? "1" : terminal);
    }
}
