package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;

class FragmentTest {
    @Test
    void it_holds_what_was_chosen_and_what_that_names() throws FileProblem {
        Drawing whole = Specimens.everything();

        Drawing part = Fragment.read(
                Fragment.write(whole, Set.of("K-battery", "K-busbar", "K-inverter", "W1", "N1")), "clipboard");

        assertThat(part.components().stream().map(c -> c.id())).containsExactly("K-battery", "K-inverter", "K-busbar");
        assertThat(part.components().require("K-battery"))
                .isEqualTo(whole.components().require("K-battery"));
        assertThat(part.cables()).isEqualTo(whole.cables().without("W2"));
        assertThat(part.systems()).isEqualTo(whole.systems());
        assertThat(part.sheets()).isEqualTo(whole.sheets());
        assertThat(part.locations()).isEqualTo(whole.locations());
        assertThat(part.cableways()).isEqualTo(whole.cableways());
        assertThat(part.notes()).isEqualTo(whole.notes());
        assertThat(part.links().isEmpty()).isTrue();
        assertThat(part.conditions().isEmpty()).isTrue();
    }

    @Test
    void a_cable_with_an_end_left_behind_stays_too_and_links_come_with_their_ends() throws FileProblem {
        Drawing whole = Specimens.everything();

        Drawing part = Fragment.read(Fragment.write(whole, Set.of("K-fuse", "K-isolator", "W2")), "clipboard");

        assertThat(part.cables().isEmpty()).isTrue();
        assertThat(part.links()).isEqualTo(whole.links());
        assertThat(part.systems().size()).isEqualTo(1);
        assertThat(part.cableways().isEmpty()).isTrue();
    }

    @Test
    void what_names_something_left_behind_names_nothing() throws FileProblem {
        Drawing whole = Specimens.everything();

        Drawing alone = Fragment.read(Fragment.write(whole, Set.of("K-sheet-link")), "clipboard");
        Drawing both = Fragment.read(Fragment.write(whole, Set.of("K-sheet-link", Specimens.OTHER)), "clipboard");

        assertThat(alone.components().require("K-sheet-link").particulars()).isEqualTo(new Distribution.SheetLink(""));
        assertThat(both.components().require("K-sheet-link").particulars())
                .isEqualTo(new Distribution.SheetLink(Specimens.OTHER));
    }

    @Test
    void other_text_of_the_clipboard_is_told_from_a_drawing() {
        assertThat(catchThrowableOfType(FileProblem.class, () -> Fragment.read("shopping list", "clipboard")))
                .hasMessageStartingWith("clipboard:1:1: this is no valid JSON at \"shopping\"");
    }
}
