package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.assertj.core.api.Assertions;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.Sample;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.findings.Checker;
import orlop.study.CableResult;
import orlop.study.Results;
import orlop.study.Study;

/**
 * A cable drawn from its other end is the same copper: by Kirchhoff's laws its current changes its sign, and nothing else
 * changes.
 */
@SuppressWarnings("NullAway") // a null fails the test
class ReversedCablesTest {
    @ParameterizedTest
    @ValueSource(strings = {"pilot-cutter", "pilot-cutter-first-sketch", "coastal-sloop", "harbour-workboat"})
    void only_the_sign_of_its_current_changes(String sample) {
        Drawing drawn = Sample.of(sample);
        Study one = Study.of(drawn);
        Study other = Study.of(reversed(drawn));

        int compared = 0;
        for (Results r : one.byCondition().values()) {
            Results o = other.byCondition().get(r.condition());
            for (CableResult w : r.cables().values()) {
                CableResult x = o.cables().get(w.id());
                same(w.id(), w.currentA(), x.currentA(), -1);
                same(w.id(), w.areaMm2(), x.areaMm2(), 1);
                same(w.id(), w.ampacityA(), x.ampacityA(), 1);
                same(w.id(), w.faultFrom().maxA(), x.faultTo().maxA(), 1);
                same(w.id(), w.faultTo().minA(), x.faultFrom().minA(), 1);
                assertThat(x.protectedBy()).as(w.id()).containsExactlyInAnyOrderElementsOf(w.protectedBy());
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(20);
        assertThat(rules(other)).isEqualTo(rules(one));
    }

    private static void same(String what, @Nullable Double a, @Nullable Double b, int sign) {
        if (a == null || b == null) {
            assertThat(b).as(what).isEqualTo(a);
        } else {
            Assertions.assertThat(sign * b).as(what).isCloseTo(a, Offset.offset(1e-6 * Math.max(1, Math.abs(a))));
        }
    }

    private static Drawing reversed(Drawing d) {
        Drawing r = d;
        for (Cable w : d.cables().values()) {
            r = r.with(w.withEnds(w.to(), w.from()));
        }
        return r;
    }

    private static Map<String, List<String>> rules(Study s) {
        Map<String, List<String>> rules = new TreeMap<>();
        Checker.check(s)
                .forEach(f -> rules.merge(
                        f.rule(),
                        List.of(f.place().item()),
                        (a, b) -> java.util.stream.Stream.concat(a.stream(), b.stream())
                                .sorted()
                                .toList()));
        return rules;
    }
}
