package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Point;

/** The cards that find a command or an item. */
@Timeout(60)
class LookupTest {
    @SuppressWarnings("NullAway.Init") // set before each test
    private HeadlessBench on;

    @BeforeEach
    void open() throws Exception {
        on = HeadlessBench.open(TestBoat.drawing());
    }

    @AfterEach
    void close() throws Exception {
        on.close();
    }

    private Lookup commands() {
        return on.bench().finds().commands();
    }

    private List<Lookup.Entry> typed(Lookup lookup, String words) throws Exception {
        HeadlessBench.onUi(() -> lookup.type(words));
        return lookup.offered();
    }

    @Test
    void without_words_every_command_and_every_component_of_the_locker_is_offered() throws Exception {
        on.run(CommandId.FIND_COMMAND);

        assertThat(commands().offered()).hasSize(CommandId.values().length + orlop.drawing.Kind.values().length);
    }

    @Test
    void the_name_of_a_command_is_not_cut_for_the_reason_why_it_cannot_be_done() throws Exception {
        on.run(CommandId.FIND_COMMAND);
        Lookup.Entry reopen = typed(commands(), CommandId.WITHDRAW.text()).get(0);
        assertThat(reopen.possible()).isFalse();

        HeadlessBench.onUi(() -> {
            JList<Lookup.Entry> list = list(commands().panel()).orElseThrow();
            Container row =
                    (Container) list.getCellRenderer().getListCellRendererComponent(list, reopen, 0, false, false);
            row.setSize(530, row.getPreferredSize().height);
            row.doLayout();
            JLabel name = (JLabel) row.getComponent(0);
            JLabel why = (JLabel) row.getComponent(1);
            assertThat(name.getText()).isEqualTo(reopen.text());
            assertThat(name.getPreferredSize().width + why.getPreferredSize().width)
                    .as("there is not room for both")
                    .isGreaterThan(530);
            assertThat(name.getWidth()).isGreaterThanOrEqualTo(name.getPreferredSize().width);
            assertThat(why.getX()).isGreaterThanOrEqualTo(name.getX() + name.getWidth());
            assertThat(why.getX() + why.getWidth()).isLessThanOrEqualTo(530);
        });
    }

    @SuppressWarnings("unchecked")
    private static Optional<JList<Lookup.Entry>> list(Container in) {
        for (Component c : in.getComponents()) {
            if (c instanceof JList<?> l) {
                return Optional.of((JList<Lookup.Entry>) l);
            }
            Optional<JList<Lookup.Entry>> deeper = c instanceof Container k ? list(k) : Optional.empty();
            if (deeper.isPresent()) {
                return deeper;
            }
        }
        return Optional.empty();
    }

    @Test
    void words_in_any_order_find_a_command_and_enter_does_it() throws Exception {
        on.run(CommandId.FIND_COMMAND);
        assertThat(typed(commands(), "all findings").get(0).text()).isEqualTo(CommandId.SHOW_FINDINGS.text());

        HeadlessBench.onUi(commands()::take);

        assertThat(on.named("fold-out").orElseThrow().isVisible()).isTrue();
        assertThat(commands().panel().isVisible()).isFalse();
    }

    @Test
    void what_cannot_be_done_says_why_and_is_not_done() throws Exception {
        on.run(CommandId.FIND_COMMAND);
        List<Lookup.Entry> found = typed(commands(), "undo");

        assertThat(found).singleElement().satisfies(e -> {
            assertThat(e.possible()).isFalse();
            assertThat(e.detail()).isEqualTo(Texts.of("editor.why.undo"));
        });
        HeadlessBench.onUi(commands()::take);
        assertThat(commands().panel().isVisible()).isTrue();
    }

    @Test
    void every_command_that_is_not_possible_at_first_has_a_reason_of_its_own() {
        for (CommandList.Line l : new CommandList(on.bench().commands(), k -> {}).lines()) {
            assertThat(l.why()).as(l.text()).isNotEqualTo(Texts.of("editor.why"));
        }
    }

