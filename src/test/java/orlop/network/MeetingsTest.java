package orlop.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Excitation;
import orlop.drawing.Nature;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.study.Sketch;

/** The search for a way whose positions agree, against the trying of every position. */
class MeetingsTest {
    private static final int BARS = 7;
    private static final int SWITCHES = 6;

    /** A switch between bars: a changeover's ways and common, a contactor's two ends. */
    private record Switch(String id, List<Integer> bars, int interlock) {}

    private final List<int[]> joined = new ArrayList<>();
    private final List<Switch> switches = new ArrayList<>();

    @ParameterizedTest
    @ValueSource(
            longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26})
    void two_sources_can_meet_if_and_only_if_some_position_of_all_switches_joins_them(long seed) {
        int met = 0;
        for (int n = 0; n < 40; n++) {
            Random random = new Random(seed * 1_000 + n);
            joined.clear();
            switches.clear();
            Sketch s = sketch(random);
            boolean expected = anyPosition(0, new int[SWITCHES]);
            assertThat(Meetings.of(s.drawing()).size())
                    .as("seed %d, drawing %d", seed, n)
                    .isEqualTo(expected ? 1 : 0);
            met += expected ? 1 : 0;
        }
        assertThat(met).as("both outcomes occur").isBetween(1, 39);
    }

    private Sketch sketch(Random random) {
        Sketch s = Sketch.dc(230).change(d -> d.with(ElectricalSystem.of("S", Nature.AC1, 230)));
        Source.Generator g = new Source.Generator(6.0, 0.9, 2, 12.0, 22.0, Excitation.SELF, null);
        s.add("GA1", g).add("GA2", g);
        for (int i = 0; i < BARS; i++) {
            s.bar("WC" + i);
        }
        s.link("GA1.1", "WC0.a").link("GA2.1", "WC" + (BARS - 1) + ".a");
        if (random.nextInt(3) == 0) {
            joined.add(new int[] {1, 2});
            s.cable("W1", "WC1.x", "WC2.x", 2, 4);
        }
        for (int i = 0; i < SWITCHES; i++) {
            String id = "Q" + i;
            boolean changeover = random.nextBoolean();
            List<Integer> bars =
                    random.ints(changeover ? 3 : 2, 0, BARS).boxed().toList();
            int interlock = changeover ? -1 : random.nextInt(2);
            switches.add(new Switch(id, bars, interlock));
            s.add(
                    id,
                    changeover
                            ? new Switching.Changeover(2, null, Poles.POSITIVE, 0, "")
                            : new Switching.Contactor(null, 0.0, Poles.POSITIVE, Position.OPEN, "K" + interlock));
            for (int t = 0; t < bars.size(); t++) {
                s.link(id + "." + (t + 1), "WC" + bars.get(t) + "." + id + t);
            }
        }
        return s;
    }

    /** Tries every position of the switches from this one on. */
    private boolean anyPosition(int at, int[] positions) {
        if (at == SWITCHES) {
            return isAllowed(positions) && joins(positions);
        }
        boolean found = false;
        for (int p = 0; p < switches.get(at).bars().size() && !found; p++) {
            positions[at] = p;
            found = anyPosition(at + 1, positions);
        }
        return found;
    }

    private boolean isAllowed(int[] positions) {
        int[] closed = new int[2];
        for (int i = 0; i < SWITCHES; i++) {
            Switch s = switches.get(i);
            if (s.interlock() >= 0 && positions[i] == 1) {
                closed[s.interlock()]++;
            }
        }
        return Arrays.stream(closed).allMatch(c -> c <= 1);
    }

    private boolean joins(int[] positions) {
        int[] group = new int[BARS];
        Arrays.setAll(group, i -> i);
        joined.forEach(j -> merge(group, j[0], j[1]));
        for (int i = 0; i < SWITCHES; i++) {
            List<Integer> bars = switches.get(i).bars();
            if (bars.size() == 2 && positions[i] == 1) {
                merge(group, bars.get(0), bars.get(1));
            } else if (bars.size() == 3 && positions[i] > 0) {
                merge(group, bars.get(positions[i] - 1), bars.get(2));
            }
        }
        return group[0] == group[BARS - 1];
    }

    private static void merge(int[] group, int a, int b) {
        int from = group[a];
        int to = group[b];
        for (int i = 0; i < group.length; i++) {
            group[i] = group[i] == from ? to : group[i];
        }
    }
}
