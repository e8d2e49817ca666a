package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JTree;
import javax.swing.tree.DefaultMutableTreeNode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.CardEdits;
import orlop.study.Results;

/** How a figure came about, from the card to the tree below the sheet. */
@Timeout(60)
class WorkingViewTest extends OnBench {
    private static final String CABLE = TestBoat.UNGUARDED;

    WorkingViewTest() {
        super(TestBoat.drawing());
    }

    @BeforeEach
    void open() throws Exception {
        HeadlessBench.onUi(() -> on.session().select(Set.of(CABLE)));
        HeadlessBench.onUi(on::paint);
    }

    private void click(String button) throws Exception {
        HeadlessBench.onUi(() -> ((JButton) on.named(button).orElseThrow()).doClick(0));
        HeadlessBench.onUi(on::paint); // the answer has come by now
    }

    private JTree tree() {
        return (JTree) on.named("working").orElseThrow();
    }

    private String title() {
        return ((JLabel) on.named("working.title").orElseThrow()).getText();
    }

    private String root(String symbol) {
        DefaultMutableTreeNode root = (DefaultMutableTreeNode) tree().getModel().getRoot();
        for (int i = 0; i < root.getChildCount(); i++) {
            String text = root.getChildAt(i).toString();
            if (text.startsWith(symbol + " = ")) {
                return text;
            }
        }
        throw new AssertionError("no " + symbol + " among " + root.getChildCount());
    }

    @Test
    void a_figure_of_the_card_opens_its_working_with_its_inputs() throws Exception {
        click("working.drop");

        assertThat(title()).contains(CABLE);
        String chosen = String.valueOf(tree().getLastSelectedPathComponent());
        assertThat(chosen).startsWith("u = 100 · ΔU / Un = ").contains("drop along it");
        assertThat(tree().isExpanded(tree().getSelectionRows()[0])).isTrue();
    }

    @Test
    void the_working_follows_an_edit_and_stays_open() throws Exception {
        click("working.drop");
        String before = root("P");
        HeadlessBench.onUi(() -> on.session().apply(CardEdits.set(CABLE, "areaMm2", 95.0, Results.GOVERNING)));
        HeadlessBench.onUi(on::paint);
        HeadlessBench.onUi(on::paint);

        assertThat(root("P")).isNotEqualTo(before);
        boolean open = false;
        for (int row = 0; row < tree().getRowCount(); row++) {
            open |= tree().isExpanded(row)
                    && String.valueOf(tree().getPathForRow(row).getLastPathComponent())
                            .startsWith("u = 100");
        }
        assertThat(open).isTrue();
    }

    @Test
    void nothing_selected_and_nothing_to_tell_are_said() throws Exception {
        on.run(CommandId.SHOW_WORKING);
        HeadlessBench.onUi(() -> on.session().select(Set.of()));
        HeadlessBench.onUi(on::paint);
        assertThat(title()).isEqualTo(Texts.of("editor.working.none"));

        HeadlessBench.onUi(() -> on.session().select(Set.of("FC1")));
        HeadlessBench.onUi(on::paint);
        HeadlessBench.onUi(on::paint);
        assertThat(title()).isEqualTo(Texts.of("editor.working.nothing", "FC1"));
    }
}
