package orlop.study.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntToDoubleFunction;
import orlop.drawing.FaultMethod;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.flow.Circuit;
import orlop.study.flow.Islands;
import orlop.study.flow.Part;
import orlop.study.flow.PinCurrents;
import orlop.study.model.Assembly;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.SourceModel;

/**
 * Highest and lowest prospective fault currents between positive and negative at every point of a network.
 *
 * <p>Highest: conductors at 20 °C, all sources of the condition, limited ones with the most they give; with the method
 * {@code IEC} a battery's peak {@code E / (0.9 R)} of IEC 61660-1 (from memory). Lowest: conductors at their
 * insulation's rating, limited sources only where nothing else feeds the place; with {@code IEC} the quasi-steady
 * {@code 0.95 · 0.9 U / (1.7 R)}. With {@code PLAIN} it is emf over resistance in both, and a stated conductor
 * temperature holds. Loads are left out.
 */
public final class Faults {
    private final double[] maxA;
    private final double[] minA;
    private final double[] throughA; // by connection

    private Faults(double[] maxA, double[] minA, double[] throughA) {
        this.maxA = maxA;
        this.minA = minA;
        this.throughA = throughA;
    }

    /** What one solution gave: amperes by node, and by part what it brings into a fault at its own ends. */
    private static final class Solution {
        private final double[] amps;
        private final double[] intoA;
        private final double[] intoB;

        Solution(double[] amps, double[] intoA, double[] intoB) {
            this.amps = amps;
            this.intoA = intoA;
            this.intoB = intoB;
        }
    }

    /**
     * @param areaMm2 by cable
     * @param faultOhm resistance of the fault itself, 0 or more
     */
    public static Faults of(Plan plan, Operation operation, double[] areaMm2, double faultOhm, BooleanSupplier stale) {
        Solution cold = solve(plan, operation, true, ohms(plan, areaMm2, true), faultOhm);
        if (stale.getAsBoolean()) {
            throw new java.util.concurrent.CancellationException("superseded");
        }
        Solution hot = solve(plan, operation, false, ohms(plan, areaMm2, false), faultOhm);
        return new Faults(cold.amps, hot.amps, through(operation, cold));
    }

    /** Conductor temperature of a cable at the highest or the lowest fault current. */
    public static double conductorC(Plan plan, int cable, boolean highest) {
        boolean plain = plan.drawing().vessel().faultMethod() == FaultMethod.PLAIN;
        return Temperatures.of(plan, cable, plain, highest);
    }

    /** Resistance of each cable at the temperature of the highest or the lowest current. */
    static IntToDoubleFunction ohms(Plan plan, double[] areaMm2, boolean highest) {
        boolean plain = plan.drawing().vessel().faultMethod() == FaultMethod.PLAIN;
        return i -> plan.cables().get(i).loopOhm(areaMm2[i], Temperatures.of(plan, i, plain, highest));
    }

    private static Solution solve(
            Plan plan, Operation operation, boolean highest, IntToDoubleFunction ohm, double faultOhm) {
        Circuit circuit = circuit(plan, operation, highest, ohm);
        boolean[] live = operation.assembly().live();
        Islands islands = new Islands(circuit, live);
        int[] nodeCount = new int[islands.count()];
        int[] partCount = new int[islands.count()];
        boolean[] hasLimited = new boolean[islands.count()];
        int[] localOf = new int[circuit.nodeCount()];
        for (int v = 0; v < localOf.length; v++) {
            localOf[v] = islands.of(v) < 0 ? -1 : nodeCount[islands.of(v)]++;
        }
        for (int p = 0; p < circuit.partCount(); p++) {
            int i = islands.ofPart(p);
            if (i >= 0) {
                partCount[i]++;
                hasLimited[i] |= circuit.part(p) == Part.CURRENT || Switchers.isLimited(circuit, p);
            }
        }
        double[] amps = new double[circuit.nodeCount()];
        double[] intoA = new double[circuit.partCount()];
        double[] intoB = new double[circuit.partCount()];
        Arrays.fill(amps, Double.NaN);
        Arrays.fill(intoA, Double.NaN);
        Arrays.fill(intoB, Double.NaN);
        int[][] nodes = lists(nodeCount, localOf.length, islands::of);
        int[][] parts = lists(partCount, circuit.partCount(), islands::ofPart);
        for (int i = 0; i < islands.count(); i++) {
            FaultIsland island = new FaultIsland(circuit, nodes[i], parts[i], localOf, highest, faultOhm);
            take(island.solve(k -> true), nodes[i], parts[i], amps, intoA, intoB);
            if (!highest && hasLimited[i]) {
                double[] found = island.faultA; // limited sources count only where nothing else feeds the place
                FaultIsland limited = new FaultIsland(circuit, nodes[i], parts[i], localOf, true, faultOhm);
                take(limited.solve(k -> Double.isNaN(found[k])), nodes[i], parts[i], amps, intoA, intoB);
            }
        }
        return new Solution(amps, intoA, intoB);
    }

    private static void take(
            FaultIsland island, int[] nodes, int[] parts, double[] amps, double[] intoA, double[] intoB) {
        for (int k = 0; k < nodes.length; k++) {
            amps[nodes[k]] = Double.isNaN(island.faultA[k]) ? amps[nodes[k]] : island.faultA[k];
        }
        for (int k = 0; k < parts.length; k++) {
            intoA[parts[k]] = Double.isNaN(island.intoA[k]) ? intoA[parts[k]] : island.intoA[k];
            intoB[parts[k]] = Double.isNaN(island.intoB[k]) ? intoB[parts[k]] : island.intoB[k];
        }
    }

