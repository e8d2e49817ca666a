package orlop.study.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import orlop.study.flow.Circuit;
import orlop.study.flow.Part;

/**
 * Fault currents at every node of one island: Thevenin's theorem, all nodes from one factorisation of what is linear,
 * with a small correction at each node for the limited sources and diodes.
 */
final class FaultIsland {
    private final Circuit circuit;
    private final int[] nodes;
    private final int[] parts;
    private final int[] localA;
    private final int[] localB;
    private final PartEnds ends;
    private final FaultNetwork net;
    private final Switchers switchers;
    private final FaultState state;

    /** By local node: amperes; NaN where nothing feeds the node, infinite where nothing limits the current. */
    final double[] faultA;
    /** By position: current into node a of the part while the fault is at a; NaN where there is none. */
    final double[] intoA;
    /** By position: current into node b of the part while the fault is at b; NaN where there is none. */
    final double[] intoB;

    /**
     * @param withLimited whether sources that are limited take part
     * @param faultOhm resistance of the fault itself
     */
    FaultIsland(Circuit circuit, int[] nodes, int[] parts, int[] localOf, boolean withLimited, double faultOhm) {
        this.circuit = circuit;
        this.nodes = nodes;
        this.parts = parts;
        localA = new int[parts.length];
        localB = new int[parts.length];
        for (int i = 0; i < parts.length; i++) {
            localA[i] = circuit.a(parts[i]) < 0 ? nodes.length : localOf[circuit.a(parts[i])];
            localB[i] = circuit.b(parts[i]) < 0 ? nodes.length : localOf[circuit.b(parts[i])];
        }
        faultA = new double[nodes.length];
        intoA = new double[parts.length];
        intoB = new double[parts.length];
        Arrays.fill(faultA, Double.NaN);
        Arrays.fill(intoA, Double.NaN);
        Arrays.fill(intoB, Double.NaN);
        ends = new PartEnds(localA, localB, nodes.length + 1);
        net = new FaultNetwork(circuit, parts, localA, localB, nodes.length, withLimited);
        switchers = new Switchers(circuit, parts, localA, localB, withLimited);
        state = new FaultState(net, switchers, faultOhm);
    }

    /** Works out the nodes of these local numbers. */
    FaultIsland solve(IntPredicate wanted) {
        for (int k = 0; k < nodes.length && net.sound(); k++) {
            if (wanted.test(k)) {
                faultA[k] = state.at(k);
                shares(k);
            }
        }
        return this;
    }

    /**
     * What the current at a local node comes of.
     *
     * @param itemOf what the part at a position is
     */
    DcFaultSum sum(int k, int sources, IntFunction<String> itemOf) {
        if (!net.sound() || net.floating(k) > 0) {
            return new DcFaultSum(Double.NaN, Double.NaN, sources, List.of(), false);
        }
        state.at(k);
        List<DcFaultSum.Raise> raises = new ArrayList<>();
        for (int group = 0; group < switchers.count(); group++) {
            double ohm = state.transferOhm(k, group);
            if (state.amps(group) != 0 && ohm != 0) {
                List<String> items = new ArrayList<>();
                for (int i = 0; i < parts.length; i++) {
                    if (switchers.groupOf(i) == group) {
                        items.add(itemOf.apply(i));
                    }
                }
                raises.add(new DcFaultSum.Raise(items, state.amps(group), ohm));
            }
        }
        return new DcFaultSum(net.openV(k), net.ownOhm(k), sources, raises, true);
    }

    /** What each part at a node brings into a fault there. */
    private void shares(int k) {
        if (Double.isNaN(faultA[k])) {
            return;
        }
        boolean endless = Double.isInfinite(faultA[k]);
        for (int at = ends.start(k); at < ends.start(k + 1); at++) {
            int i = ends.part(at);
            boolean atA = localA[i] == k;
            int other = atA ? localB[i] : localA[i];
            int group = switchers.groupOf(i);
            double amps = 0; // from b to a
            if (group >= 0) {
                double out = state.amps(group) * switchers.share(i, circuit.third(parts[i]));
                amps = switchers.isDiode(group) ? -out : out;
            } else if (circuit.part(parts[i]) == Part.CURRENT) {
                amps = circuit.first(parts[i]);
            } else if (circuit.part(parts[i]) != Part.LIMITED) {
                double there = endless ? 0 : state.neighbourV(other);
                amps = net.linearA(i, atA ? state.hereV() : there, atA ? there : state.hereV());
            }
            if (atA) {
                intoA[i] = endless && group >= 0 ? Double.NaN : amps;
            } else {
                intoB[i] = endless && group >= 0 ? Double.NaN : -amps;
            }
        }
    }
}
