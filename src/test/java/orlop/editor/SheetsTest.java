package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Set;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JViewport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.RecordParts;
import orlop.desk.Same;
import orlop.desk.Sample;
import orlop.desk.SheetEdits;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;

/** The drawing register in the window. */
@Timeout(120)
class SheetsTest {
    private final Drawing start = Sample.of("pilot-cutter");

    @SuppressWarnings("NullAway.Init") // set before each test
    private HeadlessBench on;

    @BeforeEach
    void open() throws Exception {
        on = HeadlessBench.open(start);
        on.run(CommandId.SHOW_REGISTER);
    }

    @AfterEach
    void close() throws Exception {
        on.close();
    }

    private Drawing drawing() {
        return on.session().state().drawing();
    }

    private String shown() {
        return on.session().state().sheet();
    }

    private List<String> register() {
        return drawing().sheets().stream().map(Sheet::id).toList();
    }

    private JTable table() {
        return (JTable) on.named("register.table").orElseThrow();
    }

    @Test
    void the_line_that_is_chosen_is_the_sheet_that_is_shown() throws Exception {
        assertThat(table().getRowCount()).isEqualTo(start.sheets().size());
        HeadlessBench.onUi(() -> table().setRowSelectionInterval(2, 2));
        assertThat(shown()).isEqualTo("3");

        on.run(CommandId.NEXT_SHEET);

        assertThat(table().getSelectedRow()).isEqualTo(3);
    }

    @Test
    void a_longer_title_has_its_room_in_the_strip_above_the_sheet() throws Exception {
        Sheet first = drawing().sheets().stream().findFirst().orElseThrow();
        Sheet longer =
                RecordParts.with(first, "title", "A much longer title than it was before, and yet there is room");
        HeadlessBench.onUi(() -> {
            on.session().apply(SheetEdits.change(longer));
            on.paint();
        });

        JComponent title = on.named("sheet.title").orElseThrow();
        assertThat(title.getWidth()).isGreaterThanOrEqualTo(title.getPreferredSize().width);
    }

    /** As on a screen of 1366 dots at 200 and at 300 percent. */
    @ParameterizedTest
    @ValueSource(ints = {683, 455})
    void no_heading_is_cut_in_a_narrow_window(int width) throws Exception {
        HeadlessBench.onUi(() -> {
            on.bench().panel().setSize(width, 384);
            on.paint();
            for (int i = 0; i < table().getColumnCount(); i++) {
                var heading = table().getTableHeader()
                        .getDefaultRenderer()
                        .getTableCellRendererComponent(table(), table().getColumnName(i), false, false, -1, i);
                assertThat(table().getColumnModel().getColumn(i).getWidth())
                        .as(table().getColumnName(i))
                        .isGreaterThanOrEqualTo(heading.getPreferredSize().width);
            }
            var seen = (JViewport) table().getParent();
            int all = table().getColumnModel().getTotalColumnWidth();
            assertThat(all <= seen.getWidth() || table().getWidth() == all)
                    .as("what has no room can be slid to")
                    .isTrue();
            int date = 6;
            var cell = table().prepareRenderer(table().getCellRenderer(0, date), 0, date);
            assertThat(table().getColumnModel().getColumn(date).getWidth())
                    .isGreaterThanOrEqualTo(cell.getPreferredSize().width);
        });
    }

    @Test
    void a_cell_is_changed_as_one_step() throws Exception {
        HeadlessBench.onUi(() -> {
            table().setValueAt("Batteries and bars", 0, 1);
            table().setValueAt(Texts.of("editor.size.A2"), 0, 2);
        });

        Sheet first = drawing().sheets().require("1");
        assertThat(first.title()).isEqualTo("Batteries and bars");
        assertThat(first.size()).isEqualTo(SheetSize.A2);
        on.run(CommandId.UNDO);
        on.run(CommandId.UNDO);
        assertThat(Same.object(drawing(), start)).isTrue();
    }

    @Test
    void a_sheet_is_added_moved_up_and_deleted_unasked_while_it_is_empty() throws Exception {
        on.run(CommandId.NEW_SHEET);
        assertThat(shown()).isEqualTo("5");
        assertThat(drawing().sheets().require("5").number()).isEqualTo("005");
        assertThat(drawing().sheets().require("5").title()).isEqualTo("Sheet 5");
        assertThat(table().getSelectedColumn())
                .as("what is typed then is its title")
                .isEqualTo(1);
        on.run(CommandId.SHEET_EARLIER);
        assertThat(register()).containsExactly("1", "2", "3", "5", "4");

        on.run(CommandId.DELETE_SHEET);

        assertThat(register()).containsExactly("1", "2", "3", "4");
        assertThat(on.answers().asked).isEmpty();
    }

    @Test
    void a_sheet_that_bears_something_is_deleted_only_after_a_question() throws Exception {
        on.run(CommandId.DELETE_SHEET);
        assertThat(Same.object(drawing(), start)).isTrue();
        assertThat(on.answers().asked).singleElement().asString().contains("26");

        on.answers().choice = 0;
        on.run(CommandId.DELETE_SHEET);

        assertThat(register()).containsExactly("2", "3", "4");
        assertThat(shown()).isEqualTo("2");
        on.run(CommandId.UNDO);
        assertThat(Same.object(drawing(), start)).isTrue();
    }

