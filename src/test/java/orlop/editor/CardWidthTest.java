package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.CardEdits;
import orlop.desk.Placings;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;

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

    @ParameterizedTest
    @EnumSource(Kind.class)
    void no_word_on_a_card_is_cut(Kind kind) throws Exception {
        Drawing d = TestBoat.drawing();
        Component c = Placings.fresh(d, kind, Place.at("1", 300, 200), "24");
        HeadlessBench on = HeadlessBench.open(d.with(c));
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(c.id()));
            on.paint();

            assertThat(cut((Container) on.named("card." + c.id()).orElseThrow()))
                    .isEmpty();
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

    /** Labels that are narrower than their words. */
    private static List<String> cut(Container in) {
        List<String> found = new ArrayList<>();
        for (java.awt.Component c : in.getComponents()) {
            if (c instanceof JLabel l && l.isVisible() && room(l) < words(l)) {
                found.add(l.getText());
            }
            if (c instanceof Container k && k.isVisible()) {
                found.addAll(cut(k));
            }
        }
        return found;
    }

    private static int room(JLabel l) {
        return l.getWidth() - l.getInsets().left - l.getInsets().right;
    }

    private static int words(JLabel l) {
        return l.getFontMetrics(l.getFont()).stringWidth(l.getText());
    }
}
