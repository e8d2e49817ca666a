package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import orlop.drawing.Point;

class LabellerTest {
    private static final Rect AREA = new Rect(0, 0, 200, 200);

    private static Label label(String id, Rect target, Spot... spots) {
        Rect r = spots[0].rect();
        return new Label(id, r.width(), r.height(), target, new Spots.Given(List.of(spots)), false);
    }

    private static Spot spot(double x, double y, double cost) {
        return new Spot(Rect.of(x, y, 20, 6), Side.RIGHT, cost);
    }

    private static Label.Put put(Map<String, Label.Put> places, String id) {
        return Objects.requireNonNull(places.get(id));
    }

    @Test
    void a_label_takes_its_cheapest_free_spot() {
        Labeller l = new Labeller(AREA);
        l.solid(Rect.of(10, 10, 5, 5));
        Label a = label("a", Rect.of(40, 40, 1, 1), spot(8, 8, 0), spot(60, 60, 5), spot(80, 80, 3));

        assertThat(put(l.place(List.of(a)), "a").rect()).isEqualTo(Rect.of(80, 80, 20, 6));
    }

    @Test
    void a_label_makes_room_for_one_that_can_stand_nowhere_else() {
        Labeller l = new Labeller(AREA);
        Label a = label("a", Rect.of(40, 40, 1, 1), spot(50, 50, 0), spot(50, 80, 9));
        Label b = label("b", Rect.of(40, 40, 1, 1), spot(52, 52, 0));

        Map<String, Label.Put> places = l.place(List.of(a, b));

        assertThat(put(places, "a").rect()).isEqualTo(Rect.of(50, 80, 20, 6));
        assertThat(put(places, "b").rect()).isEqualTo(Rect.of(52, 52, 20, 6));
    }

    @Test
    void the_label_of_what_lies_outside_stays_with_it() {
        Labeller l = new Labeller(AREA);
        l.solid(Rect.of(40, 240, 40, 40));
        Label a = label("a", Rect.of(60, 260, 0, 0), spot(55, 255, 0), spot(85, 250, 4));
        Label b = label("b", Rect.of(60, 190, 0, 0), spot(55, 197, 0), spot(55, 180, 4));

        Map<String, Label.Put> places = l.place(List.of(a, b));

        assertThat(put(places, "a").rect()).isEqualTo(Rect.of(85, 250, 20, 6));
        assertThat(put(places, "a").leader()).isNull();
        assertThat(put(places, "b").rect()).as("within, where there is a spot").isEqualTo(Rect.of(55, 180, 20, 6));
    }

    @Test
    void where_no_spot_is_free_a_label_stands_apart_with_a_leader() {
        Labeller l = new Labeller(AREA);
        l.solid(Rect.of(40, 40, 40, 40));
        Label a = label("a", Rect.of(60, 60, 0, 0), spot(55, 55, 0));

        Label.Put put = put(l.place(List.of(a)), "a");

        assertThat(put.rect().overlaps(Rect.of(40, 40, 40, 40))).isFalse();
        Label.Leader leader = Objects.requireNonNull(put.leader());
        assertThat(leader.x2()).isEqualTo(60);
        assertThat(leader.y2()).isEqualTo(60);
    }

    @Test
    void a_label_that_a_person_put_somewhere_stays_there_and_others_give_way() {
        Labeller l = new Labeller(AREA);
        Rect at = Rect.of(50, 50, 20, 6);
        Label b = label("b", Rect.of(40, 40, 1, 1), spot(52, 52, 0), spot(90, 90, 9));
        Label a = new Label("a", 20, 6, at, new Spots.Given(List.of(new Spot(at, Side.RIGHT, 0))), true);

        Map<String, Label.Put> places = l.place(List.of(b, a));

        assertThat(put(places, "a").rect()).isEqualTo(at);
        assertThat(put(places, "b").rect()).isEqualTo(Rect.of(90, 90, 20, 6));
    }

    @Test
    void a_crowd_of_labels_finds_places_without_overlap() {
        Labeller l = new Labeller(AREA);
        List<Label> crowd = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            Rect target = Rect.of(100, 20 + 5 * i, 0, 0);
            crowd.add(label("l" + i, target, spot(102, 17 + 5 * i, 0), spot(78, 17 + 5 * i, 4)));
        }
        List<Label.Put> places = new ArrayList<>(l.place(crowd).values());
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                assertThat(places.get(i).rect().overlaps(places.get(j).rect())).isFalse();
            }
        }
    }

    @Test
    void a_name_is_set_in_the_longest_leg_where_nothing_crosses() {
        Labeller l = new Labeller(AREA);
        List<Point> line = List.of(new Point(50, 50), new Point(50, 60), new Point(120, 60));
        l.line("W1", line, 0.7);
        l.line("W2", List.of(new Point(100, 40), new Point(100, 80)), 0.7);

        LineNames.Gap gap = LineNames.find("W1", line, 4, 1.8, l).orElseThrow();

        assertThat(gap.leg()).isEqualTo(1);
        assertThat(gap.rect().centreY()).isEqualTo(60);
        assertThat(gap.rect().overlaps(Rect.of(99.65, 40, 0.7, 40))).isFalse();
    }

    @Test
    void a_line_too_short_for_a_name_gets_none() {
        Labeller l = new Labeller(AREA);
        assertThat(LineNames.find("W1", List.of(new Point(50, 50), new Point(50, 55)), 4, 1.8, l))
                .isEmpty();
    }
}
