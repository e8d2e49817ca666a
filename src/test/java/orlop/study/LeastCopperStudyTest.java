package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Cable;
import orlop.drawing.ElectricalSystem;

/**
 * Whole drawings: the areas that are chosen against an exhaustive search of its own, which knows Ohm's law, the
 * resistances of IEC 60228 (class 5, plain) and nothing of the program.
 */
@SuppressWarnings("NullAway") // a null fails the test
class LeastCopperStudyTest {
    private static final double[] AREAS = {1, 1.5, 2.5, 4, 6, 10, 16, 25, 35};
    private static final double[] R20_OHM_PER_KM = {19.5, 13.3, 7.98, 4.95, 3.3, 1.91, 1.21, 0.78, 0.554};
    private static final double LIMIT_V = 0.03 * 24;

    /** A tree of cables; every place but the first bar has a load, of amperes or of watts. */
    private static final class Boat {
        final int[] parent;
        final double[] lengthM;
        final double[] load;

        Boat(int seed) {
            Random random = new Random(seed);
            int n = 2 + random.nextInt(3);
            parent = new int[n];
            lengthM = new double[n];
            load = new double[n];
            for (int i = 0; i < n; i++) {
                parent[i] = i == 0 ? -1 : random.nextInt(i);
                lengthM[i] = 2 + random.nextInt(14);
                load[i] = i == 0 ? 0 : 0.5 + 0.1 * random.nextInt(30);
            }
        }

        Study study(boolean watts) {
            return sketch(watts).study();
        }

        /** In each condition but the first some loads rest; a load that runs nowhere else runs in the first. */
        Study study(boolean[][] runs) {
            Sketch s = sketch(false);
            for (int c = 0; c < runs.length; c++) {
                s.condition("c" + c);
                for (int i = 0; i < load.length; i++) {
                    if (load[i] > 0) {
                        s.load("c" + c, "E" + i, runs[c][i], 1);
                    }
                }
            }
            return s.study();
        }

        private Sketch sketch(boolean watts) {
            Sketch s = Sketch.dc(24, "iso13297").supply("G", 24, 0);
            s.change(d -> d.with(limited(d.systems().require("S"))));
            for (int i = 0; i < parent.length; i++) {
                s.bar("B" + i)
                        .auto("W" + i, parent[i] < 0 ? "G.1" : "B" + parent[i] + ".w" + i, "B" + i + ".in", lengthM[i]);
                s.change(cold("W" + i));
                if (load[i] > 0) {
                    Sketch t = watts ? s.power("E" + i, 24 * load[i]) : s.current("E" + i, load[i]);
                    t.link("B" + i + ".e", "E" + i + ".1");
                }
            }
            return s;
        }

        private static ElectricalSystem limited(ElectricalSystem s) {
            return new ElectricalSystem(
                    s.id(),
                    s.name(),
                    s.nature(),
                    s.nominalV(),
                    s.highestV(),
                    s.frequencyHz(),
                    s.earthing(),
                    3.0,
                    3.0,
                    s.extras());
        }

        private static java.util.function.UnaryOperator<orlop.drawing.Drawing> cold(String id) {
            return d -> {
                Cable w = d.cables().require(id);
                return d.with(new Cable(
                        id,
                        w.from(),
                        w.to(),
                        w.lengthM(),
                        w.lengthEstimated(),
                        null,
                        1,
                        null,
                        w.construction(),
                        w.returns(),
                        w.measured(),
                        20.0,
                        w.refit(),
                        w.stage(),
                        "",
                        w.cableways(),
                        w.bends(),
                        null,
                        w.locked(),
                        w.extras()));
            };
        }

        double kg(int[] area) {
            double sum = 0;
            for (int i = 0; i < area.length; i++) {
                sum += 2 * lengthM[i] * AREAS[area[i]] * 8.96e-3;
            }
            return sum;
        }

        boolean holds(int[] area) {
            return holds(area, load);
        }

        boolean holds(int[] area, boolean[][] runs) {
            for (boolean[] now : runs) {
                double[] loads = load.clone();
                for (int i = 0; i < loads.length; i++) {
                    loads[i] = now[i] ? loads[i] : 0;
                }
                if (!holds(area, loads)) {
                    return false;
                }
            }
            return true;
        }

