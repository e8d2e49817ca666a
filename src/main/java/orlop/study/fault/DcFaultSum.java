package orlop.study.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import orlop.study.flow.Circuit;
import orlop.study.flow.Islands;
import orlop.study.flow.Part;
import orlop.study.model.Operation;
import orlop.study.model.Plan;

/**
 * What a fault current of direct current comes of: {@code (openV + all raises) / (ohm + the fault's own)}.
 *
 * @param openV voltage there without the fault, no load drawing current, of what is linear: batteries, supplies
 * @param ohm resistance of the linear network as seen from there, the sources' own included
 * @param sources how many linear sources there are
 * @param raises what sources that limit their current, and diodes, add
 * @param complete whether these are all; not where the place hangs on limited sources or diodes alone
 */
public record DcFaultSum(double openV, double ohm, int sources, List<Raise> raises, boolean complete) {
    /**
     * What one of them adds while the fault is there.
     *
     * @param items the source or diode, or several alike that stand side by side
     * @param amps what it gives or lets pass
     * @param ohm by how many volts one ampere of it raises the voltage at the place without the fault
     */
    public record Raise(List<String> items, double amps, double ohm) {
        public Raise {
            items = List.copyOf(items);
        }
    }

    public DcFaultSum {
        raises = List.copyOf(raises);
    }

    private static final DcFaultSum NOTHING = new DcFaultSum(Double.NaN, Double.NaN, 0, List.of(), false);

    /**
     * Solves the island of a node again, as {@link Faults#of} does.
     *
     * @param areaMm2 by cable
     * @param faultOhm resistance of the fault itself
     */
    public static DcFaultSum at(
            Plan plan, Operation operation, double[] areaMm2, double faultOhm, int node, boolean highest) {
        Circuit circuit = Faults.circuit(plan, operation, highest, Faults.ohms(plan, areaMm2, highest));
        Islands islands = new Islands(circuit, operation.assembly().live());
        if (node < 0 || islands.of(node) < 0) {
            return NOTHING;
        }
        int[] localOf = new int[circuit.nodeCount()];
        Arrays.fill(localOf, -1);
        List<Integer> nodes = new ArrayList<>();
        for (int v = 0; v < localOf.length; v++) {
            if (islands.of(v) == islands.of(node)) {
                localOf[v] = nodes.size();
                nodes.add(v);
            }
        }
        List<Integer> parts = new ArrayList<>();
        int sources = 0;
        for (int p = 0; p < circuit.partCount(); p++) {
            if (islands.ofPart(p) == islands.of(node)) {
                parts.add(p);
                sources += isSource(circuit, p) ? 1 : 0;
            }
        }
        FaultIsland island = new FaultIsland(circuit, ints(nodes), ints(parts), localOf, highest, faultOhm);
        List<String> items = Faults.items(operation);
        return island.sum(localOf[node], sources, position -> items.get(parts.get(position)));
    }

    private static boolean isSource(Circuit circuit, int part) {
        Part p = circuit.part(part);
        return p == Part.EMF || p == Part.CURRENT;
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(i -> i).toArray();
    }
}
