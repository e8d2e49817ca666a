package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** The step that is offered for copies keeps clear of what stands there. */
class RepeatPlacesTest {
    /** A bar with three circuits, each a fuse and a lamp, 25 mm from one another. */
    private static Drawing row() {
        Drawing d = SmallBoat.put(SmallBoat.drawing(), "WC1", Kind.BUSBAR, 130, 40);
        for (int i = 0; i < 3; i++) {
            double x = 110 + 25 * i;
            String fuse = "FC" + (i + 1);
            String lamp = "EA" + (i + 2);
            d = SmallBoat.put(SmallBoat.put(d, fuse, Kind.FUSE, x, 60), lamp, Kind.LIGHTING, x, 120);
            d = SmallBoat.run(d, "W" + (2 * i + 3), "WC1." + (i + 1), fuse + ".1", 0.3);
            d = SmallBoat.run(d, "W" + (2 * i + 4), fuse + ".2", lamp + ".1", 6);
        }
        return d;
    }

    private static List<SceneItem> things(Scene s) {
        return s.items().stream()
                .filter(i -> i.role() == Role.COMPONENT || i.role() == Role.NOTE)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void copies_of_the_first_circuit_stand_beyond_its_neighbours(int copies) {
        Drawing d = row();
        Set<String> first = Set.of("FC1", "EA2");

        RepeatPlaces places = new RepeatPlaces(d, Drawn.of(d), first);
        RepeatPlaces.Step step = places.offered(copies).orElseThrow();
        List<Integer> at = places.places(step, copies, false);

        Drawing after = Repeats.edit(first, step.acrossMm(), step.downMm(), at).applyTo(d);
        assertThat(after.components().size()).isEqualTo(d.components().size() + 2 * copies);
        List<SceneItem> all = things(Drawn.of(after));
        for (SceneItem a : all) {
            for (SceneItem b : all) {
                assertThat(Same.object(a, b) || !a.bounds().overlaps(b.bounds()))
                        .as("%s on %s", a.subject(), b.subject())
                        .isTrue();
            }
        }
        double right = after.components().require("EA4").place().at().xMm();
        assertThat(after.components().require("EA5").place().at().xMm())
                .as("not between two circuits, where no label has room")
                .isBetween(right + 20, right + 35);
        assertThat(after.components().require("EA5").place().at().yMm()).isEqualTo(120);
    }

    @Test
    void a_row_goes_on_at_its_own_pitch() {
        Drawing d = row();
        RepeatPlaces places = new RepeatPlaces(d, Drawn.of(d), Set.of("FC1", "EA2"));

        assertThat(places.offered(3)).hasValue(new RepeatPlaces.Step(25, 0));
        assertThat(places.places(new RepeatPlaces.Step(25, 0), 3, false)).containsExactly(3, 4, 5);
    }

    @Test
    void a_typed_step_passes_over_what_is_covered_and_may_be_close() {
        Drawing d = row();
        RepeatPlaces places = new RepeatPlaces(d, Drawn.of(d), Set.of("FC1", "EA2"));

        assertThat(places.places(new RepeatPlaces.Step(12.5, 0), 3, true)).containsExactly(1, 3, 5);
        assertThat(places.places(new RepeatPlaces.Step(0, 100), 1, true)).containsExactly(1);
    }

    @Test
    void nothing_is_offered_where_so_many_have_no_room() {
        Drawing d = row();

        assertThat(new RepeatPlaces(d, Drawn.of(d), Set.of("FC1", "EA2")).offered(30))
                .isEmpty();
        assertThat(new RepeatPlaces(d, Drawn.of(d), Set.of("elsewhere")).offered(1))
                .isEmpty();
    }
}
