package orlop.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Source;
import orlop.drawing.Words;

/** What stands beside the symbol of a PV array: no sign of multiplication without something to multiply. */
class ModulesTextTest {
    private static String text(@Nullable Double moduleW, int inSeries, int inParallel) {
        Source.PvArray p =
                new Source.PvArray(moduleW, null, null, null, null, -0.3, null, inSeries, inParallel, 0, null, 0);
        Component c = Component.of("GC1", p, Place.at("1", 10, 10), List.of("PV"));
        Drawing d = Drawing.empty("sun")
                .with(ElectricalSystem.of("PV", Nature.PV, 40))
                .with(c);
        return ParticularsText.of(d, c, Words.english());
    }

    @Test
    void modules_of_known_power_are_multiplied() {
        assertThat(text(110.0, 2, 3)).isEqualTo("2 × 3 × 110 W");
        assertThat(text(110.0, 1, 1)).isEqualTo("1 × 1 × 110 W");
    }

    @Test
    void of_unknown_power_only_their_number_is_told() {
        assertThat(text(null, 2, 3)).isEqualTo("2 × 3");
        assertThat(text(null, 1, 1)).isEmpty();
    }
}
