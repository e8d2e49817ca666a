package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javax.swing.JLabel;
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
}