    @Test
    void a_component_is_taken_from_the_locker_by_its_name() throws Exception {
        on.run(CommandId.FIND_COMMAND);
        typed(commands(), "locker isolator");

        HeadlessBench.onUi(commands()::take);

        assertThat(on.bench().canvas().tool()).isInstanceOf(PlaceTool.class);
    }

    @Test
    void an_item_is_found_shown_and_selected() throws Exception {
        Lookup items = on.bench().finds().items();
        on.run(CommandId.FIND);
        assertThat(typed(items, "bilge").get(0).text()).startsWith("MA2");

        HeadlessBench.onUi(items::take);

        assertThat(on.session().state().selection()).isEqualTo(Set.of("MA2"));
    }

    private void findTheBilgePump() throws Exception {
        Lookup items = on.bench().finds().items();
        on.run(CommandId.FIND);
        typed(items, "bilge");
        HeadlessBench.onUi(items::take);
    }

    private double fromTheMiddlePx(SheetCanvas canvas) {
        Point at = on.session()
                .state()
                .drawing()
                .components()
                .require("MA2")
                .place()
                .at();
        return canvas.viewport().toView(at.xMm(), at.yMm()).distance(canvas.getWidth() / 2.0, canvas.getHeight() / 2.0);
    }

    @Test
    void what_is_found_comes_so_near_that_it_can_be_read() throws Exception {
        SheetCanvas canvas = on.bench().canvas();
        HeadlessBench.onUi(() -> canvas.view(Viewport.fitting(3_000, 3_000, canvas.getWidth(), canvas.getHeight())));
        assertThat(canvas.viewport().legible()).isFalse();
        findTheBilgePump();

        assertThat(canvas.viewport().legible()).isTrue();
        assertThat(fromTheMiddlePx(canvas)).isLessThan(60);
    }

    @Test
    void what_is_found_out_of_sight_comes_to_the_middle() throws Exception {
        SheetCanvas canvas = on.bench().canvas();
        HeadlessBench.onUi(() -> canvas.view(new Viewport(4, 0, 0).moved(-4_000, -4_000)));
        findTheBilgePump();

        assertThat(canvas.viewport().pxPerMm()).isEqualTo(4);
        assertThat(fromTheMiddlePx(canvas)).isLessThan(60);
    }

    @Test
    void what_is_found_and_can_be_read_already_moves_nothing() throws Exception {
        Viewport before = on.bench().canvas().viewport();
        assertThat(before.legible()).isTrue();
        findTheBilgePump();

        assertThat(on.bench().canvas().viewport()).isEqualTo(before);
    }

    @Test
    void the_list_of_keys_is_made_of_the_same_lines() throws Exception {
        on.run(CommandId.KEYS);
        assertThat(on.answers().told).containsExactly(Texts.of("editor.keys.title"));
        assertThat(new CommandList(on.bench().commands(), k -> {}).lines())
                .anySatisfy(l -> assertThat(l.keys()).isEqualTo("Ctrl+K"));
    }

    @Test
    void the_list_of_keys_is_wide_enough_for_every_line() throws Exception {
        on.run(CommandId.KEYS);
        JScrollPane scroll = (JScrollPane) Objects.requireNonNull(on.answers().shown);
        JTable table = (JTable) scroll.getViewport().getView();

        int room = 0;
        for (int column = 0; column < table.getColumnCount(); column++) {
            int wide = table.getColumnModel().getColumn(column).getPreferredWidth();
            room += wide;
            for (int row = 0; row < table.getRowCount(); row++) {
                assertThat(table.prepareRenderer(table.getCellRenderer(row, column), row, column)
                                .getPreferredSize()
                                .width)
                        .as(String.valueOf(table.getValueAt(row, column)))
                        .isLessThanOrEqualTo(wide);
            }
        }
        assertThat(scroll.getPreferredSize().width)
                .isGreaterThanOrEqualTo(Math.min(room, Screens.width() - Look.px(60)));
    }
}