        private boolean holds(int[] area, double[] load) {
            double[] amps = load.clone();
            for (int i = parent.length - 1; i > 0; i--) {
                amps[parent[i]] += amps[i];
            }
            double[] drop = new double[parent.length];
            for (int i = 0; i < parent.length; i++) {
                double ohm = 2 * lengthM[i] * R20_OHM_PER_KM[area[i]] / 1_000;
                drop[i] = (parent[i] < 0 ? 0 : drop[parent[i]]) + amps[i] * ohm;
                if (load[i] > 0 && drop[i] > LIMIT_V + 1e-9) {
                    return false;
                }
            }
            return true;
        }

        double leastKg() {
            return leastKg(this::holds);
        }

        double leastKg(java.util.function.Predicate<int[]> holds) {
            double least = Double.POSITIVE_INFINITY;
            int[] area = new int[parent.length];
            while (true) {
                double kg = kg(area);
                if (kg < least && holds.test(area)) {
                    least = kg;
                }
                int digit = 0;
                while (digit < area.length && ++area[digit] == AREAS.length) {
                    area[digit++] = 0;
                }
                if (digit == area.length) {
                    return least;
                }
            }
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_areas_of_a_radial_drawing_take_as_little_copper_as_can_be(int seed) {
        Boat boat = new Boat(seed);
        Study s = boat.study(false);
        Copper copper = s.copper();
        int[] chosen = new int[boat.parent.length];
        for (int i = 0; i < chosen.length; i++) {
            CableResult w = s.governing().cables().get("W" + i);
            chosen[i] = java.util.Arrays.binarySearch(AREAS, w.areaMm2());
            assertThat(w.sizing().leastCopperAreaMm2()).isEqualTo(w.areaMm2());
        }

        assertThat(boat.holds(chosen)).isTrue();
        assertThat(copper.leastKg()).isCloseTo(boat.leastKg(), within(1e-9));
        assertThat(copper.chosenKg()).isCloseTo(boat.kg(chosen), within(1e-9));
        assertThat(copper.stepwiseKg()).isGreaterThanOrEqualTo(copper.chosenKg() - 1e-9);
    }

    /** Two or three conditions in which different loads run: the limit holds in each of them. */
    @ParameterizedTest
    @MethodSource("seeds")
    void over_several_conditions_too(int seed) {
        Boat boat = new Boat(seed);
        Random random = new Random(1_000 + seed);
        boolean[][] runs = new boolean[2 + random.nextInt(2)][boat.parent.length];
        for (int i = 0; i < boat.parent.length; i++) {
            for (int c = 0; c < runs.length; c++) {
                runs[c][i] = random.nextBoolean();
            }
            runs[random.nextInt(runs.length)][i] = true; // what runs nowhere asks for nothing
        }
        Study s = boat.study(runs);
        int[] chosen = new int[boat.parent.length];
        for (int i = 0; i < chosen.length; i++) {
            chosen[i] = java.util.Arrays.binarySearch(
                    AREAS, s.governing().cables().get("W" + i).areaMm2());
        }

        assertThat(boat.holds(chosen, runs)).isTrue();
        assertThat(s.copper().leastKg()).isCloseTo(boat.leastKg(a -> boat.holds(a, runs)), within(1e-9));
        assertThat(s.copper().chosenKg()).isCloseTo(boat.kg(chosen), within(1e-9));
    }

    @Test
    void loads_of_constant_power_stay_within_their_limits_too_and_step_by_step_is_often_heavier() {
        int known = 0;
        int lighter = 0;
        for (int seed = 0; seed < 300; seed++) {
            Study s = new Boat(seed).study(true);
            Copper copper = s.copper();
            s.governing().components().values().stream()
                    .filter(c -> c.dropFromSourcePercent() != null)
                    .forEach(c -> assertThat(c.dropFromSourcePercent()).isLessThanOrEqualTo(3 + 1e-6));
            assertThat(copper.chosenKg()).isLessThanOrEqualTo(copper.stepwiseKg() + 1e-9);
            known += copper.leastKg() != null ? 1 : 0;
            lighter += copper.chosenKg() < copper.stepwiseKg() - 1e-9 ? 1 : 0;
        }

        assertThat(known).isGreaterThan(285);
        assertThat(lighter).isGreaterThan(30);
    }
}
