package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Words;
import orlop.findings.Cure;
import orlop.findings.Finding;

/** What a finding asks for is a line of the card, whatever has just been set down without its particulars. */
class AskedFieldsTest {
    private record Asked(Component of, Cure.EnterValue cure, Drawing in) {}

    private static List<Asked> asked() {
        List<Asked> all = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            Drawing d = SmallBoat.drawing();
            Component c = Placings.fresh(d, kind, Place.at("1", 200, 100), "12");
            Drawing with = d.with(c);
            for (Finding f : Review.of(with, () -> false).findings()) {
                if (f.cure() instanceof Cure.EnterValue v && v.item().equals(c.id())) {
                    all.add(new Asked(c, v, with));
                }
            }
        }
        return all;
    }

    @Test
    void every_value_that_is_asked_for_has_its_line() {
        List<Asked> all = asked();

        assertThat(all).isNotEmpty();
        for (Asked a : all) {
            assertThat(CardFields.of(a.in(), a.of().id(), ""))
                    .as(a.of().kind() + " " + a.cure().field())
                    .extracting(CardField::path)
                    .contains("particulars." + a.cure().field());
        }
    }

    @Test
    void a_lamp_without_its_power_and_a_battery_without_its_capacity_ask_for_them() {
        List<String> said = asked().stream()
                .map(a -> Words.english().text(a.cure().label()))
                .toList();

        assertThat(said).contains("enter the power of EA2", "enter the capacity of GB2");
    }
}
