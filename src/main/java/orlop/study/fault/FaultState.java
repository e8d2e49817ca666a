package orlop.study.fault;

import java.util.Arrays;
import orlop.study.fault.Switchers.State;

/**
 * One fault at a time: which limited sources hold their voltage and which their limit, which diodes conduct, and the
 * current into the fault. One part changes state at a time, always the first that is wrong (K. G. Murty's least-index
 * rule, which comes to an end); the next fault starts from the states of the last.
 */
final class FaultState {
    /** Above this the fault counts as not limited by anything. */
    private static final double ENDLESS_A = 1e8;

    private static final double STAND_IN_OHM = 1e-9; // only to tell an endless current from a contradiction

    private final FaultNetwork net;
    private final Switchers switchers;
    private final double faultOhm;
    private final State[] state;
    private final boolean[] neverOn;
    private final boolean[] known; // by floating part: whether its voltage is determined
    private final double[] lift; // by floating part
    private final double[] amps; // by switcher
    private int place;
    private double faultA;

    FaultState(FaultNetwork net, Switchers switchers, double faultOhm) {
        this.net = net;
        this.switchers = switchers;
        this.faultOhm = faultOhm;
        state = new State[switchers.count()];
        neverOn = new boolean[state.length];
        amps = new double[state.length];
        known = new boolean[net.floatingCount() + 1];
        lift = new double[known.length];
        restart();
    }

    private void restart() {
        for (int e = 0; e < state.length; e++) {
            state[e] = switchers.first(e);
        }
    }

    /** Current into a fault at a node; NaN where nothing feeds it, infinite where nothing limits it. */
    double at(int local) {
        place = local;
        if (net.isFixed(local) && faultOhm == 0) {
            faultA = net.openV(local) > 0 ? Double.POSITIVE_INFINITY : Double.NaN;
            return faultA;
        }
        if (state.length == 0 && net.floatingCount() == 0) {
            return plain();
        }
        Arrays.fill(neverOn, false);
        boolean fresh = false;
        for (int n = 0; n < 40 + 20 * state.length; n++) {
            if (!equations(faultOhm) && !equations(Math.max(faultOhm, STAND_IN_OHM))) {
                if (fresh) {
                    faultA = Double.NaN;
                    return faultA;
                }
                fresh = true;
                restart();
            } else if (!switchOne()) {
                break;
            }
        }
        faultA = faultA > ENDLESS_A ? Double.POSITIVE_INFINITY : faultA > 0 ? faultA : Double.NaN;
        return faultA;
    }

    private boolean switchOne() {
        for (int e = 0; e < state.length; e++) {
            State want = switchers.wanted(e, state[e], across(e), amps[e]);
            if (want == state[e] || (want == State.ON && switchers.isDiode(e) && neverOn[e])) {
                continue;
            }
            State before = state[e];
            boolean over = want == State.ON && neverOn[e];
            state[e] = over ? beyond(before) : want;
            if (want == State.ON && !over && !equations(Math.max(faultOhm, STAND_IN_OHM))) {
                neverOn[e] = true;
                state[e] = switchers.isDiode(e) ? before : beyond(before);
            }
            return true;
        }
        return false;
    }

    private static State beyond(State before) {
        return before == State.OFF ? State.LIMIT : State.OFF;
    }

    /** Thevenin's theorem as it stands, where nothing switches. */
    private double plain() {
        faultA = net.openV(place) / (net.ownOhm(place) + faultOhm);
        faultA = faultA > ENDLESS_A ? Double.POSITIVE_INFINITY : faultA > 0 ? faultA : Double.NaN;
        return faultA;
    }

    /** Voltage over a switcher: NaN if an end hangs on nothing, infinite if a current has no way out there. */
    private double across(int e) {
        double va = voltage(switchers.a(e));
        double vb = voltage(switchers.b(e));
        if (switchers.isDiode(e) && Double.isNaN(va)) {
            return 0; // nothing to let pass
        }
        return Double.isInfinite(va) && Double.isInfinite(vb) ? 0 : va - vb;
    }

    // ---- the small system of equations: lifts of floating parts, currents of those that are on, the fault ------

    private boolean equations(double ohm) {
        anchor();
        int[] liftRow = new int[known.length];
        int[] onRow = new int[state.length];
        int count = 0;
        for (int f = 1; f < known.length; f++) {
            liftRow[f] = known[f] ? count++ : -1;
        }
        for (int e = 0; e < state.length; e++) {
            onRow[e] = isKnown(e) && state[e] == State.ON ? count++ : -1;
        }
        int faultRow = count++;
        double[][] m = new double[count][count + 1];
        for (int f = 1; f < known.length; f++) {
            if (known[f]) {
                balance(m[liftRow[f]], f, onRow, faultRow, count);
            }
        }
        for (int e = 0; e < state.length; e++) {
            if (onRow[e] >= 0) {
                potential(m[onRow[e]], switchers.a(e), 1, liftRow, onRow, faultRow, count);
                potential(m[onRow[e]], switchers.b(e), -1, liftRow, onRow, faultRow, count);
                m[onRow[e]][onRow[e]] -= switchers.slopeOhm(e);
                m[onRow[e]][count] += switchers.volts(e);
            }
        }
        potential(m[faultRow], place, 1, liftRow, onRow, faultRow, count);
        m[faultRow][faultRow] -= ohm;
        double[] x = new double[count];
        if (!DenseSolve.solve(m, x, count)) {
            return false;
        }
        take(x, liftRow, onRow, faultRow);
        return true;
    }

