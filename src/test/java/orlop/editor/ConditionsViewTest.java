package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.drawing.Drawing;
import orlop.drawing.OperatingCondition;

/** The table of operating conditions in the window. */
@Timeout(60)
class ConditionsViewTest extends OnBench {

    ConditionsViewTest() {
        super(TestBoat.drawing());
    }

    @BeforeEach
    void open() throws Exception {
        on.run(CommandId.SHOW_CONDITIONS);
    }

    private Drawing drawing() {
        return on.session().state().drawing();
    }

    private OperatingCondition condition(String id) {
        return drawing().conditions().require(id);
    }

    private JTable table() {
        return (JTable) on.named("conditions.table").orElseThrow();
    }

    private int row(String tag) {
        for (int i = 0; i < table().getRowCount(); i++) {
            if (String.valueOf(table().getValueAt(i, 0)).startsWith(tag + " ")) {
                return i;
            }
        }
        throw new AssertionError(tag);
    }

    /** What a second press begins, and the click that follows when nothing was begun. */
    private void doubleClick(int row, int column) {
        Rectangle cell = table().getCellRect(row, column, false);
        table().changeSelection(row, column, false, false);
        if (!table().editCellAt(row, column, event(MouseEvent.MOUSE_PRESSED, cell))) {
            table().dispatchEvent(event(MouseEvent.MOUSE_CLICKED, cell));
        }
    }

    private MouseEvent event(int id, Rectangle cell) {
        int held = InputEvent.BUTTON1_DOWN_MASK;
        return new MouseEvent(table(), id, 0, held, cell.x + 10, cell.y + 5, 2, false, MouseEvent.BUTTON1);
    }

    @Test
    void a_double_click_turns_over_a_source_and_a_switch_and_types_in_the_share_of_a_load() throws Exception {
        HeadlessBench.onUi(() -> doubleClick(row("GA1"), 3));
        assertThat(table().getValueAt(row("GA1"), 3)).isEqualTo("on");
        assertThat(table().isEditing()).isFalse();

        HeadlessBench.onUi(() -> doubleClick(row("QB1"), 3));
        assertThat(table().getValueAt(row("QB1"), 3)).isEqualTo("closed");

        Drawing before = drawing();
        HeadlessBench.onUi(() -> doubleClick(row("MA2"), 2));
        assertThat(table().isEditing()).isTrue();
        assertThat(Same.object(drawing(), before)).isTrue();
    }

    private void press(String key) {
        table().getActionMap().get("orlop." + key).actionPerformed(null);
    }

    @Test
    void each_condition_has_a_column_and_each_group_a_head() {
        assertThat(table().getColumnCount()).isEqualTo(1 + start.conditions().size());
        assertThat(table().getColumnName(1)).isEqualTo("Weighing anchor");
        assertThat(table().getValueAt(0, 0)).isEqualTo(Texts.of("editor.conditions.source"));
        assertThat(table().isCellEditable(0, 1)).isFalse();
        assertThat(table().getValueAt(row("GA1"), 3)).isEqualTo("off");
        assertThat(table().getValueAt(row("QB1"), 3)).isEqualTo("open");
        assertThat(table().getValueAt(row("MA1"), 2)).isEqualTo("off");
    }

    @Test
    void space_turns_a_cell_over_as_one_step_and_the_balance_in_the_strip_follows() throws Exception {
        ConditionCard card = (ConditionCard) on.named("condition.sail").orElseThrow();
        String before = card.getAccessibleContext().getAccessibleDescription();
        HeadlessBench.onUi(() -> {
            table().changeSelection(row("MA2"), 2, false, false);
            press("SPACE");
        });
        HeadlessBench.onUi(on::paint);

        assertThat(condition("sail").load("MA2").running()).isFalse();
        assertThat(on.session().state().condition()).isEqualTo("sail");
        card = (ConditionCard) on.named("condition.sail").orElseThrow();
        assertThat(card.getAccessibleContext().getAccessibleDescription()).isNotEqualTo(before);
        on.run(CommandId.UNDO);
        assertThat(Same.object(drawing(), start)).isTrue();
    }

