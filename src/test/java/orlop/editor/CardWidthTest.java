package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.CardEdits;
import orlop.drawing.Drawing;

/** What stands beside a field of the card has room there. */
class CardWidthTest {
    @ParameterizedTest
    @ValueSource(doubles = {6, 5.261, 50, 107.22, 120})
    void the_gauge_beside_the_area_is_shown_whole(double areaMm2) throws Exception {
        Drawing d = CardEdits.set("W10", "areaMm2", areaMm2, "").applyTo(TestBoat.drawing());
        HeadlessBench on = HeadlessBench.open(d);
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("W10"));
            on.paint();

            JLabel gauge = (JLabel) on.named("note.areaMm2").orElseThrow();
            assertThat(gauge.getText()).contains("AWG");
            assertThat(gauge.getWidth()).as(gauge.getText()).isGreaterThanOrEqualTo(gauge.getPreferredSize().width);
        });
        on.close();
    }

    @Test
    void no_result_is_cut() throws Exception {
        Drawing unrated = TestBoat.drawing();
        for (String fuse : List.of("FC1", "FC3")) {
            unrated = CardEdits.set(fuse, "particulars.ratingA", null, "").applyTo(unrated);
        }
        HeadlessBench on = HeadlessBench.open(unrated);
        HeadlessBench.onUi(() -> {
            for (String item : List.of("W6", "W7", "W1", "GB1", "MA1")) {
                on.session().select(Set.of(item));
                on.paint();
                int seen = 0;
                for (JComponent c : results(on.bench().panel(), new ArrayList<>())) {
                    seen++;
                    boolean lines = c instanceof WrapText;
                    assertThat(lines ? c.getHeight() : c.getWidth())
                            .as("%s: %s", item, c.getName())
                            .isGreaterThanOrEqualTo(lines ? c.getPreferredSize().height : c.getPreferredSize().width);
                }
                assertThat(seen).as(item).isPositive();
            }
        });
        on.close();
    }

    private static List<JComponent> results(java.awt.Container in, List<JComponent> found) {
        for (java.awt.Component c : in.getComponents()) {
            if (c instanceof JComponent j && c.getName() != null && c.getName().startsWith("result.")) {
                found.add(j);
            }
            if (c instanceof java.awt.Container k) {
                results(k, found);
            }
        }
        return found;
    }
}
