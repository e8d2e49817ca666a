package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.desk.Sample;
import orlop.drawing.Soundness;
import orlop.findings.Cure;
import orlop.findings.Finding;

/** Every cure of the first sketch: it is done by its button's own way, studied again, and taken back. */
@Timeout(300)
class EveryCureTest extends OnBench {

    EveryCureTest() {
        super(Sample.of("pilot-cutter-first-sketch"));
    }

    private List<Finding> findings() {
        return Objects.requireNonNull(on.session().state().review()).findings();
    }

    private List<Finding> curable() {
        return findings().stream()
                .filter(f -> !f.accepted() && f.cure() != null && !(f.cure() instanceof Cure.EnterValue))
                .toList();
    }

    private void cure(Finding f) throws Exception {
        HeadlessBench.onUi(() -> on.bench().cure(f));
        HeadlessBench.onUi(() -> assertThat(on.session().state().fresh()).isTrue()); // its review has come
    }

    @Test
    void each_cure_makes_its_finding_go_or_change_and_undo_gives_the_very_same_drawing_back() throws Exception {
        List<Finding> all = curable();
        assertThat(all).hasSizeGreaterThan(5);
        List<String> unmoved = new ArrayList<>();
        for (Finding f : all) {
            cure(f);

            assertThat(Soundness.flaws(on.session().state().drawing())).isEmpty();
            if (Same.object(on.session().state().drawing(), start) || findings().contains(f)) {
                unmoved.add(f.rule() + " at " + f.place().item());
            }
            HeadlessBench.onUi(on.session()::undo);
            assertThat(Same.object(on.session().state().drawing(), start))
                    .as(f.rule())
                    .isTrue();
        }
        assertThat(unmoved).isEmpty();
    }

    @Test
    void a_cure_that_needs_a_value_opens_the_card_and_changes_nothing() throws Exception {
        List<Finding> asking = findings().stream()
                .filter(f -> f.cure() instanceof Cure.EnterValue)
                .toList();
        assertThat(asking).isNotEmpty();
        for (Finding f : asking) {
            cure(f);
            assertThat(Same.object(on.session().state().drawing(), start))
                    .as(f.rule())
                    .isTrue();
            assertThat(on.session().state().selection()).hasSize(1);
        }
    }

    @Test
    void one_cure_after_the_other_leaves_fewer_findings_and_undo_of_all_gives_the_first_drawing() throws Exception {
        int before = curable().size();
        int steps = 0;
        for (List<Finding> left = curable(); !left.isEmpty() && steps < 60; left = curable(), steps++) {
            cure(left.get(0));
        }
        assertThat(curable().size()).isLessThan(before);
        assertThat(steps).isBetween(3, 59);

        while (on.session().state().undo() != null) {
            HeadlessBench.onUi(on.session()::undo);
        }

        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }
}
