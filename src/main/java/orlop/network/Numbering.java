package orlop.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.RefitStatus;

/**
 * What the networks of all conditions of a drawing have in common: numbers for components, cables and terminals, the
 * connections that no switch touches, the names of terminals. Made once for a drawing; immutable.
 */
public final class Numbering {
    private final Drawing drawing;
    private final Pins pins;
    private final int cables;
    private final List<Connection> fixed = new ArrayList<>();
    private final int[] cableOfFixed;
    private final boolean[] unknownLength; // by cable, as the next two
    private final int[] fromPin;
    private final int[] toPin;
    private boolean anyUnknown;
    private final boolean[] used;
    private final TerminalNames names;
    private final Cable[] inOrder;

    public Numbering(Drawing drawing) {
        this.drawing = drawing;
        pins = new Pins(drawing);
        used = new boolean[pins.count()];
        inOrder = new Cable[drawing.cables().size()];
        int[] numbers = new int[inOrder.length];
        unknownLength = new boolean[numbers.length];
        fromPin = new int[numbers.length];
        toPin = new int[numbers.length];
        int n = 0;
        for (Cable w : drawing.cables().values()) {
            inOrder[n] = w;
            int before = fixed.size();
            fromPin[n] = pins.of(w.from());
            toPin[n] = pins.of(w.to());
            cable(w, fromPin[n], toPin[n]);
            if (fixed.size() > before) {
                numbers[before] = n;
            }
            unknownLength[n] = Resistances.isOfUnknownLength(drawing, w);
            anyUnknown |= unknownLength[n];
            n++;
        }
        cables = n;
        cableOfFixed = Arrays.copyOf(numbers, fixed.size());
        for (Link l : drawing.links().values()) {
            int a = pins.of(l.from());
            int b = pins.of(l.to());
            if (present(a) && present(b)) {
                fixed.add(
                        new Connection(Connection.Kind.LINK, l.id(), a, b, l.lengthM(), 0, true, true, null, l, null));
                used[a] = true;
                used[b] = true;
            }
        }
        names = new TerminalNames(drawing, inOrder, pins, fromPin, toPin);
    }

    private void cable(Cable w, int a, int b) {
        if (w.refit() == RefitStatus.TO_BE_REMOVED || !present(a) || !present(b)) {
            return;
        }
        used[a] = true;
        used[b] = true;
        double length = Objects.requireNonNullElse(Resistances.lengthM(drawing, w), 0.0);
        boolean contracted = !Resistances.hasImpedance(drawing, w);
        fixed.add(new Connection(Connection.Kind.CABLE, w.id(), a, b, length, 0, true, contracted, w, null, null));
    }

    /** Whether there is such a pin and its component is not to be removed. */
    boolean present(int pin) {
        return pin >= 0 && pins.componentOf(pin).refit() != RefitStatus.TO_BE_REMOVED;
    }

    Drawing drawing() {
        return drawing;
    }

    Pins pins() {
        return pins;
    }

    /** The cables and links, first in every network's list of connections. */
    List<Connection> fixed() {
        return fixed;
    }

    /** A copy of which pins a cable or a link ends at. */
    boolean[] used() {
        return used.clone();
    }

    /** Names of the terminals of a pin: one, or all under which cables and links use a bar. */
    List<String> terminals(int pin) {
        return names.of(pin);
    }

    /** Names under which cables and links use the terminals of a bar, in that order. */
    public List<String> taps(int pin) {
        return names.taps(pin);
    }

    /** Number of the cable that a connection of any network is; −1 for what is no cable. */
    int cableOf(int connection) {
        return connection < cableOfFixed.length ? cableOfFixed[connection] : -1;
    }

    /** Whether a connection is a cable whose length, and so whose resistance, is not known. */
    public boolean isOfUnknownLength(int connection) {
        return anyUnknown && cableOf(connection) >= 0 && unknownLength[cableOf(connection)];
    }

    /** Whether there is any such cable. */
    public boolean hasUnknownLength() {
        return anyUnknown;
    }

    /** The cable of this number, in the order of the drawing. */
    public Cable cable(int number) {
        return inOrder[number];
    }

    /** Number of a component of the drawing, in its order. */
    public int numberOf(Component c) {
        return pins.numberOf(c);
    }

    /** How many cables the drawing has. */
    public int cableCount() {
        return cables;
    }

    /** The pin at the {@code from} end of the cable of this number; −1 if the drawing has no such terminal. */
    public int fromPin(int cable) {
        return fromPin[cable];
    }

    /** The pin at its {@code to} end, likewise. */
    public int toPin(int cable) {
        return toPin[cable];
    }

    /** How many components the drawing has. */
    public int componentCount() {
        return pins.componentCount();
    }

    /** How many pins there are; they are numbered from 0. */
    public int pinCount() {
        return pins.count();
    }

    /** Number of the component that a pin belongs to, in the order of the drawing. */
    public int componentOf(int pin) {
        return pins.positionOf(pin);
    }

    /** The component of this number. */
    public Component component(int number) {
        return pins.component(number);
    }

    /** The pin of terminal 1, 2 … of the component of this number; of a bar, its only one. */
    public int pin(int component, int terminal) {
        return pins.at(component, terminal);
    }

    /** The id of the system that a pin belongs to. */
    public String systemOf(int pin) {
        return pins.systemOf(pin);
    }
}
