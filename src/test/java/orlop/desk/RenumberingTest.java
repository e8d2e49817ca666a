package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Extras;
import orlop.drawing.History;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Measurement;
import orlop.drawing.Point;
import orlop.drawing.Soundness;
import orlop.drawing.TerminalRef;

class RenumberingTest {
    private final Drawing d = boat();

    /** Four lamps in two rows, the lower right one numbered first, and a bar that a person named. */
    private static Drawing boat() {
        Drawing d = SmallBoat.put(SmallBoat.drawing(), "EA7", Kind.LIGHTING, 250, 152.5);
        d = SmallBoat.put(SmallBoat.put(d, "EA3", Kind.LIGHTING, 120, 60), "EA2", Kind.LIGHTING, 60, 65);
        d = SmallBoat.put(d, "12MAIN", Kind.BUSBAR, 200, 40);
        d = d.with(d.conditions().require("sail").withLoad("EA7", orlop.drawing.LoadState.DEFAULT));
        TerminalRef bar = TerminalRef.parse("12MAIN.a", "from");
        return d.with(Link.of(bar, TerminalRef.parse("EA7.1", "to")));
    }

    @Test
    void tags_follow_the_order_in_which_the_sheet_is_read() {
        assertThat(Renumbering.tags(d, Set.of()))
                .containsExactly(entry("EA2", "EA1"), entry("EA3", "EA2"), entry("EA1", "EA3"), entry("EA7", "EA4"));
    }

    @Test
    void ends_links_and_conditions_follow_and_the_name_that_a_person_gave_stays() {
        Drawing after = Renumbering.edit(Set.of()).applyTo(d);

        assertThat(Soundness.flaws(after)).isEmpty();
        assertThat(after.components().contains("12MAIN")).isTrue();
        assertThat(after.links().contains("12MAIN.a~EA4.1")).isTrue();
        assertThat(after.cables().require("W2").to()).isEqualTo(TerminalRef.parse("EA3.1", "to"));
        assertThat(after.conditions().require("sail").loads().contains("EA4")).isTrue();
        assertThat(after.components().require("EA1").place().at()).isEqualTo(new Point(60, 65));
        assertThat(Renumbering.tags(after, Set.of())).as("once is enough").isEmpty();
    }

    @Test
    void what_was_measured_follows_its_item() {
        Measurement m = new Measurement("M1", "EA7", "voltage", 12.1, "V", "", "", Extras.NONE);
        Drawing measured = d.withMeasurements(d.measurements().with("M1", m));

        Drawing after = Renumbering.edit(Set.of()).applyTo(measured);

        assertThat(after.measurements().require("M1").item()).isEqualTo("EA4");
    }

    @Test
    void a_selection_leaves_the_numbers_of_the_others_alone() {
        assertThat(Renumbering.tags(d, Set.of("EA7", "EA3"))).containsExactlyInAnyOrderEntriesOf(Map.of("EA7", "EA4"));
    }

    @Test
    void cables_are_numbered_along_the_order_of_their_upper_ends() {
        Drawing more = SmallBoat.run(d, "W9", "EA2.1", "EA3.1", 1);

        assertThat(Renumbering.tags(more, Set.of("W1", "W2", "W9")))
                .containsExactly(entry("W9", "W1"), entry("W1", "W2"), entry("W2", "W3"));
    }

    @Test
    void it_is_one_step() {
        History h = new History(d);
        h.apply(Renumbering.edit(Set.of()));

        h.undo();

        assertThat(Same.object(h.current(), d)).isTrue();
    }

    @Test
    void notes_that_name_a_changed_tag_are_counted() {
        Drawing noted = NoteEdits.place(NoteEdits.fresh(d, "1", new Point(9, 9), "see EA7, not EA70", 2.5))
                .applyTo(d);

        assertThat(Renumbering.notesNaming(noted, Set.of("EA7"))).isEqualTo(1);
        assertThat(Renumbering.notesNaming(noted, Set.of("EA"))).isZero();
    }
}
