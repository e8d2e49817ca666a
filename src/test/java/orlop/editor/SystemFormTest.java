package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.drawing.Earthing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;

/** Electrical systems added, changed and taken away by their form. */
@Timeout(60)
class SystemFormTest extends OnBench {
    SystemFormTest() {
        super(TestBoat.drawing());
    }

    @BeforeEach
    void agree() {
        on.answers().agree = true;
    }

    private void fill(Consumer<JComponent> by) throws Exception {
        on.answers().filling = by;
        on.run(CommandId.SYSTEMS);
    }

    private static void type(JComponent form, String field, String text) {
        FormParts.named(form, JTextField.class, "form." + field).setText(text);
    }

    private static JComboBox<?> box(JComponent form, String field) {
        return FormParts.named(form, JComboBox.class, "form." + field);
    }

    private ElectricalSystem system(String id) {
        return on.session().state().drawing().systems().require(id);
    }

    private static void fresh(JComponent form) {
        box(form, "which").setSelectedIndex(box(form, "which").getItemCount() - 1);
    }

    @Test
    void figures_stand_there_as_a_person_would_type_them_and_direct_current_has_no_frequency() throws Exception {
        fill(form -> {
            box(form, "which").setSelectedIndex(0);
            assertThat(system("24").nature()).isEqualTo(Nature.DC);
            assertThat(FormParts.named(form, JTextField.class, "form.highest").getText())
                    .isEqualTo("28.8 V");
            assertThat(FormParts.named(form, JTextField.class, "form.frequency").getText())
                    .isEmpty();
        });
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }

    @Test
    void a_new_system_gets_what_is_usual_where_nothing_was_typed() throws Exception {
        fill(form -> {
            fresh(form);
            type(form, "system", "120");
            box(form, "nature")
                    .setSelectedIndex(java.util.List.of(Nature.values()).indexOf(Nature.AC1));
            type(form, "volts", "120");
            type(form, "frequency", "60 Hz");
            box(form, "earthing").setSelectedIndex(2);
        });

        ElectricalSystem s = system("120");
        assertThat(s.nature()).isEqualTo(Nature.AC1);
        assertThat(s.nominalV()).isEqualTo(120);
        assertThat(s.highestV())
                .isEqualTo(ElectricalSystem.of("x", Nature.AC1, 120).highestV());
        assertThat(s.frequencyHz()).isEqualTo(60);
        assertThat(s.earthing()).isEqualTo(Earthing.NEUTRAL_BONDED);
        assertThat(s.vitalDropPercent()).isNull();
        on.run(CommandId.UNDO);
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }

    @Test
    void the_system_that_is_chosen_is_changed_and_keeps_its_nature_while_it_is_used() throws Exception {
        boolean[] free = {true, true, true};
        fill(form -> {
            box(form, "which").setSelectedIndex(0);
            free[0] = box(form, "nature").isEnabled();
            free[1] = FormParts.named(form, JCheckBox.class, "form.away").isEnabled();
            free[2] = FormParts.named(form, JTextField.class, "form.frequency").isEnabled();
            type(form, "highest", "29,2 V");
            type(form, "vital", "3 %");
            box(form, "earthing").setSelectedIndex(1);
        });

        assertThat(free).containsExactly(false, false, false);
        assertThat(system("24").highestV()).isEqualTo(29.2);
        assertThat(system("24").vitalDropPercent()).isEqualTo(3);
        assertThat(system("24").earthing()).isEqualTo(Earthing.INSULATED);
        assertThat(system("24").nominalV()).isEqualTo(24);
    }

    @Test
    void what_cannot_be_taken_is_said_and_nothing_is_changed() throws Exception {
        fill(form -> {
            fresh(form);
            type(form, "system", "24");
            type(form, "volts", "24");
        });
        fill(form -> {
            fresh(form);
            type(form, "system", "48");
        });
        fill(form -> {
            fresh(form);
            type(form, "system", "48");
            type(form, "volts", "forty-eight");
        });

        assertThat(on.answers().told).hasSize(3);
        assertThat(on.answers().told.get(0)).contains("24");
        assertThat(on.answers().told.get(1)).contains("nominal voltage");
        assertThat(on.answers().told.get(2)).contains("forty-eight");
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }

    @Test
    void a_system_that_nothing_belongs_to_is_taken_away() throws Exception {
        fill(form -> {
            fresh(form);
            type(form, "system", "48");
            type(form, "volts", "48");
        });
        assertThat(system("48").nominalV()).isEqualTo(48);

        fill(form -> {
            box(form, "which").setSelectedIndex(box(form, "which").getItemCount() - 2);
            FormParts.named(form, JCheckBox.class, "form.away").setSelected(true);
        });

        assertThat(on.session().state().drawing().systems().contains("48")).isFalse();
    }

    @Test
    void a_form_that_is_agreed_to_untouched_changes_nothing() throws Exception {
        fill(form -> {});
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
        fill(SystemFormTest::fresh);
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
        assertThat(on.answers().told).isEmpty();
    }
}
