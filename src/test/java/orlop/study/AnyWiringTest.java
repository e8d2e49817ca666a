package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.TerminalRef;
import orlop.findings.Checker;

/**
 * Whatever is wired to whatever, at any terminal and drawn from either end, the study ends with an answer: nobody who is in
 * the middle of drawing is to see an error. Seeded.
 */
class AnyWiringTest {
    private static final int DRAWINGS = 1_500;

    @Test
    void every_wiring_is_studied_and_checked() {
        int live = 0;
        int found = 0;
        for (int seed = 0; seed < DRAWINGS; seed++) {
            Drawing d = drawing(
                    new Random(seed), seed % 2 == 0 ? Sketch.dc(24) : AcSketch.of(orlop.drawing.Nature.AC1, 230));
            try {
                Study s = Study.of(d);
                found += Checker.check(s).size();
                live += (int) s.governing().cables().values().stream()
                        .filter(CableResult::live)
                        .count();
            } catch (RuntimeException e) {
                throw new AssertionError("seed " + seed, e);
            }
        }
        assertThat(live).isGreaterThan(DRAWINGS);
        assertThat(found).isGreaterThan(DRAWINGS);
    }

    private static Drawing drawing(Random random, Sketch s) {
        int count = 3 + random.nextInt(8);
        Kind[] kinds = Kind.values();
        List<TerminalRef> ends = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Kind k = random.nextInt(3) == 0 ? Kind.BATTERY : kinds[random.nextInt(kinds.length)];
            String id = "X" + i;
            s.change(d -> d.with(
                    Component.of(id, k, Place.at("1", 10, 10), k.spansSystems() ? List.of("S", "S") : List.of("S"))));
            if (k.terminals() == Kind.Terminals.ANY) {
                for (int t = 0; t < 6; t++) {
                    ends.add(new TerminalRef(id, "t" + t));
                }
            } else {
                k.defaults().terminals().forEach(t -> ends.add(new TerminalRef(id, t)));
            }
        }
        for (int i = 0; i < 2 * count; i++) {
            TerminalRef from = ends.get(random.nextInt(ends.size()));
            TerminalRef to = ends.get(random.nextInt(ends.size()));
            boolean apart = !from.component().equals(to.component());
            if (apart && random.nextInt(4) == 0) {
                s.link(from.toString(), to.toString());
            } else if (apart) {
                s.cable("W" + i, from.toString(), to.toString(), random.nextInt(3) * 2.0, 6);
            }
        }
        return s.drawing();
    }
}
