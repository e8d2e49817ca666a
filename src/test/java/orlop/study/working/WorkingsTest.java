package orlop.study.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Drawing;
import orlop.drawing.Words;
import orlop.store.DrawingFile;
import orlop.study.CableResult;
import orlop.study.Results;
import orlop.study.StudyOptions;
import orlop.study.Workings;

/** Every working can be followed with a pencil, and ends at the figure that the study gives. */
@SuppressWarnings("NullAway") // a null fails the test
class WorkingsTest {
    private static Workings of(String sample, double faultOhm) throws Exception {
        Path file = Path.of("sample-drawings").resolve(sample);
        Drawing drawing = DrawingFile.load(Files.readAllBytes(file), sample);
        return Workings.of(drawing, new StudyOptions(faultOhm), () -> false);
    }

    /** Puts the inputs into each formula; gives back how many were followed. */
    private static int follow(Working w) {
        int followed = 0;
        Map<String, Double> values = new HashMap<>();
        for (Working i : w.inputs()) {
            assertThat(values.put(i.symbol(), i.value().value()))
                    .as("symbol twice: " + i.symbol())
                    .isNull();
            followed += follow(i);
        }
        assertThat(w.value().value()).as(w.toString()).isFinite();
        words(w);
        if (w.formula().isEmpty()) {
            return followed;
        }
        double expected = w.value().value();
        assertThat(Formula.value(w.formula(), values))
                .as(w.symbol() + " = " + w.formula())
                .isCloseTo(expected, within(1e-6 * Math.max(1e-3, Math.abs(expected))));
        return followed + 1;
    }

    private static void words(Working w) {
        assertThat(Words.english().pattern(w.what().key())).as(w.what().key()).isPresent();
        if (w.because() != null) {
            assertThat(Words.english().pattern(w.because().key()))
                    .as(w.because().key())
                    .isPresent();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pilot-cutter.orlop",
                "pilot-cutter-first-sketch.orlop",
                "coastal-sloop.orlop",
                "harbour-workboat.orlop"
            })
    void each_formula_gives_its_value_and_each_root_is_the_figure_of_the_study(String sample) throws Exception {
        Workings workings = of(sample, sample.startsWith("coastal") ? 0.01 : 0);
        List<Results> all = new ArrayList<>(workings.study().byCondition().values());
        all.add(workings.study().governing());
        int followed = 0;
        for (Results r : all) {
            for (CableResult w : r.cables().values()) {
                Map<Figure, Workings.Shown> shown = workings.of(r.condition(), w.id());
                for (Workings.Shown s : shown.values()) {
                    followed += s.of().stream().mapToInt(WorkingsTest::follow).sum();
                }
                same(shown, Figure.CURRENT, w.currentA() == null ? null : Math.abs(w.currentA()), w.id());
                same(shown, Figure.AMPACITY, w.ampacityA(), w.id());
                same(shown, Figure.CONDUCTOR, w.conductorC(), w.id());
                same(shown, Figure.DROP, w.dropPercent(), w.id());
                same(shown, Figure.DROP_FROM_SOURCE, w.dropFromSourcePercent(), w.id());
                same(shown, Figure.LOSS, w.lossW(), w.id());
                same(shown, Figure.LEAST_AREA, w.leastAreaMm2(), w.id());
                same(shown, Figure.FAULT_NEAR, w.faultFrom().maxA(), w.id());
                same(shown, Figure.FAULT_FAR, w.faultTo().maxA(), w.id());
                same(shown, Figure.FAULT_NEAR_LEAST, w.faultFrom().minA(), w.id());
                same(shown, Figure.FAULT_FAR_LEAST, w.faultTo().minA(), w.id());
            }
            for (var c : r.components().values()) {
                Map<Figure, Workings.Shown> shown = workings.of(r.condition(), c.id());
                shown.values().forEach(s -> s.of().forEach(WorkingsTest::follow));
                same(shown, Figure.DROP_TO_LOAD, c.dropFromSourcePercent(), c.id());
            }
        }
        assertThat(followed).as("formulas followed in " + sample).isGreaterThan(100 * all.size());
    }

    /** The figure of the study and the root of its working are the same number; neither without the other. */
    private static void same(Map<Figure, Workings.Shown> shown, Figure figure, Double figureOfStudy, String item) {
        Workings.Shown s = shown.get(figure);
        assertThat(s == null).as(figure + " of " + item + ", " + figureOfStudy).isEqualTo(figureOfStudy == null);
        if (s != null) {
            assertThat(s.of())
                    .as(figure + " of " + item)
                    .singleElement()
                    .satisfies(w -> assertThat(w.value().value()).isEqualTo(figureOfStudy));
        }
    }

    /** Most figures have a formula; those from the solution of the whole network are few. */
    @Test
    void hardly_a_figure_of_direct_current_is_left_without_a_formula() throws Exception {
        Workings workings = of("coastal-sloop.orlop", 0);
        Set<String> without = new HashSet<>();
        int count = 0;
        for (String id : workings.study().governing().cables().keySet()) {
            for (var e : workings.of(Results.GOVERNING, id).entrySet()) {
                count++;
                if (e.getKey() != Figure.PROTECTED_BY
                        && e.getValue().of().stream().anyMatch(w -> w.formula().isEmpty())) {
                    without.add(id + " " + e.getKey());
                }
            }
        }
        assertThat(without.size()).as(without + " of " + count).isLessThan(count / 10);
    }

    /** A sum on paper: 2 · 0.78 Ω/km · 14 m / 1000 at 20 °C are 21.84 mΩ (IEC 60228, class 5, 25 mm²: 0.780 Ω/km). */
    @Test
    void the_resistance_of_a_cable_is_that_of_a_sum_on_paper() throws Exception {
        Working most = of("pilot-cutter.orlop", 0)
                .of("motoring", "W8")
                .get(Figure.FAULT_FAR)
                .of()
                .get(0);
        Working own = most.inputs().get(most.inputs().size() - 1);
        assertThat(own.value().value()).isCloseTo(0.02184, within(1e-9));
        assertThat(own.inputs()).extracting(Working::symbol).containsExactly("r", "L", "α", "θ");
    }

    @Test
    void what_the_drawing_lacks_has_no_working() throws Exception {
        assertThat(of("coastal-sloop.orlop", 0).of(Results.GOVERNING, "W999")).isEmpty();
    }

    @Test
    void the_pencil_of_these_tests_sees_what_is_wrong() throws IOException {
        assertThat(Formula.value("2 + 3 · (4 − 1)²", Map.of())).isEqualTo(29);
        assertThat(Formula.value("max(a; b) / √(c² + 4 · c²) · √(5)", Map.of("a", 1.0, "b", 6.0, "c", 3.0)))
                .isCloseTo(2, within(1e-12));
        assertThatThrownBy(() -> Formula.value("a + b", Map.of("a", 1.0))).isInstanceOf(NoSuchElementException.class);
        assertThatThrownBy(() -> Formula.value("(1 + 2", Map.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
