package orlop.study.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import orlop.network.Connection;
import orlop.network.Feeding;
import orlop.network.Network;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;

/**
 * The areas that take least copper in one condition, with every current held as it is known to be at most.
 *
 * <p>The problem that is solved: cables that are left to us may have any standard area from the least that all but the
 * drop asks of them; all others are as they are; so are cables in rings, between parallel sources, and those that carry
 * current towards the source. Each cable carries the most that it was seen to carry, its conductors as warm as that makes them with the
 * area in question; a cable with a single load behind it carries the load's full current. What the path to a load drops
 * besides (devices, drawn returns, reactance) stays. The drop to no load may exceed its limit, except where the thickest
 * areas could not keep it. Wanted is the least mass of copper; {@link LeastCopper} finds it.
 */
final class CopperChoice {
    private final Sizing sizing;
    private final Operation operation;
    private final Network network;
    private final Feeding feeding;
    private final double[] leastMm2;
    private final List<LoadDrop> loads;
    private final double[] now; // amperes along the feeding path, what a drop is reckoned with; NaN where none
    private final double[] amps; // the most of them
    private boolean exact;
    private final boolean[] mayChoose;
    private final boolean[] open; // left to us, and no ring

    /**
     * @param condition number of the operation
     * @param leastMm2 by cable, what all but the drop asks
     * @param seenA by cable, amperes seen so far, NaN where none; raised to those that flow now
     */
    CopperChoice(Sizing sizing, int condition, double[] leastMm2, double[] seenA) {
        this.sizing = sizing;
        operation = sizing.operations().get(condition);
        this.leastMm2 = leastMm2.clone();
        network = operation.network();
        feeding = network.feeding();
        loads = sizing.drops(condition);
        now = new double[leastMm2.length];
        amps = seenA;
        mayChoose = new boolean[leastMm2.length];
        open = new boolean[leastMm2.length];
        Arrays.fill(now, Double.NaN);
        currents();
        for (int i = 0; i < amps.length; i++) {
            amps[i] = Double.isNaN(now[i]) || amps[i] > now[i] ? amps[i] : now[i];
        }
        boolean[] ring = ring(operation, leastMm2.length);
        for (int i = 0; i < mayChoose.length; i++) {
            open[i] = sizing.isAuto(i) && !sizing.plan().cables().get(i).stated() && !ring[i];
            mayChoose[i] = open[i] && amps[i] >= 0 && leastMm2[i] <= Series.greatestMm2();
        }
    }

    private void currents() {
        for (int pin : feeding.order()) {
            int via = feeding.via(pin);
            if (via >= 0 && network.connections().get(via).cable() != null) {
                Connection c = network.connections().get(via);
                int cable = network.cableOf(via);
                double flows = operation.activeCurrentOfCable(cable);
                now[cable] = c.b() == pin ? flows : 0 - flows;
                if (Math.abs(now[cable]) < 1e-9) {
                    now[cable] = 0;
                }
            }
        }
        for (LoadDrop d : loads) {
            for (int cable : d.cables()) {
                now[cable] += sizing.behind().soleA(cable) > 0 ? d.missingA() : 0;
            }
        }
    }

    /** Cables in rings and between sources: what lies between the ends of a connection that closes one. */
    private static boolean[] ring(Operation operation, int cables) {
        Network network = operation.network();
        Feeding feeding = network.feeding();
        boolean[] ring = new boolean[cables];
        boolean[] walked = new boolean[network.pinCount()];
        for (int e = 0; e < network.connections().size(); e++) {
            Connection c = network.connections().get(e);
            boolean both = c.closed() && feeding.feeds(c.a()) && feeding.feeds(c.b());
            boolean one = network.pointOf(c.a()) == network.pointOf(c.b()) && c.cable() == null;
            if (both && !one && feeding.via(c.a()) != e && feeding.via(c.b()) != e) {
                if (c.cable() != null) {
                    ring[network.cableOf(e)] = true;
                }
                walk(network, c.a(), walked, ring);
                walk(network, c.b(), walked, ring);
            }
        }
        return ring;
    }

    private static void walk(Network network, int pin, boolean[] walked, boolean[] ring) {
        for (int at = pin; at >= 0 && !walked[at]; at = network.feeding().before(at)) {
            walked[at] = true;
            int via = network.feeding().via(at);
            if (via >= 0 && network.connections().get(via).cable() != null) {
                ring[network.cableOf(via)] = true;
            }
        }
    }

    /** Whether the choice decides on this cable, which makes a drop here. */
    boolean mayChoose(int cable) {
        return mayChoose[cable];
    }

