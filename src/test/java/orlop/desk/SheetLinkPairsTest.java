package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;

/** The other end of a sheet link, as it is chosen on a card. */
class SheetLinkPairsTest {
    private static final String MATE = "particulars.mate";

    private static Component link(String id, String sheet, String mate, String system) {
        return Component.of(id, new Distribution.SheetLink(mate), Place.at(sheet, 50, 50), List.of(system));
    }

    private static Drawing drawing() {
        return Drawing.empty("Skerry Wren")
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(ElectricalSystem.of("12", Nature.DC, 12))
                .with(Sheet.of("1", "one"))
                .with(Sheet.of("2", "two"))
                .with(link("XL1", "1", "", "24"))
                .with(link("XL2", "2", "", "24"))
                .with(link("XL3", "1", "XL4", "24"))
                .with(link("XL4", "2", "XL3", "24"));
    }

    private static Drawing set(Drawing d, String link, String mate) {
        return CardEdits.set(link, MATE, mate, "").applyTo(d);
    }

    private static String mate(Drawing d, String link) {
        return ((Distribution.SheetLink) d.components().require(link).particulars()).mate();
    }

    @Test
    void two_ends_that_stand_alone_become_one_point_from_either_card() {
        Drawing d = set(drawing(), "XL1", "XL2");
        assertThat(mate(d, "XL1")).isEqualTo("XL2");
        assertThat(mate(d, "XL2")).isEqualTo("XL1");
    }

    @Test
    void an_end_that_is_led_elsewhere_leaves_its_former_one_alone() {
        Drawing d = set(drawing(), "XL1", "XL4");
        assertThat(mate(d, "XL4")).isEqualTo("XL1");
        assertThat(mate(d, "XL3")).isEmpty();

        assertThat(mate(set(d, "XL1", ""), "XL4")).isEmpty();
    }

    @Test
    void the_end_to_which_nothing_leads_takes_the_system_of_the_other() {
        Drawing d = drawing()
                .with(Component.of("GB1", Kind.BATTERY, Place.at("1", 90, 90), List.of("12")))
                .with(link("XL5", "1", "", "12"))
                .with(Cable.of("W1", TerminalRef.parse("GB1.1", "from"), TerminalRef.parse("XL5.1", "to")));

        assertThat(set(d, "XL5", "XL2").components().require("XL2").systems()).containsExactly("12");
        assertThat(set(d, "XL2", "XL5").components().require("XL2").systems()).containsExactly("12");
    }

    @Test
    void no_link_is_offered_as_its_own_other_end() {
        List<Object> offered = CardFields.of(drawing(), "XL1", "").stream()
                .filter(f -> f.path().equals(MATE))
                .flatMap(f -> f.choices().stream())
                .map(CardField.Choice::value)
                .toList();
        assertThat(offered).containsExactlyInAnyOrder("", "XL2", "XL3", "XL4");
    }
}
