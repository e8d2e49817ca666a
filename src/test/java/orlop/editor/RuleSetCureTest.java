package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import javax.swing.JComboBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.RecordParts;
import orlop.desk.Same;
import orlop.findings.Cure;
import orlop.findings.Finding;

/** A drawing whose rule set nobody has chosen asks for it in the particulars of the vessel. */
@Timeout(60)
class RuleSetCureTest extends OnBench {

    RuleSetCureTest() {
        super(TestBoat.drawing().withVessel(RecordParts.with(TestBoat.drawing().vessel(), "ruleSet", "")));
    }

    private List<Finding> asking() {
        return Objects.requireNonNull(on.session().state().review()).findings().stream()
                .filter(f -> f.cure() instanceof Cure.EnterValue e && e.field().equals(Cure.RULE_SET))
                .toList();
    }

    @Test
    void its_cure_opens_the_particulars_and_the_choice_makes_it_go() throws Exception {
        on.answers().agree = true;
        on.answers().filling = page -> FormParts.named(page, JComboBox.class, "form.rules")
                .setSelectedIndex(NewDrawingForm.RULE_SETS.indexOf("iec60092"));
        Finding f = asking().get(0);

        HeadlessBench.onUi(() -> on.bench().cure(f));
        HeadlessBench.onUi(on::paint);

        assertThat(on.answers().asked).containsExactly("form " + Texts.of("editor.form.vessel.title"));
        assertThat(on.session().state().drawing().vessel().ruleSet()).isEqualTo("iec60092");
        assertThat(asking()).isEmpty();
        HeadlessBench.onUi(on.session()::undo);
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }

    @Test
    void a_form_that_is_left_changes_nothing() throws Exception {
        HeadlessBench.onUi(() -> on.bench().cure(asking().get(0)));

        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }
}