    private static int[][] lists(int[] sizes, int count, java.util.function.IntUnaryOperator islandOf) {
        int[][] lists = new int[sizes.length][];
        for (int i = 0; i < sizes.length; i++) {
            lists[i] = new int[sizes[i]];
        }
        int[] filled = new int[sizes.length];
        for (int v = 0; v < count; v++) {
            int i = islandOf.applyAsInt(v);
            if (i >= 0) {
                lists[i][filled[i]++] = v;
            }
        }
        return lists;
    }

    static Circuit circuit(Plan plan, Operation operation, boolean highest, IntToDoubleFunction ohm) {
        Assembly assembly = operation.assembly();
        Circuit service = assembly.circuit();
        Network network = assembly.network();
        Circuit circuit = new Circuit(service.nodeCount(), plan.patterns());
        for (int i = 0; i < network.connections().size(); i++) {
            Connection c = network.connections().get(i);
            int part = assembly.partOfConnection(i);
            if (part >= 0) {
                double first = c.cable() == null ? service.first(part) : 1 / ohm.applyAsDouble(network.cableOf(i));
                circuit.add(service.part(part), service.a(part), service.b(part), first, service.second(part), 0);
            }
        }
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            int part = t.role() == Attachment.Role.CONVERTER
                    ? assembly.outputOfAttachment(i)
                    : assembly.partOfAttachment(i);
            SourceModel m = t.role() == Attachment.Role.CONVERTER ? plan.output(t.pin()) : plan.source(t.pin());
            if (part >= 0 && m != null) {
                source(circuit, service.a(part), service.b(part), m, highest ? m.strongest() : m.weakest());
            }
        }
        return circuit;
    }

    /** What each part of {@link #circuit} is, in that order. */
    static List<String> items(Operation operation) {
        Assembly assembly = operation.assembly();
        Network network = assembly.network();
        List<String> items = new ArrayList<>();
        for (int i = 0; i < network.connections().size(); i++) {
            if (assembly.partOfConnection(i) >= 0) {
                items.add(network.connections().get(i).item());
            }
        }
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            int part = converter ? assembly.outputOfAttachment(i) : assembly.partOfAttachment(i);
            if (part >= 0 && (converter || t.isSource())) {
                items.add(t.component().id());
            }
        }
        return items;
    }

    /** Greatest current through each connection while one of its ends is faulted; NaN where it is not determined. */
    private static double[] through(Operation operation, Solution s) {
        Assembly assembly = operation.assembly();
        Network network = assembly.network();
        double[] leaving = new double[network.pinCount()];
        boolean[] contracted = new boolean[network.connections().size()];
        double[] through = new double[contracted.length];
        int part = 0; // parts stand in the order in which circuit() adds them
        for (int e = 0; e < contracted.length; e++) {
            Connection c = network.connections().get(e);
            contracted[e] = c.contracted();
            through[e] = Double.NaN;
            if (assembly.partOfConnection(e) >= 0) {
                leaving[c.a()] -= orZero(s.intoA[part]);
                leaving[c.b()] -= orZero(s.intoB[part]);
                through[e] = Math.max(Math.abs(orZero(s.intoA[part])), Math.abs(orZero(s.intoB[part])));
                part++;
            }
        }
        for (int i = 0; i < network.attachments().size() && part < s.intoA.length; i++) {
            Attachment t = network.attachments().get(i);
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            boolean counts =
                    converter ? assembly.outputOfAttachment(i) >= 0 : t.isSource() && assembly.partOfAttachment(i) >= 0;
            if (counts) {
                leaving[converter ? t.outputPin() : t.pin()] -= orZero(s.intoA[part++]);
            }
        }
        PinCurrents shares = new PinCurrents(network, leaving, contracted);
        for (int e = 0; e < contracted.length; e++) {
            int node = assembly.node(network.connections().get(e).a());
            if (contracted[e] && node >= 0) {
                double one = Math.abs(shares.of(e));
                through[e] = Math.max(one, s.amps[node] - one);
            }
        }
        return through;
    }

    private static double orZero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    /** As {@link #maxA}, but only what passes through a connection: through a device the current from one side of it. */
    public double throughA(int connection) {
        return throughA[connection];
    }

    private static void source(Circuit circuit, int a, int b, SourceModel m, SourceModel.Thevenin t) {
        if (t.isCurrent()) {
            circuit.add(Part.CURRENT, a, b, t.limitA(), 0, 0);
        } else if (t.isLimited() || m.part() == Part.LIMITED) { // without limit: it cannot be charged
            circuit.add(Part.LIMITED, a, b, t.emfV(), t.ohm(), t.limitA());
        } else {
            circuit.add(Part.EMF, a, b, t.emfV(), t.ohm(), 0);
        }
    }

    /** Highest fault current at a node; NaN where nothing feeds it, infinite where nothing limits it. */
    public double maxA(int node) {
        return node < 0 ? Double.NaN : maxA[node];
    }

    /** Lowest fault current at a node; NaN where nothing feeds it, infinite where nothing limits it. */
    public double minA(int node) {
        return node < 0 ? Double.NaN : minA[node];
    }
}
