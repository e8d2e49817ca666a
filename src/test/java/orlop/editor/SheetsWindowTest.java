package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import org.junit.jupiter.api.Test;
import orlop.desk.Same;
import orlop.desk.Sample;
import orlop.desk.SheetEdits;
import orlop.drawing.Component;
import orlop.drawing.Kind;
import orlop.testing.WindowTest;

/** Work on a drawing of several sheets, in a real window. */
@WindowTest
class SheetsWindowTest extends InWindow {
    SheetsWindowTest() {
        super(Sample.of("pilot-cutter"));
    }

    @Test
    void a_double_click_on_a_sheet_link_goes_to_its_other_end() {
        Component link = start.components().stream()
                .filter(c -> c.kind() == Kind.SHEET_LINK && c.place().sheet().equals("1"))
                .findFirst()
                .orElseThrow();
        Component mate = SheetEdits.mate(start, link).orElseThrow();

        on.doubleClick(on.middle(link.id()));

        on.until("the other sheet", () -> on.state().sheet().equals(mate.place().sheet()));
        assertThat(on.state().selection()).containsExactly(mate.id());
        assertThat(on.middle(mate.id())
                        .distance(on.canvas().getWidth() / 2.0, on.canvas().getHeight() / 2.0))
                .isLessThan(30);
    }

    @Test
    void sheets_are_worked_in_the_register_and_all_of_it_is_undone() {
        on.press(KeyEvent.VK_R, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        on.frame().table("register.table").requireRowCount(4);
        on.frame().button("button.new-sheet").click();
        on.until("a fifth sheet", () -> on.state().sheet().equals("5"));
        on.frame()
                .table("register.table")
                .enterValue(org.assertj.swing.data.TableCell.row(4).column(1), "Spare circuits");
        on.until("its title", () -> on.drawing().sheets().require("5").title().equals("Spare circuits"));
        on.frame().button("button.sheet-earlier").click();
        on.frame().table("register.table").requireSelectedRows(3);
        on.frame().button("button.delete-sheet").click();
        on.until("four sheets", () -> on.drawing().sheets().size() == 4);

        on.robot().focusAndWaitForFocusGain(on.canvas());
        for (int i = 0; i < 9 && on.state().undo() != null; i++) {
            on.ctrl(KeyEvent.VK_Z);
        }

        on.until("the first drawing", () -> Same.object(on.drawing(), start));
    }

    @Test
    void a_cell_of_the_conditions_is_turned_over_by_space_and_typed_with_a_comma() {
        on.press(KeyEvent.VK_O, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        var table = on.frame().table("conditions.table");
        int row = row("MA1");
        table.selectCell(org.assertj.swing.data.TableCell.row(row).column(1));
        String id = start.conditions().stream().findFirst().orElseThrow().id();
        boolean was = start.conditions().require(id).load("MA1").running();

        on.press(KeyEvent.VK_SPACE);
        on.until(
                "it is turned over",
                () -> on.drawing().conditions().require(id).load("MA1").running() != was);
        assertThat(on.state().condition()).isEqualTo(id);
        on.type("0,4\n");
        on.until(
                "its share",
                () -> on.drawing().conditions().require(id).load("MA1").simultaneity() == 0.4);
    }

    private int row(String tag) {
        var table = on.frame().table("conditions.table");
        String[][] contents = table.contents();
        for (int i = 0; i < contents.length; i++) {
            if (contents[i][0].startsWith(tag + " ")) {
                return i;
            }
        }
        throw new AssertionError(tag);
    }

    @Test
    void no_part_of_the_real_window_is_without_name_or_role() {
        on.press(KeyEvent.VK_F, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        Unnamed u = org.assertj.swing.edt.GuiActionRunner.execute(
                () -> Unnamed.in(on.window().frame().getRootPane()));

        assertThat(u.found()).isEmpty();
        assertThat(u.met()).isGreaterThan(200);
    }
}