    /** By cable the nearest one before it that can be chosen, −1 if there is none, −2 where it carries nothing. */
    int[] parents() {
        int[] parents = new int[leastMm2.length];
        Arrays.fill(parents, -2);
        int[] last = new int[network.pinCount()];
        for (int pin : feeding.order()) {
            last[pin] = feeding.before(pin) < 0 ? -1 : last[feeding.before(pin)];
            int via = feeding.via(pin);
            int cable = via < 0 || network.connections().get(via).cable() == null ? -1 : network.cableOf(via);
            if (cable >= 0) {
                parents[cable] = last[pin];
                last[pin] = mayChoose[cable] ? cable : last[pin];
            }
        }
        return parents;
    }

    /** Calls for each load behind cables that can be chosen, with the last of these and what they may drop together. */
    void limits(BiConsumer<Integer, Double> limit) {
        for (LoadDrop d : loads) {
            int last = -1;
            int at = network.attachments().get(d.attachment()).pin();
            for (int pin = at; pin >= 0 && last < 0; pin = feeding.before(pin)) {
                int via = feeding.via(pin);
                int cable = via < 0 || network.connections().get(via).cable() == null ? -1 : network.cableOf(via);
                last = cable >= 0 && mayChoose[cable] ? cable : -1;
            }
            if (last >= 0) {
                limit.accept(last, budgetV(d));
            }
        }
    }

    /** Drop of a cable that can be chosen, with another area. */
    double dropV(int cable, double areaMm2) {
        CableModel w = sizing.plan().cables().get(cable);
        double flows = operation.currentOfCable(cable);
        double warm = w.conductorC(w.rating(areaMm2).orElse(null), Double.isNaN(flows) ? 0 : flows);
        double ohm = w.loopOhm(areaMm2, warm);
        return amps[cable] * ohm;
    }

    private double nowV(int cable) {
        return Double.isNaN(now[cable]) ? 0 : now[cable] * operation.ohm(cable);
    }

    /** What a load's path may drop in cables that can be chosen; infinite if nothing limits it or nothing helps. */
    private double budgetV(LoadDrop d) {
        double budget = d.limitV() == null ? Double.POSITIVE_INFINITY : d.limitV() - d.dropV();
        double least = 0;
        for (int cable : d.cables()) {
            budget += mayChoose[cable] ? nowV(cable) : 0;
            least += mayChoose[cable] ? dropV(cable, Series.greatestMm2()) : 0;
        }
        return least <= budget ? budget : Double.POSITIVE_INFINITY;
    }

    /** Whether some load is over its limit with the least areas, though thicker ones would keep it. */
    boolean asksForMore() {
        for (LoadDrop d : loads) {
            double drop = 0;
            for (int cable : d.cables()) {
                drop += mayChoose[cable] ? dropV(cable, leastMm2[cable]) : 0;
            }
            if (drop > budgetV(d) + LeastCopper.TOLERANCE_V) {
                return true;
            }
        }
        return false;
    }

    /** Whether the exact choice decides on this cable, or it makes no drop whatever its area. */
    boolean decides(int cable) {
        return mayChoose[cable] || (Double.isNaN(amps[cable]) && open[cable]);
    }

    /** Whether what was found last is least. */
    boolean exact() {
        return exact;
    }

    /**
     * Areas by cable, those that are not decided on as in the least; null if no choice keeps all limits.
     *
     * @param work permitted to the exact search
     * @param points of the near one
     */
    double @Nullable [] find(long work, int points) {
        LeastCopper tree = new LeastCopper();
        List<double[]> options = new ArrayList<>();
        List<Integer> cableOf = new ArrayList<>();
        int[] branch = new int[network.pinCount()];
        for (int pin : feeding.order()) {
            int up = feeding.before(pin);
            int parent = up < 0 ? -1 : branch[up];
            int via = feeding.via(pin);
            Connection c = via < 0 ? null : network.connections().get(via);
            int cable = c == null || c.cable() == null ? -1 : network.cableOf(via);
            if (cable < 0 || !mayChoose[cable]) {
                branch[pin] = parent;
                continue;
            }
            double[] areas = Series.from(leastMm2[cable]);
            branch[pin] = tree.branch(
                    parent,
                    Arrays.stream(areas).map(a -> dropV(cable, a)).toArray(),
                    Arrays.stream(areas)
                            .map(a -> sizing.plan().cables().get(cable).copperKg(a))
                            .toArray(),
                    Double.POSITIVE_INFINITY);
            options.add(areas);
            cableOf.add(cable);
        }
        for (LoadDrop d : loads) {
            int at = branch[network.attachments().get(d.attachment()).pin()];
            if (at >= 0) {
                tree.limit(at, budgetV(d));
            }
        }
        LeastCopper.Choice choice = tree.find(work);
        choice = choice == null ? tree.near(points) : choice;
        if (choice == null) {
            return null;
        }
        exact = choice.exact();
        double[] found = leastMm2.clone();
        for (int k = 0; k < cableOf.size(); k++) {
            found[cableOf.get(k)] = options.get(k)[choice.option(k)];
        }
        return found;
    }
}