    private boolean isKnown(int e) {
        return known[net.floating(switchers.a(e))] && known[net.floating(switchers.b(e))];
    }

    /** Parts that the fault, or what is on, joins to the reference. */
    private void anchor() {
        Arrays.fill(known, false);
        known[0] = true;
        known[net.floating(place)] = true;
        boolean more = known.length > 1;
        while (more) {
            more = false;
            for (int e = 0; e < state.length; e++) {
                int a = net.floating(switchers.a(e));
                int b = net.floating(switchers.b(e));
                if (state[e] == State.ON && known[a] != known[b]) {
                    known[a] = true;
                    known[b] = true;
                    more = true;
                }
            }
        }
    }

    /** What flows into a floating part flows out of it. */
    private void balance(double[] row, int f, int[] onRow, int faultRow, int count) {
        row[count] -= net.injectedA(f);
        for (int e = 0; e < state.length; e++) {
            int sign = (net.floating(switchers.out(e)) == f ? 1 : 0) - (net.floating(switchers.in(e)) == f ? 1 : 0);
            if (onRow[e] >= 0) {
                row[onRow[e]] += sign;
            } else if (state[e] == State.LIMIT) {
                row[count] -= sign * switchers.limitA(e);
            }
        }
        row[faultRow] -= net.floating(place) == f ? 1 : 0;
    }

    /** Adds the voltage of a node to a row, what is known of it to the other side. */
    private void potential(double[] row, int local, int sign, int[] liftRow, int[] onRow, int faultRow, int count) {
        row[count] -= sign * net.openV(local);
        int f = net.floating(local);
        if (f > 0) {
            row[liftRow[f]] += sign;
        }
        for (int e = 0; e < state.length; e++) {
            if (onRow[e] >= 0) {
                row[onRow[e]] += sign * transferOhm(local, e);
            } else if (state[e] == State.LIMIT) {
                row[count] -= sign * transferOhm(local, e) * switchers.limitA(e);
            }
        }
        row[faultRow] -= sign * faultTransferOhm(local);
    }

    /** Rise of a node's voltage for one ampere out of a switcher. */
    double transferOhm(int local, int e) {
        return net.ohm(local, switchers.out(e)) - net.ohm(local, switchers.in(e));
    }

    /** The terminal's column is at hand; the fault's is not. */
    private double faultTransferOhm(int local) {
        return local == place ? net.ownOhm(place) : net.ohm(place, local);
    }

    private void take(double[] x, int[] liftRow, int[] onRow, int faultRow) {
        for (int f = 1; f < known.length; f++) {
            lift[f] = known[f] ? x[liftRow[f]] : hanging(f);
        }
        for (int e = 0; e < state.length; e++) {
            boolean limit = state[e] == State.LIMIT;
            amps[e] = onRow[e] >= 0 ? x[onRow[e]] : limit ? switchers.limitA(e) : 0;
        }
        faultA = x[faultRow];
    }

    /** A part that hangs on nothing: dead, or driven up without end by a current that finds no way. */
    private double hanging(int f) {
        double in = net.injectedA(f);
        for (int e = 0; e < state.length; e++) {
            if (state[e] == State.LIMIT && net.floating(switchers.out(e)) == f) {
                in += switchers.limitA(e);
            }
        }
        return in > 0 ? Double.POSITIVE_INFINITY : Double.NaN;
    }

    // ---- what holds while the last node is faulted --------------------------------------------------------------

    /** Voltage of a switcher's terminal. */
    private double voltage(int local) {
        return voltage(local, faultTransferOhm(local));
    }

    /** Voltage of a node next to the fault. */
    double neighbourV(int local) {
        return voltage(local, net.floating(local) == net.floating(place) ? net.neighbourOhm(local, place) : 0);
    }

    private double voltage(int local, double toFaultOhm) {
        double volts = net.openV(local) + lift[net.floating(local)] - toFaultOhm * faultA;
        for (int e = 0; e < state.length; e++) {
            volts += amps[e] == 0 ? 0 : transferOhm(local, e) * amps[e];
        }
        return volts;
    }

    /** Voltage that the fault's own resistance keeps up. */
    double hereV() {
        return faultA * faultOhm;
    }

    /** Current out of a switcher. */
    double amps(int e) {
        return amps[e];
    }
}
