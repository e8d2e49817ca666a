package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;

/** A sheet with more findings than anybody reads in a margin. */
class ManyNotesTest extends OnBench {
    ManyNotesTest() {
        super(unfed(Notes.MOST + 20));
    }

    /** Lamps that nothing feeds: each of them is found. */
    private static Drawing unfed(int lamps) {
        Drawing d = TestBoat.drawing();
        for (int i = 0; i < lamps; i++) {
            d = d.with(Component.of(
                    "E" + (500 + i),
                    Kind.LIGHTING,
                    Place.at("1", 30 + 10 * (i % 30), 150 + 20 * (i / 30)),
                    List.of("24")));
        }
        return d;
    }

    @Test
    void the_gravest_stand_in_the_margin_and_of_the_rest_it_is_said_where_they_are() throws Exception {
        HeadlessBench.onUi(() -> {
            List<FindingPlaces.Numbered> all =
                    FindingPlaces.ofSheet(on.session().state());
            assertThat(all).hasSizeGreaterThan(Notes.MOST);
            List<Integer> shown = new ArrayList<>();
            for (FindingPlaces.Numbered n : all) {
                if (on.named("note." + n.number()).isPresent()) {
                    shown.add(n.number());
                }
            }
            assertThat(shown)
                    .containsExactlyElementsOf(all.stream()
                            .limit(Notes.MOST)
                            .map(FindingPlaces.Numbered::number)
                            .toList());
            String said = Texts.of("editor.notes.more", all.size() - Notes.MOST);
            assertThat(all.size() - Notes.MOST).isPositive();
            assertThat(AcceptedNotesTest.texts(on.bench().panel())).contains(said);
        });
    }
}
