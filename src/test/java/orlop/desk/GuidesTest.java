package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;

class GuidesTest {
    private final Drawing d = SmallBoat.put(SmallBoat.drawing(), "FC1", Kind.FUSE, 82.5, 57.5);

    @Test
    void a_line_shows_where_centres_stand_in_line() {
        Guides g = Guides.of(d, Drawn.of(d), Set.of("FC1"));

        assertThat(g.at(-32.5, 0))
                .as("over the isolator, which stands at 50, 100")
                .filteredOn(Guides.Guide::upright)
                .singleElement()
                .satisfies(l -> {
                    assertThat(l.atMm()).isEqualTo(50);
                    assertThat(l.fromMm()).isBetween(57.5, 70.0);
                    assertThat(l.toMm()).as("down to its upper terminal").isBetween(80.0, 95.0);
                });
        assertThat(g.at(0, 42.5)).filteredOn(l -> !l.upright()).anySatisfy(l -> {
            assertThat(l.atMm()).isEqualTo(100);
            assertThat(l.fromMm()).isEqualTo(50);
            assertThat(l.toMm()).isEqualTo(82.5);
        });
    }

    @Test
    void nothing_shows_where_nothing_stands_in_line() {
        Guides g = Guides.of(d, Drawn.of(d), Set.of("FC1"));

        assertThat(g.at(2.5, -32.5)).isEmpty();
    }

    @Test
    void what_moves_is_not_in_line_with_itself() {
        Guides g = Guides.of(d, Drawn.of(d), Set.of("GB1", "QB1", "EA1", "FC1"));

        assertThat(g.at(0, 0)).isEmpty();
    }

    @Test
    void at_most_three_show_each_way() {
        Drawing many = d;
        for (int i = 0; i < 8; i++) {
            many = SmallBoat.put(many, "XD" + i, Kind.TERMINAL, 200 + 10 * i, 200);
            many = SmallBoat.put(many, "XD1" + i, Kind.TERMINAL, 200 + 10 * i, 250);
        }
        Set<String> moving = Set.of("XD0", "XD1", "XD2", "XD3", "XD4", "XD5", "XD6", "XD7");

        assertThat(Guides.of(many, Drawn.of(many), moving).at(0, 10))
                .filteredOn(Guides.Guide::upright)
                .hasSize(3);
    }
}
