package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.accessibility.AccessibleContext;
import javax.swing.JButton;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.Sample;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.Sheet;

/** Whoever does not see the window is told what everything in it is. */
@Timeout(120)
class AccessibilityTest {
    @ParameterizedTest
    @ValueSource(strings = {"SHOW_PATH", "SHOW_WORKING", "SHOW_FINDINGS", "SHOW_CONDITIONS", "SHOW_REGISTER"})
    void no_part_of_the_window_and_no_item_of_the_sheet_is_without_name_or_role(String page) throws Exception {
        Drawing start = Sample.of("pilot-cutter");
        HeadlessBench on = HeadlessBench.open(start);
        on.run(CommandId.valueOf(page));
        for (String item : new String[] {"", "GB1", "W1"}) {
            HeadlessBench.onUi(() -> on.session().select(item.isEmpty() ? Set.of() : Set.of(item)));
            HeadlessBench.onUi(on::paint);
            HeadlessBench.onUi(() -> {
                Unnamed u = Unnamed.in(on.bench().panel());
                assertThat(u.found()).as(item).isEmpty();
                assertThat(u.met()).isGreaterThan(100);
            });
        }
        on.close();
    }

    @Test
    void no_item_of_the_menus_and_of_the_cards_that_find_is_without_name_or_role() throws Exception {
        HeadlessBench on = HeadlessBench.open(TestBoat.drawing());
        HeadlessBench.onUi(() -> {
            JMenuBar bar = Menus.bar(on.bench().commands(), java.util.List::of, p -> {}, k -> {});
            Unnamed u = Unnamed.in(bar);
            assertThat(u.found()).isEmpty();
            assertThat(u.met()).isGreaterThan(CommandId.values().length);
            assertThat(Unnamed.in(on.bench().finds().commands().panel()).found())
                    .isEmpty();
            assertThat(Unnamed.in(on.bench().finds().items().panel()).found()).isEmpty();
        });
        on.close();
    }

    @Test
    void the_items_of_a_sheet_are_met_one_by_one_by_their_tags() throws Exception {
        HeadlessBench on = HeadlessBench.open(Sample.of("pilot-cutter"));
        HeadlessBench.onUi(() -> {
            Drawing d = on.session().state().drawing();
            for (Sheet sheet : d.sheets().values()) {
                on.session().showSheet(sheet.id());
                on.paint();
                AccessibleContext canvas = on.bench().canvas().getAccessibleContext();
                StringBuilder said = new StringBuilder();
                for (int i = 0; i < canvas.getAccessibleChildrenCount(); i++) {
                    said.append(canvas.getAccessibleChild(i)
                                    .getAccessibleContext()
                                    .getAccessibleName())
                            .append('\n');
                }
                for (orlop.drawing.Component c : d.components().values()) {
                    if (c.place().sheet().equals(sheet.id())) {
                        assertThat(said).as(sheet.id()).contains(c.id());
                    }
                }
                for (Cable w : d.cables().values()) {
                    if (d.components()
                            .require(w.from().component())
                            .place()
                            .sheet()
                            .equals(sheet.id())) {
                        assertThat(said).as(sheet.id()).contains(w.id());
                    }
                }
            }
        });
        on.close();
    }

    @Test
    void no_form_is_without_name_or_role() throws Exception {
        HeadlessBench on = HeadlessBench.open(Sample.of("pilot-cutter"));
        List<String> forms = new ArrayList<>();
        List<String> found = new ArrayList<>();
        HeadlessBench.onUi(() -> {
            on.answers().filling = form -> {
                Unnamed u = Unnamed.in(form);
                found.addAll(u.found());
                forms.add(form.getComponentCount() + " parts, " + u.met() + " met");
            };
            on.session().select(Set.of("GB1"));
            for (CommandId id : List.of(
                    CommandId.NEW,
                    CommandId.EXPORT_SHEETS,
                    CommandId.PREFERENCES,
                    CommandId.REPEAT,
                    CommandId.SHEET_DETAILS,
                    CommandId.MOVE_TO_SHEET,
                    CommandId.SYSTEMS,
                    CommandId.VESSEL)) {
                on.bench().commands().get(id).run();
            }
            new NoteCommands(on.session(), on.bench().canvas(), on.answers()).place(100, 100);
        });
        assertThat(found).isEmpty();
        assertThat(forms).hasSize(9).noneMatch(f -> f.endsWith(" 0 met"));
        on.close();
    }

    @Test
    void no_row_of_the_locker_and_no_line_of_the_menus_on_the_sheet_is_without_name_or_role() throws Exception {
        HeadlessBench on = HeadlessBench.open(Sample.of("pilot-cutter"));
        HeadlessBench.onUi(() -> {
            int rows = 0;
            for (Group g : Group.values()) {
                Unnamed u = Unnamed.in(
                        new LockerDrawer(on.bench().canvas(), on.bench().locker(), g).panel());
                assertThat(u.found()).as(g.word()).isEmpty();
                rows += LockerKeys.rows(g).size();
                assertThat(u.met()).isGreaterThan(LockerKeys.rows(g).size());
            }
            assertThat(rows).isEqualTo(Kind.values().length);
            Spot middle = Spot.at(200, 150, on.bench().canvas().viewport());
            for (Set<String> items : List.of(Set.<String>of(), Set.of("GB1"), Set.of("W1"), Set.of("GB1", "W1"))) {
                on.session().select(items);
                Unnamed u = Unnamed.in(on.bench().menus().menu(middle));
                assertThat(u.found()).as(items.toString()).isEmpty();
                assertThat(u.met()).isGreaterThan(4);
            }
        });
        on.close();
    }

    @Test
    void a_nameless_button_and_a_column_without_a_head_would_be_found() throws Exception {
        HeadlessBench.onUi(() -> {
            JPanel p = new JPanel();
            p.add(new JButton());
            assertThat(Unnamed.in(p).found()).hasSize(1);
            JTable headless = new JTable(new Object[][] {{"said"}}, new Object[] {" "});
            headless.getAccessibleContext().setAccessibleName("a table");
            p.removeAll();
            p.add(headless);
            assertThat(Unnamed.in(p).found()).as("a column without a head").hasSize(1);
        });
    }
}