    @Test
    void the_selection_moves_to_the_sheet_that_is_chosen_and_is_shown_there() throws Exception {
        HeadlessBench.onUi(() -> on.session().select(Set.of("MA1")));
        on.answers().agree = true;
        on.answers().filling = form -> {
            JComboBox<?> box = FormParts.find(form, JComboBox.class);
            box.setSelectedIndex(1);
        };

        on.run(CommandId.MOVE_TO_SHEET);

        assertThat(drawing().components().require("MA1").place().sheet()).isEqualTo("3");
        assertThat(shown()).isEqualTo("3");
        assertThat(on.session().state().selection()).containsExactly("MA1");
        assertThat(on.bench().canvas().scene().orElseThrow().items())
                .anyMatch(i -> i.subject().equals("MA1"));
    }

    @Test
    void a_sheet_link_is_followed_to_its_other_end_which_is_put_into_the_middle() throws Exception {
        Component link = start.components().stream()
                .filter(c -> c.kind() == Kind.SHEET_LINK
                        && c.place().sheet().equals("1")
                        && SheetEdits.mate(start, c).isPresent())
                .findFirst()
                .orElseThrow();
        Component mate = SheetEdits.mate(start, link).orElseThrow();
        HeadlessBench.onUi(() -> on.session().select(Set.of(link.id())));

        on.run(CommandId.FOLLOW_LINK);

        assertThat(shown()).isEqualTo(mate.place().sheet());
        assertThat(on.session().state().selection()).containsExactly(mate.id());
        SheetCanvas canvas = on.bench().canvas();
        Point2D at = canvas.viewport()
                .toView(mate.place().at().xMm(), mate.place().at().yMm());
        assertThat(Math.abs(at.getX() - canvas.getWidth() / 2.0)).isLessThan(60);
        assertThat(Math.abs(at.getY() - canvas.getHeight() / 2.0)).isLessThan(60);
    }

    @Test
    void a_component_without_an_other_end_is_not_followed() throws Exception {
        HeadlessBench.onUi(() -> on.session().select(Set.of("MA1")));

        assertThat(on.bench().commands().get(CommandId.FOLLOW_LINK).why()).isNotBlank();
    }

    @Test
    void the_selection_moves_to_a_sheet_that_is_made_for_it_in_one_step() throws Exception {
        HeadlessBench.onUi(() -> on.session().select(Set.of("MA1")));
        on.answers().agree = true;
        on.answers().filling = form -> {
            JComboBox<?> box = FormParts.find(form, JComboBox.class);
            box.setSelectedIndex(box.getItemCount() - 1);
        };

        on.run(CommandId.MOVE_TO_SHEET);

        String fresh = register().get(4);
        assertThat(shown()).isEqualTo(fresh);
        assertThat(drawing().components().require("MA1").place().sheet()).isEqualTo(fresh);
        on.run(CommandId.UNDO);
        assertThat(Same.object(drawing(), start)).isTrue();
    }

    @Test
    void a_sheet_gets_larger_paper_in_one_step_until_there_is_none() throws Exception {
        on.run(CommandId.LARGER_PAPER);
        assertThat(drawing().sheets().require("1").size()).isEqualTo(SheetSize.A2);
        on.run(CommandId.LARGER_PAPER);
        assertThat(drawing().sheets().require("1").size()).isEqualTo(SheetSize.A1);
        assertThat(on.bench().commands().get(CommandId.LARGER_PAPER).why()).isNotBlank();
        double whole = 841 * on.bench().canvas().viewport().pxPerMm();
        assertThat(whole).as("and is seen whole").isLessThan(on.bench().canvas().getWidth());
        on.run(CommandId.UNDO);
        on.run(CommandId.UNDO);
        assertThat(Same.object(drawing(), start)).isTrue();
    }

    @Test
    void what_has_no_room_when_it_is_drawn_from_the_sources_is_selected_and_the_way_out_is_said() throws Exception {
        HeadlessBench.onUi(() -> {
            Drawing small = start.with(RecordParts.with(start.sheets().require("1"), "size", SheetSize.A4));
            on.session().open(small, null);
        });
        on.run(CommandId.FROM_SOURCES);

        Set<String> beyond = SheetEdits.beyond(drawing(), "1");
        assertThat(beyond).isNotEmpty();
        assertThat(on.session().state().selection()).isEqualTo(beyond);
        assertThat(on.session().state().notice()).isEqualTo(Message.of("editor.say.beyond", beyond.size(), "A4"));
        HeadlessBench.onUi(() -> on.session().select(Set.of()));
        on.run(CommandId.LARGER_PAPER);
        on.run(CommandId.FROM_SOURCES);
        assertThat(SheetEdits.beyond(drawing(), "1")).hasSizeLessThan(beyond.size());
    }

    @Test
    void a_new_sheet_asks_nothing_and_its_command_does_not_say_that_it_would() throws Exception {
        on.run(CommandId.NEW_SHEET);

        assertThat(on.answers().asked).isEmpty();
        assertThat(on.session().state().drawing().sheets().size())
                .isEqualTo(start.sheets().size() + 1);
        assertThat(Texts.of("editor.command.new-sheet")).doesNotEndWith("…");
    }
}
