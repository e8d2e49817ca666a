package orlop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import orlop.drawing.Conversion;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/**
 * A seeded random direct-current circuit: one to four islands in a chain of converters, each a tree, a ring or a mesh,
 * with sources and loads of every general kind.
 */
public final class RandomCircuit {
    /** What an element is. */
    enum Sort {
        /** Of x ohms. */
        CABLE,
        /** x volts behind y ohms. */
        BATTERY,
        /** x volts behind y ohms, at most z amperes. */
        LIMITED,
        /** x amperes. */
        CURRENT_SOURCE,
        /** x watts, at most z amperes. */
        POWER_SOURCE,
        /** x ohms. */
        RESISTANCE,
        /** x amperes. */
        CURRENT,
        /** x watts. */
        POWER,
        /** From a to b: x volts, then y ohms. */
        DIODE,
        /** From a to b: x volts behind y ohms, efficiency z, idle power w. */
        CONVERTER
    }

    /** An element between node a and node b, or −1 for the common negative. */
    record Element(Sort sort, int a, int b, double x, double y, double z, double w) {}

    final int nodes;
    final List<Element> elements = new ArrayList<>();
    private final Random random;
    private final int loads;

    /** The circuit of this seed. */
    public RandomCircuit(int seed) {
        random = new Random(seed);
        nodes = size(seed);
        loads = Math.max(1, nodes / 3);
        int islands = nodes < 8 ? 1 : 1 + random.nextInt(4);
        int[] first = new int[islands + 1];
        for (int i = 0; i <= islands; i++) {
            first[i] = i * nodes / islands;
        }
        for (int i = 0; i < islands; i++) {
            island(i, first[i], first[i + 1], seed % 3);
            if (i > 0) {
                int in = first[i - 1] + random.nextInt(first[i] - first[i - 1]);
                add(Sort.CONVERTER, in, first[i], volts(i), ohm(), 0.8 + 0.19 * random.nextDouble(), random.nextInt(8));
            }
        }
    }

    /** Mostly small ones, for the dense solution costs the cube of the size; one in a hundred up to 400. */
    private int size(int seed) {
        return seed % 100 == 99
                ? 150 + random.nextInt(251)
                : seed % 10 == 9 ? 40 + random.nextInt(60) : 2 + random.nextInt(30);
    }

    private static double volts(int island) {
        return island % 2 == 0 ? 25.6 : 12.8;
    }

    private double ohm() {
        return 0.001 + 0.03 * random.nextDouble();
    }

    private void add(Sort sort, int a, int b, double x, double y, double z, double w) {
        elements.add(new Element(sort, a, b, x, y, z, w));
    }

    private void island(int island, int from, int to, int shape) {
        int size = to - from;
        for (int v = from + 1; v < to; v++) {
            add(Sort.CABLE, from + random.nextInt(v - from), v, ohm(), 0, 0, 0);
        }
        int rings = shape == 0 ? 0 : shape == 1 ? 1 : size / 2;
        for (int k = 0; k < rings && size > 2; k++) {
            int a = from + random.nextInt(size);
            int b = from + random.nextInt(size);
            if (a != b) {
                add(Sort.CABLE, a, b, ohm(), 0, 0, 0);
            }
        }
        if (island == 0) {
            add(Sort.BATTERY, from, -1, volts(0), ohm(), 0, 0);
        }
        sources(island, from, size);
        for (int k = 0; k < size; k++) {
            load(from + k, volts(island));
        }
        for (int k = size < 3 ? 0 : random.nextInt(3); k > 0; k--) {
            int a = from + random.nextInt(size);
            int b = from + random.nextInt(size);
            if (a != b) {
                add(Sort.DIODE, a, b, 0.01 + 0.4 * random.nextDouble(), ohm(), 0, 0);
            }
        }
    }

    private void sources(int island, int from, int size) {
        double v = volts(island);
        for (int k = random.nextInt(4); k > 0; k--) {
            int at = from + random.nextInt(size);
            switch (random.nextInt(5)) {
                case 0 -> add(Sort.LIMITED, at, -1, v + 2 * random.nextDouble(), ohm(), 5 + random.nextInt(30), 0);
                case 1 -> add(Sort.CURRENT_SOURCE, at, -1, 4 * random.nextDouble(), 0, 0, 0);
                case 2 -> add(Sort.POWER_SOURCE, at, -1, 100 * random.nextDouble(), 0, 2 + random.nextInt(9), 0);
                default -> add(Sort.BATTERY, at, -1, v - 0.8 * random.nextDouble(), ohm(), 0, 0);
            }
        }
    }

    private void load(int at, double v) {
        double amps = 30.0 * random.nextDouble() / loads;
        switch (random.nextInt(5)) {
            case 0 -> add(Sort.POWER, at, -1, amps * v, 0, 0, 0);
            case 1 -> add(Sort.CURRENT, at, -1, amps, 0, 0, 0);
            case 2 -> add(Sort.RESISTANCE, at, -1, v / Math.max(0.01, amps), 0, 0, 0);
            default -> {}
        }
    }

    /** A tag for each element, by its place in the list. */
    static String id(int n) {
        return "X" + n;
    }

    /** As a drawing: nodes are bars N0, N1 …, elements are tagged X0, X1 …. */
    public Sketch drawing() {
        Sketch s = Sketch.dc(24);
        for (int v = 0; v < nodes; v++) {
            s.bar("N" + v);
        }
        for (int i = 0; i < elements.size(); i++) {
            int n = i;
            Element e = elements.get(n);
            String a = "N" + e.a() + ".a" + n;
            if (e.sort() == Sort.CABLE) {
                s.ohm(id(n), a, "N" + e.b() + ".b" + n, e.x());
                double lengthM = 1 + n * 0.618034 % 1; // no two ways of equal length
                s.change(d -> d.with(d.cables().require(id(n)).withLengthM(lengthM)));
                continue;
            }
            hang(s, id(n), e);
            s.link(a, id(n) + ".1");
            if (e.b() >= 0) {
                s.link(id(n) + ".2", "N" + e.b() + ".b" + n);
            }
        }
        return s;
    }

    private static void hang(Sketch s, String id, Element e) {
        switch (e.sort()) {
            case BATTERY -> s.supply(id, e.x(), e.y());
            case LIMITED -> s.add(id, new Source.LimitedSupply(e.x(), e.y(), e.z()));
            case CURRENT_SOURCE -> s.add(id, new Source.CurrentSupply(e.x()));
            case POWER_SOURCE -> s.add(id, new Source.PowerSupply(e.x(), e.z()));
            case RESISTANCE -> s.add(id, Sketch.load(LoadBehaviour.RESISTANCE, e.x()));
            case CURRENT -> s.add(id, Sketch.load(LoadBehaviour.CURRENT, e.x()));
            case POWER -> s.add(id, Sketch.load(LoadBehaviour.POWER, e.x()));
            case DIODE -> s.add(id, new Switching.Diode(e.x(), e.y()));
            case CONVERTER -> s.add(id, new Conversion.PlainConverter(e.x(), e.y(), e.z(), e.w()), "S", "S");
            case CABLE -> throw new AssertionError(e);
        }
    }
}
