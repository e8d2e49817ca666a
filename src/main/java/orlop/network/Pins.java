package orlop.network;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.TerminalRef;

/**
 * Numbers for the terminals of a drawing. Terminals of a bar, board, junction or hull share one number: they are one
 * piece of metal.
 */
final class Pins {
    /** No kind has more than seven terminals that are numbered: a changeover of six ways. */
    private static final String[] NAMES = {"1", "2", "3", "4", "5", "6", "7", "8"};

    private final Component[] components;
    private final int[] firstPin;
    private final int[] componentOfPin;
    private final boolean[] onePiece; // by component
    private final String[] systemOfPin;
    private final NameTable index;

    Pins(Drawing drawing) {
        components = new Component[drawing.components().size()];
        int n = 0;
        for (Component c : drawing.components().values()) {
            components[n++] = c;
        }
        firstPin = new int[components.length + 1];
        onePiece = new boolean[components.length];
        String[] ids = new String[components.length];
        for (int i = 0; i < components.length; i++) {
            ids[i] = components[i].id();
            onePiece[i] = components[i].kind().isOnePiece();
            firstPin[i + 1] = firstPin[i] + pinCount(components[i]);
        }
        index = new NameTable(ids);
        componentOfPin = new int[firstPin[components.length]];
        for (int i = 0; i < components.length; i++) {
            Arrays.fill(componentOfPin, firstPin[i], firstPin[i + 1], i);
        }
        systemOfPin = new String[componentOfPin.length];
        for (int pin = 0; pin < systemOfPin.length; pin++) {
            Component c = components[componentOfPin[pin]];
            String terminal = terminalOf(pin);
            boolean one = c.systems().size() == 1;
            systemOfPin[pin] = one ? c.systems().get(0) : c.systemOf(terminal == null ? "1" : terminal);
        }
    }

    private static int pinCount(Component c) {
        return c.kind().isOnePiece() ? 1 : c.particulars().terminals().size();
    }

    int count() {
        return componentOfPin.length;
    }

    /** The pin of a terminal, or −1 if the drawing has no such terminal. */
    int of(TerminalRef t) {
        int c = index.of(t.component());
        if (c < 0) {
            return -1;
        }
        if (onePiece[c]) {
            return firstPin[c];
        }
        int n = number(t.terminal());
        return n >= 1 && n <= firstPin[c + 1] - firstPin[c] ? firstPin[c] + n - 1 : -1;
    }

    /** The pin of a component's terminal 1, 2 …; terminal 1 stands for a bar. */
    int of(Component c, int terminal) {
        int i = numberOf(c);
        return firstPin[i] + (onePiece[i] ? 0 : terminal - 1);
    }

    /** Number of a component of the drawing, in its order. */
    int numberOf(Component c) {
        int i = index.of(c.id());
        if (i < 0) {
            throw new IllegalArgumentException("no such component: " + c.id());
        }
        return i;
    }

    /** As {@link #of(Component, int)}, of the component of this number. */
    int at(int component, int terminal) {
        return firstPin[component] + (onePiece[component] ? 0 : terminal - 1);
    }

    int componentCount() {
        return components.length;
    }

    Component component(int number) {
        return components[number];
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
        return onePiece[c] ? null : NAMES[Math.min(pin - firstPin[c], NAMES.length - 1)];
    }

    String systemOf(int pin) {
        return systemOfPin[pin];
    }

    /** Whether all terminals of the pin's component are one piece of metal. */
    boolean isBar(int pin) {
        return onePiece[componentOfPin[pin]];
    }
}
