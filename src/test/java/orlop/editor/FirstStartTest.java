package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;

@Timeout(60)
class FirstStartTest {
    private final Drawing sample = TestBoat.drawing();

    @SuppressWarnings("NullAway.Init") // set before each test
    private HeadlessBench on;

    @BeforeEach
    void open() throws Exception {
        on = HeadlessBench.open(sample);
    }

    @AfterEach
    void close() throws Exception {
        on.close();
    }

    private void offer(int answer) throws Exception {
        on.answers().choice = answer;
        HeadlessBench.onUi(() -> new FirstStart(on.answers(), on.bench().files()).offer());
    }

    private String vessel() {
        return on.session().state().drawing().vessel().name();
    }

    @Test
    void enter_and_escape_leave_the_sample() throws Exception {
        offer(0);
        offer(-1);

        assertThat(vessel()).isEqualTo(sample.vessel().name());
    }

    @Test
    void three_answers_make_a_vessel_of_ones_own() throws Exception {
        on.answers().agree = true;
        on.answers().filling = FirstStartTest::fill;

        offer(1);

        Drawing d = on.session().state().drawing();
        assertThat(vessel()).isEqualTo("Petrel");
        assertThat(d.vessel().ruleSet()).isEqualTo("iec60364");
        assertThat(d.systems().stream().map(ElectricalSystem::id)).containsExactly("24", "230");
        assertThat(d.sheets().size()).isEqualTo(1);
        assertThat(d.conditions().size()).isPositive();
        assertThat(on.session().state().dirty()).isFalse();
    }

    private static void fill(Container form) {
        FormParts.named(form, JTextField.class, "form.vessel").setText("Petrel");
        FormParts.named(form, JComboBox.class, "form.rules").setSelectedIndex(3);
        FormParts.named(form, JCheckBox.class, "form.system.12").setSelected(false);
        FormParts.named(form, JCheckBox.class, "form.system.24").setSelected(true);
        FormParts.named(form, JCheckBox.class, "form.system.230").setSelected(true);
    }

    @Test
    void who_backs_out_of_the_questions_still_has_the_sample() throws Exception {
        offer(1);

        assertThat(vessel()).isEqualTo(sample.vessel().name());
    }
}
