package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Nature;
import orlop.drawing.Point;
import orlop.drawing.RefitStatus;
import orlop.findings.Finding;
import orlop.standards.RuleSets;
import orlop.store.DrawingFile;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.Results;

/** Every sample drawing opens, is drawn with care, is calculated, and says what is known to be wrong with it. */
@SuppressWarnings("NullAway") // a null fails the test
class SamplesTest {
    private static final Path FOLDER = Path.of("sample-drawings");
    private static final Map<String, Opened> OPENED = new TreeMap<>();

    /** All there are: a new one is checked without another word. */
    static List<String> samples() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(DrawingFile.SUFFIX))
                    .map(f -> f.substring(0, f.length() - DrawingFile.SUFFIX.length()))
                    .sorted()
                    .toList();
        }
    }

    private static Path file(String sample) {
        return FOLDER.resolve(sample + DrawingFile.SUFFIX);
    }

    private static synchronized Opened open(String sample) {
        return OPENED.computeIfAbsent(sample, s -> {
            try {
                return Opened.file(file(s), 0);
            } catch (UserError e) {
                throw new AssertionError(sample, e);
            }
        });
    }

    private static Drawing drawing(String sample) {
        return open(sample).drawing();
    }

    @ParameterizedTest
    @CsvSource({
        "coastal-sloop, 1, 31, 18, 4",
        "harbour-workboat, 2, 67, 28, 5",
        "pilot-cutter, 4, 125, 63, 5",
        "pilot-cutter-first-sketch, 1, 37, 20, 3"
    })
    void has_as_much_in_it_as_is_said(String sample, int sheets, int components, int cables, int conditions) {
        Drawing d = drawing(sample);

        assertThat(d.sheets().size()).as("sheets").isEqualTo(sheets);
        assertThat(d.components().size()).as("components").isEqualTo(components);
        assertThat(d.cables().size()).as("cables").isEqualTo(cables);
        assertThat(d.conditions().size()).as("conditions").isEqualTo(conditions);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void is_written_back_byte_for_byte(String sample) throws IOException {
        assertThat(DrawingFile.write(drawing(sample))).isEqualTo(Files.readAllBytes(file(sample)));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void stands_on_the_grid_inside_the_frame(String sample) {
        for (Component c : drawing(sample).components().values()) {
            Point at = c.place().at();
            assertThat(at.xMm() % 2.5).as(c.id()).isZero();
            assertThat(at.yMm() % 2.5).as(c.id()).isZero();
            assertThat(at.xMm()).as("%s from the left", c.id()).isBetween(30.0, 325.0); // the margin begins at 333
            assertThat(at.yMm()).as("%s from the top", c.id()).isBetween(20.0, 240.0); // the legend at 252
        }
    }

    /** With less room than this, the texts of neighbours meet. */
    @ParameterizedTest
    @MethodSource("samples")
    void leaves_room_between_loads(String sample) {
        List<Component> loads = new ArrayList<>();
        drawing(sample).components().values().forEach(c -> {
            if (c.particulars() instanceof Consumer) {
                loads.add(c);
            }
        });
        for (Component a : loads) {
            for (Component b : loads) {
                if (!a.id().equals(b.id()) && a.place().sheet().equals(b.place().sheet())) {
                    double dx = Math.abs(a.place().at().xMm() - b.place().at().xMm());
                    double dy = Math.abs(a.place().at().yMm() - b.place().at().yMm());
                    assertThat(dx >= 27.5 || dy >= 27.5)
                            .as("%s and %s", a.id(), b.id())
                            .isTrue();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void goes_by_a_rule_set_and_its_sheet_links_are_pairs(String sample) {
        Drawing d = drawing(sample);

        assertThat(d.vessel().ruleSet()).isEqualTo("iec60364");
        assertThat(RuleSets.published().find("iec60364")).isPresent();
        for (Component c : d.components().values()) {
            if (c.particulars() instanceof Distribution.SheetLink link) {
                Component mate = d.components().require(link.mate());
                assertThat(((Distribution.SheetLink) mate.particulars()).mate()).isEqualTo(c.id());
                assertThat(mate.place().sheet()).isNotEqualTo(c.place().sheet());
            }
        }
    }

    /** What leaves a sheet by one half of a pair arrives on the other (Kirchhoff). */
    @ParameterizedTest
    @MethodSource("samples")
    void both_halves_of_a_sheet_link_carry_the_same_current(String sample) {
        Drawing d = drawing(sample);
        for (Results r : open(sample).study().byCondition().values()) {
            for (Component c : d.components().values()) {
                if (c.particulars() instanceof Distribution.SheetLink link) {
                    var here = r.components().get(c.id()).terminals().get(0).currentA();
                    var there =
                            r.components().get(link.mate()).terminals().get(0).currentA();
                    assertThat(here).as(c.id() + ", " + r.condition()).isEqualTo(there);
                    assertThat(here == null)
                            .isEqualTo(!r.components().get(c.id()).live());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void has_an_operating_point_in_every_condition(String sample) {
        for (Results r : open(sample).study().byCondition().values()) {
            assertThat(r.converged()).as(r.condition()).isTrue();
            assertThat(r.residualA()).as(r.condition()).isBetween(0.0, 1e-6);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_figure_is_a_number_or_said_to_be_missing(String sample) throws ReflectiveOperationException {
        List<Results> all = new ArrayList<>(open(sample).study().byCondition().values());
        all.add(open(sample).study().governing());
        for (Results r : all) {
            int figures = 0;
            for (CableResult w : r.cables().values()) {
                figures += figures(w, r.condition() + " " + w.id());
            }
            for (ComponentResult c : r.components().values()) {
                figures += figures(c, r.condition() + " " + c.id());
            }
            assertThat(figures).as(r.condition()).isGreaterThan(r.cables().size());
        }
    }

    private static int figures(Record result, String as) throws ReflectiveOperationException {
        int count = 0;
        for (RecordComponent part : result.getClass().getRecordComponents()) {
            if (part.getAccessor().invoke(result) instanceof Double d) {
                assertThat(d).as("%s %s", as, part.getName()).isFinite();
                count++;
            }
        }
        return count;
    }

    @ParameterizedTest
    @CsvSource({
        "coastal-sloop, 'assumed at ', 'fault-heat-unknown at '",
        "harbour-workboat, 'assumed at ', 'fault-heat-unknown at '",
        "pilot-cutter, 'drop-too-high at MA1, assumed at ', ''"
    })
    void has_a_clean_bill_but_for_what_is_accepted(String sample, String accepted, String open) {
        assertThat(words(sample, true)).isEqualTo(accepted);
        assertThat(words(sample, false)).isEqualTo(open);
    }

    private static String words(String sample, boolean accepted) {
        return open(sample).findings().stream()
                .filter(f -> f.accepted() == accepted)
                .map(SamplesTest::words)
                .collect(Collectors.joining(", "));
    }

    private static String words(Finding f) {
        return f.rule() + " at " + f.place().item();
    }

    @Test
    void the_first_sketch_has_its_faults() {
        assertThat(open("pilot-cutter-first-sketch").findings())
                .extracting(SamplesTest::words)
                .containsExactlyInAnyOrder(
                        "sources-can-meet at WC3", // shore and generator, by two breakers
                        "missing-fuse at W1", // none at the house bank
                        "missing-fuse at W2", // too far from the start bank
                        "missing-fuse at W11", // none before the converter
                        "fuse-too-large at FC4",
                        "cannot-break at FC7",
                        "negative-only at FC8",
                        "cable-too-thin at W9",
                        "load-above-device at FC6", // before W9
                        "device-voltage at FC2",
                        "drop-too-high at MA2",
                        "drop-too-high at EB1",
                        "load-without-source at EA3",
                        "no-rating at FC10",
                        "no-length at W14",
                        "never-runs at EB2",
                        "cannot-bear-fault at W20",
                        "assumed at ", // devices without resistance
                        "fault-heat-unknown at ",
                        "unguarded-run at ");
    }

    @ParameterizedTest
    @CsvSource({
        "missing-fuse, W1", "missing-fuse, W2", "missing-fuse, W11", "fuse-too-large, FC4", "cannot-break, FC7",
        "negative-only, FC8", "cable-too-thin, W9", "device-voltage, FC2", "drop-too-high, MA2", "no-rating, FC10",
        "no-length, W14"
    })
    void what_is_wrong_with_the_first_sketch_comes_with_its_cure(String rule, String place) {
        assertThat(open("pilot-cutter-first-sketch").findings())
                .filteredOn(f -> f.rule().equals(rule) && f.place().item().equals(place))
                .singleElement()
                .satisfies(f -> assertThat(f.cure()).isNotNull());
    }

    @Test
    void the_main_sample_has_every_nature_of_current_and_every_state_of_a_refit() {
        Drawing d = drawing("pilot-cutter");

        assertThat(d.systems().values())
                .extracting(s -> s.nature())
                .contains(Nature.DC, Nature.AC1, Nature.AC3N, Nature.PV);
        assertThat(d.systems().values()).extracting(s -> s.nominalV()).contains(12.0, 24.0, 230.0, 400.0);
        assertThat(d.components().values()).extracting(Component::refit).contains(RefitStatus.values());
    }

    /** Ohm's law by hand: 2 × 14 m of 25 mm², class 5, 0.780 Ω/km at 20 °C (IEC 60228:2004, table 3). */
    @Test
    void the_drop_along_the_windlass_cable_is_that_of_its_copper() {
        CableResult w = open("pilot-cutter")
                .study()
                .byCondition()
                .get("motoring")
                .cables()
                .get("W8");
        double cold = 2 * 14 * 0.780e-3 * w.currentA();

        assertThat(w.currentA()).isBetween(1_500 / 28.8, 1_500 / 22.0); // 1.5 kW
        assertThat(w.dropV()).isBetween(cold * (1 + 0.00393 * 10), cold * (1 + 0.00393 * 70)); // 30 to 90 °C
    }

    @ParameterizedTest
    @CsvSource({"pilot-cutter, harbour, W42, 32", "harbour-workboat, shore, W3, 63", "harbour-workboat, night, W2, 50"})
    void no_lead_of_a_source_carries_more_than_its_breaker(
            String sample, String condition, String cable, double breakerA) {
        CableResult w =
                open(sample).study().byCondition().get(condition).cables().get(cable);

        assertThat(w.currentA()).isBetween(1.0, breakerA);
    }
}
