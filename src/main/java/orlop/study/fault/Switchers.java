package orlop.study.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import orlop.study.flow.Circuit;
import orlop.study.flow.Part;

/**
 * The limited sources and diodes of an island. Those alike that stand side by side without a slope are one: nothing says
 * how they share their current, so each bears its share of the limits.
 */
final class Switchers {
    /** How one of them stands. */
    enum State {
        /** Gives or lets pass nothing. */
        OFF,
        /** Holds its voltage, behind its resistance. */
        ON,
        /** Gives all it can. */
        LIMIT
    }

    private static final class Group {
        private final boolean diode;
        private final int a;
        private final int b;
        private final double volts;
        private final double ohm;
        private double limitA;
        private int members;

        Group(boolean diode, int a, int b, double volts, double ohm) {
            this.diode = diode;
            this.a = a;
            this.b = b;
            this.volts = volts;
            this.ohm = ohm;
        }
    }

    private final List<Group> groups = new ArrayList<>();
    private final int[] groupOf; // by position of the part; −1 for all else

    Switchers(Circuit circuit, int[] parts, int[] localA, int[] localB, boolean withLimited) {
        groupOf = new int[parts.length];
        Arrays.fill(groupOf, -1);
        for (int i = 0; i < parts.length; i++) {
            Part p = circuit.part(parts[i]);
            if (p == Part.DIODE || (p == Part.LIMITED && (withLimited || !isLimited(circuit, parts[i])))) {
                Group g = new Group(
                        p == Part.DIODE, localA[i], localB[i], circuit.first(parts[i]), circuit.second(parts[i]));
                groupOf[i] = place(g);
                Group into = groups.get(groupOf[i]);
                into.limitA += g.diode ? Double.POSITIVE_INFINITY : circuit.third(parts[i]);
                into.members++;
            }
        }
    }

    /** Whether a part gives no more than a limit; a source that only cannot be charged is none. */
    static boolean isLimited(Circuit circuit, int part) {
        return circuit.part(part) == Part.LIMITED && circuit.third(part) < Double.POSITIVE_INFINITY;
    }

    private int place(Group g) {
        for (int k = 0; k < groups.size() && g.ohm == 0; k++) {
            Group h = groups.get(k);
            if (h.diode == g.diode && h.a == g.a && h.b == g.b && h.volts == g.volts && h.ohm == 0) {
                return k;
            }
        }
        groups.add(g);
        return groups.size() - 1;
    }

    int count() {
        return groups.size();
    }

    /** The group of a part; −1 if it does not switch. */
    int groupOf(int position) {
        return groupOf[position];
    }

    /** What one part of a group bears of the group's current. */
    double share(int position, double partLimitA) {
        Group g = groups.get(groupOf[position]);
        boolean alike = !(g.limitA > 0) || Double.isInfinite(g.limitA);
        return alike ? 1.0 / g.members : partLimitA / g.limitA;
    }

    boolean isDiode(int k) {
        return groups.get(k).diode;
    }

    /** Where the voltage counts from: a source's positive, a diode's anode. */
    int a(int k) {
        return groups.get(k).a;
    }

    int b(int k) {
        return groups.get(k).b;
    }

    /** Where its current comes out: a source's positive, a diode's cathode. */
    int out(int k) {
        return groups.get(k).diode ? groups.get(k).b : groups.get(k).a;
    }

    /** Where its current goes in. */
    int in(int k) {
        return groups.get(k).diode ? groups.get(k).a : groups.get(k).b;
    }

    /** The voltage that a source holds, that a diode drops. */
    double volts(int k) {
        return groups.get(k).volts;
    }

    /** Change of the voltage from a to b for one ampere. */
    double slopeOhm(int k) {
        return groups.get(k).diode ? groups.get(k).ohm : -groups.get(k).ohm;
    }

    double limitA(int k) {
        return groups.get(k).limitA;
    }

    State first(int k) {
        return isDiode(k) ? State.OFF : limitA(k) < Double.POSITIVE_INFINITY ? State.LIMIT : State.ON;
    }

    /**
     * The state that its voltage and current ask for.
     *
     * @param volts from a to b; NaN if one end hangs on nothing, infinite if what drives it finds no way
     * @param amps through it
     */
    State wanted(int k, State now, double volts, double amps) {
        Group g = groups.get(k);
        if (Double.isNaN(volts)) {
            return now == State.OFF ? State.ON : now;
        }
        double fine = 1e-9 * Math.max(1, Math.abs(g.volts));
        if (now == State.ON) {
            double tolerance = 1e-9 * Math.max(1, Math.abs(amps));
            boolean much = amps > g.limitA * (1 + 1e-12) + (g.limitA > 0 ? 0 : tolerance);
            return amps < -tolerance ? State.OFF : much ? State.LIMIT : State.ON;
        }
        if (g.diode) {
            return volts > g.volts + fine ? State.ON : State.OFF;
        }
        double held = now == State.LIMIT ? g.volts - g.ohm * g.limitA : g.volts;
        boolean leaves = now == State.LIMIT ? volts > held + fine : volts < held - fine;
        return leaves ? State.ON : now;
    }
}
