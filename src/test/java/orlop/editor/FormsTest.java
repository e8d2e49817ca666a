package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A form that can't be taken is asked again, with what was typed and with the reason. */
@Timeout(60)
class FormsTest extends OnBench {
    FormsTest() {
        super(TestBoat.drawing());
    }

    @Test
    void what_was_typed_stays_and_the_reason_stands_below_it() throws Exception {
        on.answers().agree = true;
        on.answers().patience = 2;
        int[] times = {0};
        on.answers().filling = form -> {
            JTextField ambient = FormParts.named(form, JTextField.class, "form.ambient");
            if (times[0]++ == 0) {
                ambient.setText("warm");
            } else {
                assertThat(ambient.getText()).isEqualTo("warm");
                assertThat(FormParts.named(form, WrapText.class, Forms.REFUSAL).getText())
                        .contains("warm");
                ambient.setText("38");
            }
        };

        on.run(CommandId.VESSEL);

        assertThat(times[0]).isEqualTo(2);
        assertThat(on.session().state().drawing().vessel().ambientC()).isEqualTo(38);
    }

    @Test
    void a_tag_that_is_taken_is_asked_for_again_with_the_reason() throws Exception {
        HeadlessBench.onUi(() -> on.session().select(Set.of("MA2")));
        on.answers().patience = 2;
        on.answers().line = "GB1";

        on.run(CommandId.RENAME);

        assertThat(on.answers().asked.stream().filter(a -> a.startsWith("line")))
                .hasSizeGreaterThanOrEqualTo(2)
                .element(1)
                .asString()
                .contains("GB1");
        assertThat(on.session().state().drawing()).isSameAs(start);
    }
}
