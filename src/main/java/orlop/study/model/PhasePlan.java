package orlop.study.model;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Conductors;
import orlop.drawing.Consumer;
import orlop.drawing.Conversion;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Feeding;
import orlop.network.Network;

/**
 * Which conductors each cable, load and converter of a system with unequal phases has.
 *
 * <p>A cable of two conductors takes the phase of what lies behind it; a load or converter that names none takes what
 * reaches it. Read off the network with every switch closed, so that a cable never changes its phase.
 */
final class PhasePlan {
    private final Plan plan;
    private final Notes notes;
    private final Set<String> unequal;
    private final Network reach;
    private final Feeding feeding;
    private final int[] wanted; // by pin: what the loads behind it name
    private final int[] there; // by pin: what reaches it
    private final Map<String, Integer> ofCable = new HashMap<>();
    private final Map<String, Integer> ofComponent = new HashMap<>();

    PhasePlan(Plan plan, Set<String> unequal, Notes notes) {
        this.plan = plan;
        this.notes = notes;
        this.unequal = unequal;
        Drawing drawing = plan.drawing();
        reach = Network.reach(drawing);
        feeding = reach.feeding();
        wanted = new int[reach.pinCount()];
        there = new int[reach.pinCount()];
        gatherWanted();
        spread();
        for (Connection c : reach.connections()) {
            if (c.cable() != null && isUnequal(c.a()) && !ofCable.containsKey(c.item())) {
                ofCable.put(c.item(), besideTree(c));
            }
        }
        reach.attachments().forEach(this::attachment);
    }

    private boolean isUnequal(int pin) {
        return pin >= 0 && unequal.contains(reach.systemOf(pin));
    }

    private void gatherWanted() {
        for (Attachment t : reach.attachments()) {
            int pin = t.component().kind() == Kind.INVERTER_CHARGER ? reach.pin(t.component(), 3) : t.pin();
            wanted[pin] |= isUnequal(pin) ? named(t.component()) : 0;
        }
        int[] order = feeding.order();
        for (int k = order.length - 1; k >= 0; k--) {
            int pin = order[k];
            int up = feeding.before(pin);
            if (up >= 0) {
                wanted[up] |= wanted[pin];
            } else if (transferInput(pin) >= 0) {
                wanted[transferInput(pin)] |= wanted[pin];
            }
        }
    }

    /** The phases that a load or a converter names; 0 where it takes what reaches it. */
    private static int named(Component c) {
        if (c.particulars() instanceof Conversion k) {
            return Wires.of(k.phase());
        }
        return c.particulars() instanceof Consumer load ? Wires.of(load.phase()) : 0;
    }

    /** The input that an inverter/charger passes through to this output pin; −1 for any other pin. */
    private int transferInput(int pin) {
        Component c = reach.componentOf(pin);
        return c.kind() == Kind.INVERTER_CHARGER && reach.pin(c, 2) == pin ? reach.pin(c, 3) : -1;
    }

    private void spread() {
        for (int pin : feeding.order()) {
            if (!isUnequal(pin)) {
                continue;
            }
            int via = feeding.via(pin);
            if (via < 0) {
                there[pin] = atStart(pin);
                continue;
            }
            Connection c = reach.connections().get(via);
            int up = there[c.other(pin)];
            if (c.cable() != null) {
                int mask = onTree(c.theCable(), pin, up);
                ofCable.put(c.item(), mask);
                up &= mask;
            }
            there[pin] = up;
        }
    }

    private int atStart(int pin) {
        int input = transferInput(pin);
        return input >= 0 && there[input] != 0 ? there[input] : whole(pin);
    }

    private int whole(int pin) {
        return Wires.of(system(pin));
    }

    private ElectricalSystem system(int pin) {
        return plan.system(reach.systemOf(pin));
    }

    private static Conductors conductors(Cable w, ElectricalSystem system) {
        return w.conductors() != null
                ? w.conductors()
                : system.nature() == Nature.AC3N ? Conductors.L3_N_PE : Conductors.L3_PE;
    }

