package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.desk.Same;

class CardTest extends OnBench {

    CardTest() {
        super(TestBoat.drawing());
    }

    @Test
    void what_is_typed_wrongly_stays_with_the_reason_beside_it_and_comes_back() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("W10"));
            type("field.lengthM", "1 000");

            assertThat(on.named("error.lengthM"))
                    .get()
                    .satisfies(e -> assertThat(e.isVisible()).isTrue());
            assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
            on.session().select(Set.of("W12"));
            on.session().select(Set.of("W10"));
            assertThat(field("field.lengthM").getText()).isEqualTo("1 000");
            assertThat(on.named("error.lengthM").orElseThrow().isVisible()).isTrue();

            type("field.lengthM", "18,5");
            assertThat(on.session().state().drawing().cables().require("W10").lengthM())
                    .isEqualTo(18.5);
            assertThat(field("field.lengthM").getText()).isEqualTo("18.5 m");
            assertThat(on.named("error.lengthM").orElseThrow().isVisible()).isFalse();
        });
    }

    @Test
    void a_record_that_refuses_a_value_says_so_in_the_words_of_the_card() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("W10"));
            type("field.construction.insulationC", "900");

            WrapText error =
                    (WrapText) on.named("error.construction.insulationC").orElseThrow();
            assertThat(error.getText()).startsWith("Insulation rated must be from 40 to 250");
        });
    }

    @Test
    void auto_leaves_the_area_to_orlop() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("W10"));
            type("field.areaMm2", "auto");

            assertThat(on.session().state().drawing().cables().require("W10").auto())
                    .isTrue();
            type("field.areaMm2", "AWG 8");
            assertThat(on.session().state().drawing().cables().require("W10").areaMm2())
                    .isBetween(8.3, 8.4);
        });
    }

    @Test
    void a_device_without_a_rating_is_not_said_to_guard_without_a_word() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(java.util.Set.of("W10"));
            var rows = ResultRows.of(on.session().state(), "W10");
            String guard = value(rows);
            assertThat(guard).startsWith("FC").doesNotContain("rating");

            on.session().apply(orlop.desk.CardEdits.set(guard, "particulars.ratingA", null, ""));
            assertThat(value(ResultRows.of(on.session().state(), "W10"))).isEqualTo(guard + ", rating not known");
        });
    }

    private static String value(java.util.List<ResultRows.Row> rows) {
        return rows.stream()
                .filter(r -> r.label().equals("protected-by"))
                .map(ResultRows.Row::value)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_card_of_what_is_selected_on_the_sheet_is_in_sight_and_a_note_that_is_clicked_stays_where_it_is()
            throws Exception {
        javax.swing.JScrollBar[] bar = {null};
        HeadlessBench.onUi(() -> {
            on.paint();
            bar[0] = FormParts.find(on.named("margin").orElseThrow(), javax.swing.JScrollPane.class)
                    .getVerticalScrollBar();
            bar[0].setValue(150);
            on.session().select(java.util.Set.of("MA2"));
        });
        HeadlessBench.onUi(() -> assertThat(bar[0].getValue()).isZero());
        HeadlessBench.onUi(() -> {
            on.paint();
            bar[0].setValue(150);
            var note = on.named("note.2").orElseThrow();
            note.dispatchEvent(new java.awt.event.MouseEvent(
                    note, java.awt.event.MouseEvent.MOUSE_CLICKED, 0, 0, 30, 8, 1, false, 1));
        });
        HeadlessBench.onUi(() -> {
            assertThat(on.session().state().selection()).isNotEqualTo(java.util.Set.of("MA2"));
            assertThat(bar[0].getValue()).isPositive();
        });
    }

    @Test
    void the_card_says_of_which_condition_its_positions_are() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().showCondition("sail");
            on.session().select(Set.of("QB1"));
            on.session().showCondition("anchor");

            assertThat(((javax.swing.JLabel) on.named("card.condition").orElseThrow()).getText())
                    .contains("Weighing anchor");
        });
    }

    private javax.swing.JTextField field(String name) {
        return (javax.swing.JTextField) on.named(name).orElseThrow();
    }

    private void type(String name, String text) {
        javax.swing.JTextField f = field(name);
        f.setText(text);
        f.postActionEvent();
    }

    @Test
    void beside_a_box_stands_nothing_that_could_be_what_a_tick_means() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("MA1"));
            javax.swing.JCheckBox vital =
                    (javax.swing.JCheckBox) on.named("field.particulars.vital").orElseThrow();
            for (int i = 0; i < 2; i++) {
                assertThat(vital.getText()).isEmpty();
                assertThat(vital.getAccessibleContext().getAccessibleName()).isEqualTo("vital");
                boolean was = vital.isSelected();
                vital.doClick();
                vital = (javax.swing.JCheckBox)
                        on.named("field.particulars.vital").orElseThrow();
                assertThat(vital.isSelected()).isNotEqualTo(was);
            }
        });
    }
}