    @Test
    void a_share_is_typed_with_a_comma_and_a_refusal_leaves_all_as_it_was() throws Exception {
        HeadlessBench.onUi(() -> table().setValueAt("0,6", row("MA2"), 1));
        assertThat(condition("anchor").load("MA2").simultaneity()).isEqualTo(0.6);

        HeadlessBench.onUi(() -> table().setValueAt("much", row("MA2"), 1));

        assertThat(condition("anchor").load("MA2").simultaneity()).isEqualTo(0.6);
        assertThat(on.session().state().notice()).isNotNull();
    }

    /** A space stands between the number and its sign in a percentage: SI Brochure, 9th edition, 5.4.7 (from memory). */
    @Test
    void a_space_in_what_is_typed_turns_nothing_over() throws Exception {
        HeadlessBench.onUi(() -> {
            table().changeSelection(row("MA2"), 1, false, false);
            table().editCellAt(row("MA2"), 1);
            JTextField cell = (JTextField) table().getEditorComponent();
            cell.setText("80");
            SwingUtilities.processKeyBindings(new KeyEvent(cell, KeyEvent.KEY_PRESSED, 0, 0, KeyEvent.VK_SPACE, ' '));

            assertThat(Same.object(drawing(), start)).isTrue();
            assertThat(table().isEditing()).isTrue();
            cell.setText("80 %");
            assertThat(table().getCellEditor().stopCellEditing()).isTrue();
        });
        assertThat(condition("anchor").load("MA2").simultaneity()).isEqualTo(0.8);
        assertThat(condition("anchor").load("MA2").running()).isTrue();
    }

    @Test
    void what_cannot_be_taken_stays_in_its_cell_until_it_can() throws Exception {
        HeadlessBench.onUi(() -> {
            table().changeSelection(row("MA2"), 1, false, false);
            table().editCellAt(row("MA2"), 1);
            JTextField cell = (JTextField) table().getEditorComponent();
            cell.setText("250 %");

            assertThat(table().getCellEditor().stopCellEditing()).isFalse();
            assertThat(table().isEditing()).isTrue();
            assertThat(cell.getText()).isEqualTo("250 %");
            assertThat(cell.getToolTipText()).contains("from 0 to 1");
            assertThat(Same.object(drawing(), start)).isTrue();

            cell.setText("0,6");
            assertThat(table().getCellEditor().stopCellEditing()).isTrue();
            assertThat(table().isEditing()).isFalse();
        });
        assertThat(condition("anchor").load("MA2").simultaneity()).isEqualTo(0.6);
        on.run(CommandId.UNDO);
        assertThat(Same.object(drawing(), start)).isTrue();
    }

    @Test
    void the_mean_share_is_shown_and_typed_apart() throws Exception {
        HeadlessBench.onUi(() -> {
            ((JToggleButton) on.named("conditions.average").orElseThrow()).doClick();
            table().setValueAt("25 %", row("MA2"), 1);
        });

        assertThat(condition("anchor").load("MA2").average()).isEqualTo(0.25);
        assertThat(condition("anchor").load("MA2").simultaneity()).isEqualTo(1);
        assertThat(table().getValueAt(row("MA2"), 1)).isEqualTo("0.25");
    }

    @Test
    void conditions_are_made_copied_renamed_and_deleted() throws Exception {
        on.answers().line = "Drying out";
        on.run(CommandId.NEW_CONDITION);
        assertThat(table().getColumnCount()).isEqualTo(5);
        String id = on.session().state().condition();
        assertThat(condition(id).name()).isEqualTo("Drying out");

        HeadlessBench.onUi(() -> on.session().showCondition("laid-up"));
        on.answers().line = "Laid up afloat";
        on.run(CommandId.COPY_CONDITION);
        String copy = on.session().state().condition();
        assertThat(condition(copy).switches().get("QB1")).isEqualTo("open");
        on.answers().line = "Laid up ashore";
        on.run(CommandId.RENAME_CONDITION);
        assertThat(condition(copy).title()).isEqualTo("Laid up ashore");
        on.run(CommandId.DELETE_CONDITION);
        assertThat(drawing().conditions().contains(copy)).isFalse();

        for (int i = 0; i < 4; i++) {
            on.run(CommandId.UNDO);
        }
        assertThat(Same.object(drawing(), start)).isTrue();
    }
}