    /** What a cable has that brings {@code up} to the pin, or part of it. */
    private int onTree(Cable w, int pin, int up) {
        Conductors c = conductors(w, system(pin));
        int behind = wanted[pin];
        if (c == Conductors.SINGLE && !Wires.isCircuit(behind)) {
            return whole(pin); // one core for each conductor
        }
        return Wires.isPair(c) || c == Conductors.SINGLE ? pair(w, behind, up) : fixed(c, pin);
    }

    private int fixed(Conductors c, int pin) {
        return switch (c) {
            case L3, L3_PE -> Wires.LINES;
            case PE -> 0;
            default -> whole(pin);
        };
    }

    private int pair(Cable w, int behind, int up) {
        if (Wires.isCircuit(behind)) {
            return behind;
        }
        if (behind != 0) {
            notes.notCalculated(w.id(), "study.not-calculated.phases-mixed", w.id(), Wires.words(behind));
            return 0;
        }
        if (Wires.isCircuit(up) || up == 0) {
            return up;
        }
        int first = Wires.has(up, Wires.N) ? 0b1001 : 0b0011;
        notes.assumed(w.id(), "study.assumed.phase", w.id(), Wires.words(first));
        return first;
    }

    /** A cable that closes a ring, a drawn neutral, or one that nothing feeds. */
    private int besideTree(Connection c) {
        Cable w = c.theCable();
        if (reach.isReturn(reach.pointOf(c.a()))) {
            return Wires.NEUTRAL;
        }
        Conductors conductors = conductors(w, system(c.a()));
        int a = there[c.a()];
        int b = there[c.b()];
        if (!Wires.isPair(conductors)) {
            return conductors == Conductors.SINGLE ? whole(c.a()) : fixed(conductors, c.a());
        }
        if (Wires.isCircuit(a) && Wires.isCircuit(b) && a != b) {
            notes.notCalculated(w.id(), "study.not-calculated.phases-mixed", w.id(), Wires.words(a | b));
            return 0;
        }
        if (Wires.isCircuit(a) || Wires.isCircuit(b)) {
            return Wires.isCircuit(a) ? a : b;
        }
        return pair(w, wanted[c.a()] | wanted[c.b()], a & b);
    }

    private void attachment(Attachment t) {
        Component c = t.component();
        int input = c.kind() == Kind.INVERTER_CHARGER ? reach.pin(c, 3) : t.pin();
        if (c.particulars() instanceof Conversion && isUnequal(input) && named(c) != 0) {
            boolean reached = (named(c) & ~there[input]) == 0;
            if (!reached && there[input] != 0) {
                notes.notCalculated(
                        c.id(), "study.not-calculated.phase-missing", c.id(), Wires.words(named(c) & ~there[input]));
            }
            there[input] = reached ? named(c) : 0;
        }
        if (isUnequal(t.pin()) && !t.isSource()) {
            int named = named(c);
            boolean drawnReturn = t.returnPin() >= 0;
            int here = there[t.pin()] | (drawnReturn ? Wires.NEUTRAL : 0);
            boolean load = c.particulars() instanceof Consumer; // a converter's was said above
            if (load && feeding.feeds(t.pin()) && (named & ~here) != 0 && here != 0) {
                notes.notCalculated(c.id(), "study.not-calculated.phase-missing", c.id(), Wires.words(named & ~here));
            }
            ofComponent.put(c.id(), named == 0 ? here : (named & ~here) != 0 ? 0 : named);
        }
    }

    /** The conductors of a cable. */
    int cable(String id) {
        return ofCable.getOrDefault(id, 0);
    }

    /** The conductors that a load or the input of a converter hangs on. */
    int component(String id) {
        return ofComponent.getOrDefault(id, 0);
    }

    /** What reaches a pin. */
    int at(int pin) {
        return there[pin];
    }
}
