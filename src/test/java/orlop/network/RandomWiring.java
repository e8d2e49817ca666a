package orlop.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import orlop.drawing.Conversion;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Switching;
import orlop.study.Sketch;

/** Seeded random drawings of three systems with all that a feeding path can meet, in one condition. */
final class RandomWiring {
    /** The last two are the alternating current before and behind inverter/chargers, which never feed themselves. */
    private static final String[] SYSTEMS = {"S", "T", "A", "A"};

    private final Random random;
    private final Sketch sketch = Sketch.dc(24).system("T", 12);
    private final List<List<String>> bars = new ArrayList<>();
    private int next;

    private RandomWiring(int seed) {
        random = new Random(seed);
        sketch.change(d -> d.with(ElectricalSystem.of("A", Nature.AC1, 230)));
        for (int s = 0; s < SYSTEMS.length; s++) {
            List<String> here = new ArrayList<>();
            int count = 1 + random.nextInt(7);
            for (int i = 0; i < count; i++) {
                here.add("N" + s + i);
                sketch.bar("N" + s + i, SYSTEMS[s]);
            }
            bars.add(here);
        }
        sketch.condition("now");
    }

    static Drawing drawing(int seed) {
        RandomWiring w = new RandomWiring(seed);
        for (int s = 0; s < SYSTEMS.length; s++) {
            int edges = w.bars.get(s).size() + w.random.nextInt(5) - 2;
            for (int e = 0; e < edges; e++) {
                w.between(s);
            }
            w.hang(s);
        }
        for (int n = w.random.nextInt(5); n > 0; n--) {
            w.convert();
        }
        return w.sketch.drawing();
    }

    static Network network(Drawing d) {
        return Network.of(d, condition(d));
    }

    static OperatingCondition condition(Drawing d) {
        return d.conditions().require("now");
    }

    /** A terminal of a bar of this system, under a name of its own. */
    private String tap(int system) {
        List<String> here = bars.get(system);
        return here.get(random.nextInt(here.size())) + ".t" + next++;
    }

    private void join(String from, String to) {
        if (random.nextInt(3) == 0) {
            sketch.link(from, to, random.nextInt(3) / 10.0);
        } else {
            sketch.cable("W" + next++, from, to, 1 + random.nextInt(20), 16);
        }
    }

    private void between(int s) {
        String id = "X" + next++;
        String system = SYSTEMS[s];
        switch (random.nextInt(6)) {
            case 0 -> sketch.add(id, Kind.FUSE.defaults(), system);
            case 1 -> {
                sketch.add(id, new Switching.Isolator(null, 0.0, Poles.POSITIVE, Position.CLOSED), system);
                sketch.position("now", id, random.nextBoolean() ? "open" : "closed");
            }
            case 2 -> sketch.add(id, new Switching.Diode(0.5, 0.01), system);
            case 3 -> {
                sketch.add(id, new Switching.Changeover(2, null, Poles.POSITIVE, 1, ""), system);
                sketch.position("now", id, Integer.toString(random.nextInt(3)));
                join(tap(s), id + ".3");
            }
            default -> {
                sketch.cable("W" + next++, tap(s), tap(s), 1 + random.nextInt(20), 16);
                return;
            }
        }
        join(tap(s), id + ".1");
        join(id + ".2", tap(s));
    }

    private void hang(int s) {
        for (int n = random.nextInt(3); n > 0; n--) {
            String id = "G" + next++;
            sketch.add(id, Kind.SUPPLY.defaults(), SYSTEMS[s]);
            sketch.source("now", id, random.nextInt(4) == 0 ? "off" : "on");
            join(id + ".1", tap(s));
        }
        for (int n = random.nextInt(4); n > 0; n--) {
            String id = "E" + next++;
            sketch.add(id, Sketch.load(LoadBehaviour.POWER, 10), SYSTEMS[s]);
            join(tap(s), id + ".1");
        }
    }

    private void convert() {
        String id = "U" + next++;
        switch (random.nextInt(4)) {
            case 0 -> {
                sketch.add(id, Kind.INVERTER_CHARGER.defaults(), "S", "A");
                join(tap(0), id + ".1");
                join(id + ".2", tap(3));
                join(tap(2), id + ".3");
            }
            case 1 -> converter(id, Kind.CHARGER.defaults(), 2, 0);
            case 2 -> converter(id, new Conversion.PlainConverter(null, 0, 1, 0), 1, 0);
            default -> converter(id, Kind.DC_DC_CONVERTER.defaults(), 0, 1);
        }
    }

    private void converter(String id, orlop.drawing.Particulars p, int in, int out) {
        sketch.add(id, p, SYSTEMS[in], SYSTEMS[out]);
        join(tap(in), id + ".1");
        join(id + ".2", tap(out));
    }
}
