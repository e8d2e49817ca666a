package orlop.study.flow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Solves a circuit island by island, converters between islands from the loads to the sources.
 *
 * <p>Keep the object while values change: the next solution starts from the last one. Not safe for several threads.
 */
public final class Flow {
    private static final int ROUNDS = 200;

    /**
     * A converter: the power that its input part takes follows from its output part.
     *
     * @param inputPart a {@link Part#LOAD_POWER}; −1 where the input is not calculated here
     * @param outputPart a source part
     * @param efficiency what it takes for what it gives
     */
    public record Converter(int inputPart, int outputPart, Efficiency efficiency) {}

    /**
     * A controller that takes what its input gives: the limit of its output part is the power of its input part over the
     * voltage at its output.
     *
     * @param inputPart an ideal {@link Part#EMF} that takes current
     * @param outputPart a {@link Part#LIMITED}
     * @param efficiency what it gives for what it takes
     * @param ratedA most output current
     */
    public record Tracker(int inputPart, int outputPart, Efficiency efficiency, double ratedA) {}

    /**
     * An island without operating point.
     *
     * @param node one of its nodes
     * @param contradiction true if ideal sources contradict each other, false if no operating point exists
     */
    public record Trouble(int node, boolean contradiction) {}

    private final Circuit circuit;
    private final List<Converter> converters;
    private final List<Tracker> trackers;
    private final List<Island> islands = new ArrayList<>();
    private final int[] islandOf;
    private final int[] localOf;
    private final Island.Outcome[] outcome;
    private final boolean[] dirty;
    private final double[] current;
    private boolean settled = true;

    /**
     * @param circuit what to solve
     * @param live nodes that a source may feed; islands without any are left dead
     */
    public Flow(Circuit circuit, boolean[] live, List<Converter> converters, List<Tracker> trackers) {
        this.circuit = circuit;
        this.converters = List.copyOf(converters);
        this.trackers = List.copyOf(trackers);
        islandOf = new int[circuit.nodeCount()];
        localOf = new int[circuit.nodeCount()];
        new Islands(circuit, live).into(islands, islandOf, localOf);
        outcome = new Island.Outcome[islands.size()];
        Arrays.fill(outcome, Island.Outcome.SOLVED);
        dirty = new boolean[islands.size()];
        current = new double[circuit.partCount()];
    }

    /**
     * Finds the operating point for the circuit's present values.
     *
     * @param stale asked between islands
     * @throws java.util.concurrent.CancellationException if {@code stale} said so
     */
    public void solve(BooleanSupplier stale) {
        Arrays.fill(dirty, true);
        settled = false;
        for (int round = 0; round < ROUNDS && !settled; round++) {
            for (int i = islands.size() - 1; i >= 0; i--) {
                if (stale.getAsBoolean()) {
                    throw new java.util.concurrent.CancellationException("superseded");
                }
                if (dirty[i]) {
                    dirty[i] = false;
                    solveIsland(i);
                }
            }
            settled = !couple();
        }
    }

    private void solveIsland(int i) {
        Island island = islands.get(i);
        outcome[i] = island.solve();
        int[] parts = island.parts();
        for (int k = 0; k < parts.length; k++) {
            current[parts[k]] = island.current[k];
        }
    }

    /** Carries powers over; true if an island has to be solved again. */
    private boolean couple() {
        boolean again = false;
        for (Converter c : converters) {
            if (c.inputPart() >= 0 && alive(circuit.a(c.inputPart()))) {
                double out = solved(circuit.a(c.outputPart())) ? power(c.outputPart()) : 0;
                double in = c.efficiency().inputW(out);
                again |= change(c.inputPart(), in, circuit.first(c.inputPart()), true);
            }
        }
        for (Tracker t : trackers) {
            if (alive(circuit.a(t.outputPart())) && solved(circuit.a(t.inputPart()))) {
                double watts = t.efficiency().outputW(Math.max(0, -power(t.inputPart())));
                double volts = solved(circuit.a(t.outputPart())) ? volts(t.outputPart()) : 0;
                double limit = Math.min(t.ratedA(), watts / (volts > 0 ? volts : circuit.first(t.outputPart())));
                again |= change(t.outputPart(), limit, circuit.third(t.outputPart()), false);
            }
        }
        return again;
    }

    private boolean change(int part, double value, double before, boolean first) {
        if (Math.abs(value - before) <= 1e-13 * Math.max(1, Math.abs(value))) {
            return false;
        }
        if (first) {
            circuit.setFirst(part, value);
        } else {
            circuit.setThird(part, value);
        }
        dirty[islandOf[circuit.a(part)]] = true;
        return true;
    }

    /** Power that a source part gives, in watts. */
    private double power(int part) {
        return -current[part] * volts(part);
    }

    private double volts(int part) {
        return voltage(circuit.a(part)) - (circuit.b(part) < 0 ? 0 : voltage(circuit.b(part)));
    }

    private boolean alive(int node) {
        return islandOf[node] >= 0;
    }

    private boolean solved(int node) {
        return islandOf[node] >= 0 && outcome[islandOf[node]] == Island.Outcome.SOLVED;
    }

    /** Voltage of a node against the reference; NaN where it is dead or has no operating point. */
    public double voltage(int node) {
        if (!solved(node)) {
            return Double.NaN;
        }
        return islands.get(islandOf[node]).voltage[localOf[node]];
    }

    /** Current of a part from a to b; NaN where it is dead or has no operating point. */
    public double current(int part) {
        int node =
                circuit.a(part) >= 0 ? circuit.a(part) : circuit.b(part); // a drawn return may begin at the reference
        return solved(node) ? current[part] : Double.NaN;
    }

    /** Greatest sum of currents at any node. */
    public double residualA() {
        double most = 0;
        for (int i = 0; i < islands.size(); i++) {
            most = outcome[i] == Island.Outcome.SOLVED ? Math.max(most, islands.get(i).residualA) : most;
        }
        return most;
    }

    /** Whether converters that feed each other came to rest. */
    public boolean settled() {
        return settled;
    }

    /** Islands without operating point. */
    public List<Trouble> troubles() {
        List<Trouble> found = new ArrayList<>();
        for (int i = 0; i < islands.size(); i++) {
            if (outcome[i] != Island.Outcome.SOLVED) {
                found.add(new Trouble(islands.get(i).nodes()[0], outcome[i] == Island.Outcome.CONTRADICTED));
            }
        }
        return found;
    }

    /** Number of a node's island, −1 where it is dead. */
    public int islandOf(int node) {
        return islandOf[node];
    }
}
