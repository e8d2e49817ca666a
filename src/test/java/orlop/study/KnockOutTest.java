package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Particulars;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.findings.Checker;
import orlop.findings.Finding;
import orlop.findings.Severity;
import orlop.store.DrawingFile;

/**
 * Protective devices are taken away one by one: the device becomes a plain junction, so that what was joined to it stays
 * joined. The cables that the program then calls bare must be exactly those of {@link BareCables}.
 */
@SuppressWarnings("NullAway") // a null fails the test
class KnockOutTest {
    static List<Path> samples() throws IOException {
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of("sample-drawings"), "*.orlop")) {
            files.forEach(found::add);
        }
        assertThat(found).isNotEmpty();
        return found;
    }

    private static Drawing without(Drawing d, Component device) {
        Component junction = Component.of(
                device.id(),
                Kind.JUNCTION,
                device.place(),
                List.of(device.systems().get(0)));
        return d.with(junction);
    }

    private static List<Component> devices(Drawing d) {
        return d.components().stream()
                .filter(c -> c.kind() == Kind.FUSE
                        || c.kind() == Kind.CIRCUIT_BREAKER
                        || c.kind() == Kind.RESIDUAL_CURRENT_DEVICE)
                .toList();
    }

    private static Set<String> compare(Drawing d, String what) {
        Study s = Study.of(d);
        Set<String> ours = new TreeSet<>();
        for (boolean ac : new boolean[] {false, true}) {
            Set<String> here = BareCables.ofProgram(s, ac);
            assertThat(here).as(what + (ac ? ", AC" : ", DC")).isEqualTo(new BareCables(s, ac).bare);
            ours.addAll(here);
        }
        List<Finding> dangers = Checker.check(s).stream()
                .filter(f -> f.rule().equals("missing-fuse") || f.rule().equals("fuse-too-large"))
                .toList();
        assertThat(dangers).as(what).allMatch(f -> f.severity() == Severity.DANGER);
        assertThat(dangers.isEmpty())
                .as(what)
                .isEqualTo(s.gaps().stream()
                        .noneMatch(g -> g.kind() == Gap.Kind.NO_DEVICE
                                || g.kind() == Gap.Kind.TOO_FAR
                                || g.kind() == Gap.Kind.TOO_LARGE));
        return ours;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void each_device_of_each_sample_is_missed_where_it_is_wanted(Path sample) throws Exception {
        Drawing whole = DrawingFile.load(sample);
        Set<String> before = compare(whole, "whole");
        int bared = 0;
        for (Component device : devices(whole)) {
            Drawing less = without(whole, device);
            Set<String> bare = compare(less, "without " + device.id());
            bared += bare.size() > before.size() ? 1 : 0;
            assertThat(compare(less.with(device), device.id() + " put back")).isEqualTo(before);
        }
        assertThat(bared).as("devices that are missed").isPositive();
    }

    // ---- random networks ---------------------------------------------------------------------------------------

    static IntStream seeds() {
        return IntStream.range(0, 240);
    }

    private static final double[] AREAS = {1.5, 4, 10, 35, 70};
    private static final double[] RATINGS = {10, 20, 40, 80, 150};

    /** Bars in a tree with some rings; between them cables with now and then a device, a switch, a diode. */
    private static Drawing random(int seed) {
        Random r = new Random(seed * 104_729L);
        String rules = new String[] {"iso13297", "abyc", "iec60364"}[seed % 3];
        Sketch s = Sketch.dc(24, rules);
        int bars = 3 + r.nextInt(4);
        for (int v = 0; v < bars; v++) {
            s.bar("B" + v);
        }
        for (int v = 1; v < bars; v++) {
            between(s, r, r.nextInt(v), v, "T" + v);
        }
        for (int k = r.nextInt(3); k > 0; k--) {
            int a = r.nextInt(bars);
            between(s, r, a, (a + 1 + r.nextInt(bars - 1)) % bars, "R" + k);
        }
        int sources = 1 + r.nextInt(3);
        for (int k = 0; k < sources; k++) {
            hang(s, r, "G" + k, source(r, k), r.nextInt(bars), k > 0 || r.nextBoolean());
        }
        for (int k = 0; k < 2 + r.nextInt(3); k++) {
            hang(s, r, "E" + k, Sketch.load(orlop.drawing.LoadBehaviour.POWER, 20), r.nextInt(bars), true);
        }
        if (seed % 4 == 0) {
            s.system("12", 12).bar("B12", "12");
            s.add("T1", new Conversion.DcDcConverter(240.0, null, 0.01, 0.9, 0, false, null, seed % 8 == 0), "S", "12");
            s.link("B0.conv", "T1.1").cable("WX", "T1.2", "B12.a", 1 + r.nextInt(3), AREAS[r.nextInt(3)]);
            s.add("EX", Sketch.load(orlop.drawing.LoadBehaviour.POWER, 5), "12");
            s.cable("WY", "B12.b", "EX.1", 2, AREAS[r.nextInt(3)]);
        }
        return s.drawing();
    }

    private static Particulars source(Random r, int k) {
        return switch (k == 0 ? 0 : r.nextInt(4)) {
            case 0 -> new Source.Supply(25.0, 0, 0.01, 0, false);
            case 1 -> Kind.BATTERY.defaults();
            case 2 -> new Source.LimitedSupply(28.0, 0, 10.0 + r.nextInt(60));
            default -> new Source.CurrentSupply(5.0 + r.nextInt(30));
        };
    }

    private static double length(Random r) {
        return new double[] {0.1, 0.15, 0.2, 1, 2.5, 4}[r.nextInt(6)];
    }

    private static void hang(Sketch s, Random r, String id, Particulars p, int bar, boolean byCable) {
        s.add(id, p);
        String from = "B" + bar + ".h" + id;
        if (r.nextInt(3) > 0) {
            s.fuse("F" + id, "iso8820-sf51", RATINGS[r.nextInt(RATINGS.length)]);
            s.link(from, "F" + id + ".1", 0.05);
            from = "F" + id + ".2";
        }
        if (byCable) {
            s.cable("W" + id, from, id + ".1", length(r), AREAS[r.nextInt(AREAS.length)]);
        } else {
            s.link(from, id + ".1", 0.1);
        }
    }

    private static void between(Sketch s, Random r, int a, int b, String id) {
        String from = "B" + a + ".o" + id;
        String to = "B" + b + ".i" + id;
        String mid = "X" + id;
        switch (r.nextInt(8)) {
            case 0, 1 -> s.fuse(mid, r.nextBoolean() ? "gg" : "class-t", RATINGS[r.nextInt(RATINGS.length)]);
            case 2 -> s.add(mid, new Switching.Diode(0.7, 0));
            case 3 -> s.isolator(mid, r.nextBoolean() ? Position.OPEN : Position.CLOSED);
            case 4 -> s.add(mid, new Switching.Contactor(null, 0.0, Poles.POSITIVE, Position.OPEN, "lock"));
            case 5 -> {
                s.add(mid, new Switching.Changeover(2, null, Poles.POSITIVE, 1, ""));
                s.cable("W" + id + "2", "B" + r.nextInt(Math.max(1, b)) + ".w" + id, mid + ".3", length(r), 10);
            }
            default -> {
                s.cable("W" + id, from, to, length(r), AREAS[r.nextInt(AREAS.length)]);
                return;
            }
        }
        s.cable("W" + id, from, mid + ".1", length(r), AREAS[r.nextInt(AREAS.length)]);
        s.cable("W" + id + "1", mid + ".2", to, length(r), AREAS[r.nextInt(AREAS.length)]);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void random_networks_with_devices_missing_are_judged_as_by_brute_force(int seed) {
        Drawing d = random(seed);
        compare(d, "seed " + seed);
        for (Component device : devices(d)) {
            compare(without(d, device), "seed " + seed + " without " + device.id());
        }
    }

    @Test
    void the_random_networks_are_neither_all_bare_nor_all_guarded() {
        int bare = 0;
        int guarded = 0;
        for (int seed = 0; seed < 240; seed++) {
            Study s = Study.of(random(seed));
            int here = BareCables.ofProgram(s, false).size();
            bare += here;
            guarded += s.drawing().cables().size() - here;
        }
        assertThat(bare).isGreaterThan(200);
        assertThat(guarded).isGreaterThan(200);
    }
}
