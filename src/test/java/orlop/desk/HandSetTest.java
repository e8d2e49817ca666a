package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Mark;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneItem;
import orlop.scene.SceneRequest;
import orlop.study.Results;

class HandSetTest {
    private static final Results NONE =
            new Results("", Results.GOVERNING, true, 0, Map.of(), Map.of(), Map.of(), List.of());
    private static final Object KEY = "key";

    /** Beside the small boat: a lying bar with a fuse straight below it. */
    private final Drawing start = withBar(SmallBoat.drawing());

    private static Drawing withBar(Drawing d) {
        Component bar = Component.of("B", new Distribution.Busbar(null, 60), Place.at("1", 240, 60), List.of("12"));
        return SmallBoat.run(SmallBoat.put(d.with(bar), "F1", Kind.FUSE, 240, 100), "W3", "B.1", "F1.1", 1);
    }

    private static Scene scene(Drawing d) {
        return SceneBuilder.bundled().build(SceneRequest.screen(d, NONE, List.of(), "1"));
    }

    private static Route route(Drawing d, String cable) {
        return Objects.requireNonNull(scene(d).routes().get(cable));
    }

    private static SceneItem label(Drawing d, String item) {
        return scene(d).items().stream()
                .filter(i -> i.role() == Role.LABEL && i.subject().equals(item))
                .findFirst()
                .orElseThrow();
    }

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    @Test
    void a_leg_between_two_corners_lies_where_it_was_put_and_the_rest_of_the_line_follows() {
        Route before = route(start, "W2");
        int leg = 1;
        boolean lying = Bends.lying(before.points(), leg);
        Point a = before.points().get(leg);
        double to = (lying ? a.yMm() : a.xMm()) + 7.5;

        Drawing after = HandSet.moveLeg(start, before, leg, to, KEY).applyTo(start);

        List<Point> points = route(after, "W2").points();
        Point b = points.get(leg);
        assertThat(lying ? b.yMm() : b.xMm()).isEqualTo(to);
        assertThat(points).hasSameSizeAs(before.points());
        assertThat(points.get(0)).isEqualTo(before.points().get(0));
        assertThat(after.cables().require("W2").bends()).isEqualTo(points.subList(1, points.size() - 1));
    }

    @Test
    void a_straight_line_between_terminals_keeps_a_short_piece_at_both() {
        Route before = route(start, "W1");
        assertThat(before.points()).containsExactly(p(50, 145), p(50, 105));

        Drawing after = HandSet.moveLeg(start, before, 0, 60, KEY).applyTo(start);

        assertThat(route(after, "W1").points())
                .containsExactly(p(50, 145), p(50, 140), p(60, 140), p(60, 110), p(50, 110), p(50, 105));
    }

    @Test
    void a_leg_from_a_bar_slides_along_the_bar() {
        Route before = route(start, "W3");
        assertThat(before.points()).containsExactly(p(240, 60), p(240, 95));

        Drawing after = HandSet.moveLeg(start, before, 0, 252.5, KEY).applyTo(start);

        assertThat(route(after, "W3").points()).containsExactly(p(252.5, 60), p(252.5, 90), p(240, 90), p(240, 95));
    }

    @Test
    void a_leg_that_is_moved_into_line_loses_its_corners_and_stays_set_by_hand() {
        Drawing bent = HandSet.moveLeg(start, route(start, "W3"), 0, 252.5, KEY).applyTo(start);

        Drawing after = HandSet.moveLeg(bent, route(bent, "W3"), 0, 240, KEY).applyTo(bent);

        assertThat(route(after, "W3").points()).containsExactly(p(240, 60), p(240, 95));
        assertThat(after.cables().require("W3").bends()).containsExactly(p(240, 77.5));
    }

    @Test
    void bends_are_set_moved_and_taken_away() {
        Route before = route(start, "W1");
        Drawing set = HandSet.setBend(before, p(75, 125), KEY).applyTo(start);
        assertThat(route(set, "W1").points()).contains(p(75, 125));

        Drawing moved = HandSet.moveBend("W1", 0, p(80, 120), KEY).applyTo(set);
        assertThat(moved.cables().require("W1").bends()).containsExactly(p(80, 120));
        assertThat(route(moved, "W1").points()).contains(p(80, 120));

        Drawing taken = HandSet.removeBend("W1", 0).applyTo(moved);
        assertThat(route(taken, "W1").points()).isEqualTo(before.points());
        assertThat(HandSet.removeBend("W1", 3).applyTo(moved)).isEqualTo(moved);
    }

    @Test
    void a_label_stands_where_it_was_put_and_a_leader_leads_back_from_afar() {
        Rect was = label(start, "W1").bounds();
        Drawing near = HandSet.moveLabel("W1", p(52, 130), KEY).applyTo(start);
        Drawing far = HandSet.moveLabel("W1", p(100, 180), KEY).applyTo(start);

        assertThat(label(near, "W1").bounds()).isEqualTo(Rect.of(52, 130, was.width(), was.height()));
        assertThat(lines(label(near, "W1"))).isZero();
        assertThat(label(far, "W1").bounds()).isEqualTo(Rect.of(100, 180, was.width(), was.height()));
        assertThat(lines(label(far, "W1"))).isEqualTo(1);
    }

    private static long lines(SceneItem item) {
        return item.marks().stream().filter(m -> m instanceof Mark.Line).count();
    }

    @Test
    void a_components_label_goes_where_the_component_goes() {
        Drawing set = HandSet.moveLabel("QB1", p(70, 80), KEY).applyTo(start);
        Drawing moved = Edits.move(Set.of("QB1"), 10, 5, KEY).applyTo(set);

        assertThat(label(set, "QB1").bounds().minX()).isEqualTo(70);
        assertThat(label(moved, "QB1").bounds().minX()).isEqualTo(80);
        assertThat(label(moved, "QB1").bounds().minY()).isEqualTo(85);
    }

    @Test
    void a_cable_that_moves_whole_takes_its_bends_and_its_label_along() {
        Drawing set = HandSet.moveLabel("W1", p(70, 125), KEY).applyTo(start);
        set = HandSet.setBend(route(set, "W1"), p(75, 125), KEY).applyTo(set);

        Drawing moved = Edits.move(Set.of("QB1", "GB1"), 10, 5, KEY).applyTo(set);

        assertThat(moved.cables().require("W1").bends()).containsExactly(p(85, 130));
        assertThat(moved.cables().require("W1").labelAt()).isEqualTo(p(80, 130));
    }

    @Test
    void what_was_set_by_hand_is_left_to_the_layout_again() {
        Drawing set = HandSet.moveLabel("W1", p(70, 125), KEY).applyTo(start);
        set = HandSet.setBend(route(set, "W1"), p(75, 125), KEY).applyTo(set);
        set = HandSet.moveLabel("QB1", p(70, 80), KEY).applyTo(set);
        Set<String> both = Set.of("W1", "QB1", "no such thing");

        assertThat(HandSet.any(set, both)).isTrue();
        Drawing after = HandSet.automatic(both).applyTo(set);

        assertThat(HandSet.any(after, both)).isFalse();
        assertThat(after).isEqualTo(start);
    }

    @Test
    void what_is_gone_cannot_be_set() {
        assertThatThrownBy(() -> HandSet.moveLabel("W99", p(0, 0), KEY).applyTo(start))
                .isInstanceOf(Edit.Refusal.class);
        assertThatThrownBy(() -> HandSet.moveBend("W99", 0, p(0, 0), KEY).applyTo(start))
                .isInstanceOf(Edit.Refusal.class);
    }
}
