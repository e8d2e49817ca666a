package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.Protection;
import orlop.drawing.Soundness;
import orlop.drawing.TerminalRef;
import orlop.findings.Cure;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;
import orlop.study.Results;

class CureEditsTest {
    private static final Message LABEL = Message.of("x");
    private static final Results NONE =
            new Results(Results.GOVERNING, "", true, 0, Map.of(), Map.of(), Map.of(), List.of());

    private final Drawing d = SmallBoat.drawing();

    private static Scene scene(Drawing d, String sheet) {
        return SceneBuilder.bundled().build(SceneRequest.screen(d, NONE, List.of(), sheet));
    }

    private static List<Point> points(Drawing d) {
        return Objects.requireNonNull(scene(d, "1").routes().get("W1")).points();
    }

    private CureEdits.Made made(Cure cure) {
        return (CureEdits.Made) CureEdits.of(d, cure, sheet -> scene(d, sheet));
    }

    @Test
    void a_missing_fuse_is_put_right_at_the_terminal_of_its_cable() {
        CureEdits.Made m = made(new Cure.InsertDevice(LABEL, "W1", true, 0, "class-t", 200, 20));

        Drawing after = m.edit().applyTo(d);

        assertThat(m.select()).containsExactly("FC1");
        assertThat(after.components().require("FC1").particulars()).isInstanceOfSatisfying(Protection.Fuse.class, f -> {
            assertThat(f.family()).isEqualTo("class-t");
            assertThat(f.ratingA()).isEqualTo(200);
            assertThat(f.breakingKa()).isEqualTo(20);
        });
        assertThat(after.links().stream().map(Link::toString))
                .singleElement()
                .asString()
                .contains("GB1", "FC1");
        assertThat(after.cables().require("W1").lengthM()).isEqualTo(2);
        assertThat(Soundness.flaws(after)).isEmpty();
    }

    @Test
    void a_bank_wired_at_its_negative_is_turned_and_its_cable_stays_where_it_is() {
        Cable w = d.cables().require("W1");
        TerminalRef negative = new TerminalRef("GB1", "2");
        Drawing wrong = d.with(
                w.from().component().equals("GB1") ? w.withEnds(negative, w.to()) : w.withEnds(w.from(), negative));
        CureEdits.Made m =
                (CureEdits.Made) CureEdits.of(wrong, new Cure.TurnRound(LABEL, "GB1"), sheet -> scene(wrong, sheet));

        Drawing after = m.edit().applyTo(wrong);

        assertThat(m.select()).containsExactly("GB1");
        assertThat(after.cables().require("W1").from()).isEqualTo(w.from());
        assertThat(after.cables().require("W1").to()).isEqualTo(w.to());
        assertThat(points(after)).isEqualTo(points(wrong));
        assertThat(Soundness.flaws(after)).isEmpty();
        Drawing locked = wrong.with(w.withLocked(true));
        assertThatThrownBy(() -> m.edit().applyTo(locked)).isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void the_fuse_stands_in_the_line_and_nothing_else_moves() {
        Drawing after = made(new Cure.InsertDevice(LABEL, "W2", false, 0, "gg", 16, 50))
                .edit()
                .applyTo(d);

        for (Component c : d.components().values()) {
            assertThat(after.components().require(c.id()).place()).isEqualTo(c.place());
        }
        Component fuse = after.components().require("FC1");
        Route line = scene(d, "1").routes().get("W2");
        assertThat(line).isNotNull();
        assertThat(line.nearest(fuse.place().at().xMm(), fuse.place().at().yMm())
                        .distanceMm())
                .isLessThan(0.01);
        Scene now = scene(after, "1");
        List<orlop.layout.Rect> bodies = now.items().stream()
                .filter(i -> i.role() == Role.COMPONENT)
                .map(i -> i.bounds())
                .toList();
        for (int i = 0; i < bodies.size(); i++) {
            for (int k = i + 1; k < bodies.size(); k++) {
                assertThat(bodies.get(i).overlaps(bodies.get(k))).isFalse();
            }
        }
    }

    @Test
    void a_device_further_along_parts_the_cable_there() {
        Drawing after = made(new Cure.InsertDevice(LABEL, "W2", true, 1.3, "gg", 16, 50))
                .edit()
                .applyTo(d);

        Cable first = after.cables().require("W2");
        Cable second = after.cables().require("W3");
        assertThat(first.lengthM()).isEqualTo(1.3);
        assertThat(second.lengthM()).isEqualTo(5.2);
    }

    @Test
    void the_family_decides_between_fuse_and_breaker() {
        Drawing after = made(new Cure.InsertDevice(LABEL, "W2", true, 0, "mcb-c", 16, 6))
                .edit()
                .applyTo(d);

        assertThat(after.components().require("FC1").kind()).isEqualTo(Kind.CIRCUIT_BREAKER);
    }

    @Test
    void another_area_is_one_edit() {
        CureEdits.Made m = made(new Cure.SetArea(LABEL, "W2", 16));

        assertThat(m.edit().applyTo(d).cables().require("W2").areaMm2()).isEqualTo(16);
        assertThat(m.select()).isEqualTo(Set.of("W2"));
    }

    @Test
    void a_device_is_replaced_where_it_stands() {
        Drawing with = made(new Cure.InsertDevice(LABEL, "W2", true, 0, "gg", 63, 50))
                .edit()
                .applyTo(d);
        CureEdits.Action a =
                CureEdits.of(with, new Cure.ReplaceDevice(LABEL, "FC1", "gg", 16, 50), sheet -> scene(with, sheet));

        Drawing after = ((CureEdits.Made) a).edit().applyTo(with);

        assertThat(((Protection.Fuse) after.components().require("FC1").particulars()).ratingA())
                .isEqualTo(16);
        assertThat(after.components().require("FC1").place())
                .isEqualTo(with.components().require("FC1").place());
    }

    @Test
    void what_only_a_person_can_know_is_asked_for() {
        assertThat(CureEdits.of(d, new Cure.EnterValue(LABEL, "GB1", "capacityAh"), sheet -> scene(d, sheet)))
                .isEqualTo(new CureEdits.Asked("GB1", "capacityAh"));
    }
}
