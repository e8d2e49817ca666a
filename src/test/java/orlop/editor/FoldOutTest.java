package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.PathProfile;
import orlop.scene.Scene;

@Timeout(60)
@SuppressWarnings("NullAway") // a null fails the test
class FoldOutTest extends OnBench {
    FoldOutTest() {
        super(TestBoat.drawing());
    }

    private void run(CommandId id) throws Exception {
        HeadlessBench.onUi(() -> on.bench().commands().get(id).run());
        HeadlessBench.onUi(on::paint);
    }

    private boolean out() {
        return on.named("fold-out").orElseThrow().isVisible();
    }

    private JTable table() {
        return (JTable) on.named("findings").orElseThrow();
    }

    @Test
    void a_page_folds_out_and_away_by_the_same_command() throws Exception {
        assertThat(out()).isFalse();
        run(CommandId.SHOW_PATH);
        assertThat(out()).isTrue();
        run(CommandId.SHOW_FINDINGS);
        assertThat(out()).isTrue();
        run(CommandId.SHOW_FINDINGS);
        assertThat(out()).isFalse();
    }

    @Test
    void the_path_of_the_selected_load_is_summed_up_in_its_title() throws Exception {
        run(CommandId.SHOW_PATH);
        HeadlessBench.onUi(() -> on.session().select(Set.of("MA1")));
        HeadlessBench.onUi(on::paint);

        String title = ((PathView) on.named("path").orElseThrow()).title();

        assertThat(title).contains("GB1 to MA1", " m, drop ", "permitted");
    }

    @Test
    void all_findings_stand_in_the_table_and_can_be_searched() throws Exception {
        run(CommandId.SHOW_FINDINGS);
        int all =
                Objects.requireNonNull(on.session().state().review()).findings().size();

        assertThat(table().getRowCount()).isEqualTo(all).isGreaterThan(1);
        HeadlessBench.onUi(() -> ((JTextField) on.named("filter").orElseThrow()).setText(TestBoat.UNGUARDED));
        assertThat(table().getRowCount()).isBetween(1, all - 1);
        HeadlessBench.onUi(() -> ((JTextField) on.named("filter").orElseThrow()).setText("no such words"));
        assertThat(table().getRowCount()).isZero();
    }

    /** A large sheet is laid out behind the window, so that its numbers come later than its findings. */
    @Test
    void numbers_that_come_later_are_shown_when_they_come() throws Exception {
        HeadlessBench.onUi(() -> {
            AtomicReference<Optional<Scene>> scene = new AtomicReference<>(Optional.empty());
            FindingsTable late = new FindingsTable(on.session(), s -> scene.get(), f -> {});
            JTable lines = FormParts.named(late.panel(), JTable.class, "findings");
            assertThat(lines.getValueAt(0, 0)).isNull();

            scene.set(on.bench().canvas().scene());
            late.refresh();

            assertThat(lines.getValueAt(0, 0)).isNotNull();
        });
    }

    @Test
    void a_finding_has_the_number_in_the_table_that_stands_on_the_sheet() throws Exception {
        run(CommandId.SHOW_FINDINGS);
        HeadlessBench.onUi(() -> {
            var state = on.session().state();
            var scene = on.bench().canvas().scene().orElseThrow();
            var here = FindingPlaces.ofSheet(state, scene);
            assertThat(here).hasSizeGreaterThan(2);
            for (int row = 0; row < table().getRowCount(); row++) {
                Object finding = table().getValueAt(row, 1);
                var same = here.stream().filter(n -> n.finding() == finding).findFirst();
                assertThat(table().getValueAt(row, 0))
                        .isEqualTo(same.map(FindingPlaces.Numbered::label).orElse(null));
            }
        });
    }

    @Test
    void picking_a_line_selects_what_it_speaks_of() throws Exception {
        run(CommandId.SHOW_FINDINGS);
        HeadlessBench.onUi(() -> {
            ((JTextField) on.named("filter").orElseThrow()).setText(TestBoat.UNGUARDED);
            table().setRowSelectionInterval(0, 0);
            table().getActionMap().get("pick").actionPerformed(null);
        });

        assertThat(on.session().state().selection()).hasSize(1);
    }

    @Test
    void a_window_opens_with_any_page_that_was_left_open() throws Exception {
        for (String page : java.util.List.of("path", "working", "findings", "conditions", "register")) {
            Settings settings = new Settings(null);
            settings.rememberWord("fold", page);
            HeadlessBench other = HeadlessBench.open(start, settings);

            assertThat(other.named("fold-out").orElseThrow().isVisible())
                    .as(page)
                    .isTrue();
            other.close();
        }
    }

    @Test
    void findings_are_sorted_by_their_gravity() throws Exception {
        run(CommandId.SHOW_FINDINGS);
        HeadlessBench.onUi(() -> table().getActionMap().get("orlop.2").actionPerformed(null));
        java.util.List<orlop.findings.Severity> kinds = new java.util.ArrayList<>();
        for (int i = 0; i < table().getRowCount(); i++) {
            kinds.add(((orlop.findings.Finding) table().getValueAt(i, 1)).severity());
        }

        assertThat(kinds).isSorted();
        assertThat(new java.util.HashSet<>(kinds)).hasSizeGreaterThan(1);
    }

    @Test
    void a_station_within_which_nothing_is_lost_has_one_voltage() {
        assertThat(PathView.words(new PathProfile.Station("MA2", 13.6, 13.6, 24.62, 24.62, false)))
                .isEqualTo("MA2: 24.62 V, 13.6 m from the source");
        assertThat(PathView.words(new PathProfile.Station("W1", 0, 1.5, 26.06, 25.9, true)))
                .isEqualTo("W1: 26.06 V to 25.90 V, 1.5 m from the source");
    }

    @Test
    void in_a_wide_window_the_room_of_the_table_of_findings_goes_to_what_they_say() throws Exception {
        on.run(CommandId.SHOW_FINDINGS);
        HeadlessBench.onUi(() -> {
            on.resize(1920, 1000);
            on.paint();
            on.paint();
        });
        JTable table = (JTable) on.named("findings").orElseThrow();

        int what = table.getColumnModel().getColumn(4).getWidth();
        assertThat(what).isGreaterThan(table.getWidth() / 2);
    }

    @Test
    void the_kind_of_a_finding_is_not_cut_in_a_small_window() throws Exception {
        on.run(CommandId.SHOW_FINDINGS);
        HeadlessBench.onUi(on::paint);
        JTable table = (JTable) on.named("findings").orElseThrow();

        int needed = table.prepareRenderer(table.getCellRenderer(0, 1), 0, 1).getPreferredSize().width;
        assertThat(table.getColumnModel().getColumn(1).getWidth()).isGreaterThanOrEqualTo(needed);
    }
}
