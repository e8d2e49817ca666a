package orlop.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.Words;
import orlop.study.Sketch;

/** What is said of loads and bars that nothing feeds is true of them: what has a path is not told that it has none. */
class UnfedTest {
    private static final String LOAD = "load-without-source";

    private static Sketch oneCircuit() {
        return Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.05)
                .bar("WC1")
                .add("E1", Kind.MOTOR.defaults())
                .cable("W1", "GB1.1", "WC1.a", 1, 16)
                .cable("W2", "WC1.b", "E1.1", 1, 16)
                .condition("one")
                .condition("two");
    }

    private static List<String> said(Sketch s, String rule) {
        return Checker.check(s.study()).stream()
                .filter(f -> f.rule().equals(rule))
                .map(f -> Words.english().text(f.message()))
                .toList();
    }

    @Test
    void a_load_whose_source_is_never_on_has_a_path_all_the_same() {
        Sketch s = oneCircuit().source("one", "GB1", "off").source("two", "GB1", "off");

        assertThat(said(s, LOAD))
                .singleElement()
                .asString()
                .contains("E1", "has a path", "switch a source on")
                .doesNotContain("no path");
        assertThat(said(s, "bar-without-source")).isEmpty();
    }

    @Test
    void a_load_behind_a_switch_that_is_never_closed_has_a_path_too() {
        Sketch s = oneCircuit()
                .isolator("QB1", orlop.drawing.Position.OPEN)
                .add("E2", Kind.MOTOR.defaults())
                .link("WC1.c", "QB1.1")
                .cable("W3", "QB1.2", "E2.1", 1, 16);

        assertThat(said(s, LOAD)).singleElement().asString().contains("E2", "has a path", "close a switch");
    }

    @Test
    void a_load_that_nothing_leads_to_has_none_its_power_known_or_not() {
        Sketch s = oneCircuit().add("E2", Kind.MOTOR.defaults()).power("E3", 10);

        assertThat(said(s, LOAD))
                .hasSize(2)
                .allSatisfy(text -> assertThat(text)
                        .contains("no path to a source, however the switches stand")
                        .doesNotContain("close a switch"));
    }

    static Stream<Kind> sources() {
        return Stream.of(Kind.values()).filter(k -> k.group() == Group.SOURCES);
    }

    @ParameterizedTest
    @MethodSource("sources")
    void a_source_of_which_nothing_is_known_is_a_source(Kind kind) {
        Sketch s = Sketch.dc(24, "iso13297")
                .add("G1", kind.defaults())
                .add("E1", Kind.MOTOR.defaults())
                .cable("W1", "G1.1", "E1.1", 1, 16);

        assertThat(said(s, LOAD)).isEmpty();
    }
}
