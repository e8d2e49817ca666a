package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Message;

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
    void where_a_form_slides_the_reason_stands_below_it_in_sight() throws Exception {
        HeadlessBench.onUi(() -> {
            JPanel page = Forms.page();
            for (int i = 0; i < 60; i++) {
                Forms.line(page, "editor.form.vessel", new JTextField("taken")); // higher than the screen
            }
            Forms.refused(page, Message.of("desk.symbols.no-folder", "first"));
            Forms.fitting(page);
            Forms.refused(page, Message.of("desk.symbols.no-folder", "second"));

            JComponent shown = Forms.fitting(page);

            WrapText why = FormParts.named(shown, WrapText.class, Forms.REFUSAL);
            assertThat(why.getText()).contains("second");
            assertThat(SwingUtilities.getAncestorOfClass(JScrollPane.class, why))
                    .isNull();
            assertThat(FormParts.named(shown, JTextField.class, "form.vessel").getText())
                    .isEqualTo("taken");
            assertThat(shown.getPreferredSize().height).isLessThan(Screens.height());
        });
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
