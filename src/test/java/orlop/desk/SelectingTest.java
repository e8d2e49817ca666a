package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;

class SelectingTest {
    private final Drawing d = boat();

    /** The small boat, a lamp apart, and a charger whose other side feeds a socket-outlet on 230 V. */
    private static Drawing boat() {
        Drawing d = SmallBoat.put(SmallBoat.drawing(), "EA2", Kind.LIGHTING, 200, 150);
        d = d.with(Component.of("TB1", Kind.CHARGER, Place.at("1", 50, 200), List.of("230", "12")));
        d = d.with(Component.of("XD1", Kind.SOCKET_OUTLET, Place.at("1", 80, 250), List.of("230")));
        d = SmallBoat.run(d, "W3", "TB1.2", "GB1.1", 1);
        return SmallBoat.run(d, "W4", "TB1.1", "XD1.1", 1);
    }

    @Test
    void all_of_a_kind_are_found_on_the_sheet_only() {
        Drawing more = d.with(Component.of("EA3", Kind.LIGHTING, Place.at("2", 50, 50), List.of("12")));

        assertThat(Selecting.ofKind(more, "1", Set.of("EA1"))).containsExactly("EA1", "EA2");
        assertThat(Selecting.ofKind(more, "1", Set.of("W1"))).containsExactly("W1", "W2", "W3", "W4");
        assertThat(Selecting.ofKind(more, "1", Set.of("GB1", "EA1"))).containsExactly("GB1", "EA1", "EA2");
        assertThat(Selecting.ofKind(more, "1", Set.of())).isEmpty();
    }

    @Test
    void all_notes_are_a_kind() {
        Drawing noted = NoteEdits.place(NoteEdits.fresh(d, "1", new Point(9, 9), "a", 2.5))
                .applyTo(d);
        noted = NoteEdits.place(NoteEdits.fresh(noted, "1", new Point(9, 19), "b", 2.5))
                .applyTo(noted);

        assertThat(Selecting.ofKind(noted, "1", Set.of("N2"))).containsExactly("N1", "N2");
    }

    @Test
    void what_is_connected_ends_at_a_converter() {
        assertThat(Selecting.connected(d, "1", Set.of("EA1")))
                .containsExactly("GB1", "QB1", "EA1", "TB1", "W1", "W2", "W3");
        assertThat(Selecting.connected(d, "1", Set.of("XD1"))).containsExactly("TB1", "XD1", "W4");
        assertThat(Selecting.connected(d, "1", Set.of("W2")))
                .contains("GB1", "W3")
                .doesNotContain("XD1", "EA2");
        assertThat(Selecting.connected(d, "1", Set.of("EA2"))).containsExactly("EA2");
    }

    @Test
    void the_path_over_another_sheet_counts() {
        Drawing two =
                d.with(Component.of("XL1", new Distribution.SheetLink("XL2"), Place.at("1", 300, 50), List.of("12")));
        two = two.with(Component.of("XL2", new Distribution.SheetLink("XL1"), Place.at("2", 30, 50), List.of("12")));
        two = two.with(Component.of("EA4", Kind.LIGHTING, Place.at("2", 60, 50), List.of("12")));
        two = SmallBoat.run(SmallBoat.run(two, "W5", "QB1.1", "XL1.1", 2), "W6", "XL2.1", "EA4.1", 2);

        assertThat(Selecting.connected(two, "2", Set.of("EA1"))).containsExactly("XL2", "EA4", "W6");
    }
}
