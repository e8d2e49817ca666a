package orlop.bench;

import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Chemistry;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Phase;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.Source;
import orlop.drawing.TerminalRef;

/** Drawings of any size for the benchmarks: a tree of bars with loads, and, if asked for, some closing cables. */
final class GrownDrawings {
    private static final List<String> SYSTEM = List.of("24");

    private GrownDrawings() {}

    /**
     * A tree of this many cables; the same seed gives the same drawing.
     *
     * @param meshPercent closing cables between bars, in percent of the cables
     */
    static Drawing tree(int cables, int conditions, int meshPercent, long seed) {
        Random random = new Random(seed);
        Drawing d = Drawing.empty("Grown")
                .with(Sheet.of("1", "Grown"))
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(Component.of("G", battery(), Place.at("1", 0, 0), SYSTEM))
                .with(Component.of("B0", Kind.BUSBAR, Place.at("1", 20, 0), SYSTEM))
                .with(cable("W0", "G.1", "B0.a", 1, 120));
        for (int c = 0; c < conditions; c++) {
            d = d.with(OperatingCondition.asDrawn("c" + c, "Condition " + c));
        }
        int bars = Math.max(1, cables / 10);
        for (int i = 1; i < cables; i++) {
            double x = 20 + 10 * (i % 40);
            double y = 20 + 10 * (i / 40 % 900);
            if (i < bars) {
                d = d.with(Component.of("B" + i, Kind.BUSBAR, Place.at("1", x, y), SYSTEM))
                        .with(cable("W" + i, "B" + (i - 1) / 3 + ".t" + i, "B" + i + ".a", 1 + random.nextInt(9), 70));
            } else {
                d = d.with(Component.of("E" + i, load(random, cables), Place.at("1", x, y), SYSTEM))
                        .with(cable("W" + i, "B" + random.nextInt(bars) + ".t" + i, "E" + i + ".1", 2, 4));
            }
        }
        for (int i = 0; i < cables * meshPercent / 100 && bars > 3; i++) {
            int a = random.nextInt(bars);
            int b = (a + 1 + random.nextInt(bars - 1)) % bars;
            d = d.with(cable("M" + i, "B" + a + ".m" + i, "B" + b + ".n" + i, 5, 35));
        }
        return d;
    }

    private static Source.Battery battery() {
        return new Source.Battery(Chemistry.AGM, 1, 1, 800.0, 26.0, 0.0005, null, null, 80);
    }

    private static Consumer.PlainLoad load(Random random, int cables) {
        double watt = (1 + random.nextInt(50)) * Math.min(1.0, 200.0 / cables);
        return switch (random.nextInt(3)) {
            case 0 -> plain(LoadBehaviour.POWER, watt, null, null);
            case 1 -> plain(LoadBehaviour.CURRENT, null, watt / 24, null);
            default -> plain(LoadBehaviour.RESISTANCE, null, null, 576 / watt);
        };
    }

    private static Consumer.PlainLoad plain(
            LoadBehaviour b, @Nullable Double watt, @Nullable Double ampere, @Nullable Double ohm) {
        return new Consumer.PlainLoad(b, watt, null, ampere, null, ohm, null, Phase.ALL, false);
    }

    private static Cable cable(String id, String from, String to, double lengthM, double areaMm2) {
        return Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(lengthM)
                .withAreaMm2(areaMm2);
    }
}
