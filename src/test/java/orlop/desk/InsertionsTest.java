package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Point;
import orlop.drawing.Soundness;
import orlop.drawing.TerminalRef;
import orlop.drawing.Words;
import orlop.findings.Finding;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** Devices dropped on cables. */
class InsertionsTest {
    /** A bar with a lamp 70 mm below it. */
    private static Drawing circuit(double lengthM) {
        Drawing d = SmallBoat.put(SmallBoat.drawing(), "WC1", Kind.BUSBAR, 220, 60);
        d = SmallBoat.put(d, "EA2", Kind.LIGHTING, 220, 140);
        return SmallBoat.run(d, "W3", "EA2.1", "WC1.a", lengthM);
    }

    private static Insertions.Inserted dropped(Drawing d, String cable, Point at) {
        Scene scene = Drawn.of(d);
        Route line = Objects.requireNonNull(scene.routes().get(cable));
        return Insertions.of(d, scene, line.nearest(at.xMm(), at.yMm()), Kind.FUSE)
                .orElseThrow();
    }

    private static Point on(Drawing d, String cable, double share) {
        return Objects.requireNonNull(Drawn.of(d).routes().get(cable)).at(share);
    }

    private static double length(Drawing d, String cable) {
        return Objects.requireNonNull(d.cables().require(cable).lengthM());
    }

    private static String text(Insertions.Inserted in) {
        return Words.english().text(in.said());
    }

    @Test
    void what_is_dropped_in_the_middle_shares_the_length_out_and_deleting_it_heals_the_cable() {
        Drawing d = SmallBoat.drawing();
        Insertions.Inserted in = dropped(d, "W2", on(d, "W2", 0.5));

        Drawing after = in.edit().applyTo(d);

        double first = length(after, "W2");
        assertThat(first * 10).isEqualTo(Math.rint(first * 10));
        assertThat(first + length(after, "W3")).isEqualTo(6.5);
        assertThat(after.cables().require("W2").lengthEstimated()).isTrue();
        assertThat(after.cables().require("W3").lengthEstimated()).isTrue();
        assertThat(text(in)).contains("W2 ≈ " + first + " m", "W3 ≈", "shared out as drawn");
        assertThat(Soundness.flaws(after)).isEmpty();
        Drawing healed = Edits.delete(Set.of(in.id())).applyTo(after);
        assertThat(healed.cables()).isEqualTo(d.cables());
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 0.3, 0.05})
    void what_is_dropped_right_at_a_bar_is_joined_to_it_and_the_cable_keeps_its_length(double lengthM) {
        Drawing d = circuit(lengthM);
        Insertions.Inserted in = dropped(d, "W3", new Point(220, 62));

        Drawing after = in.edit().applyTo(d);

        assertThat(after.cables().size()).isEqualTo(d.cables().size());
        assertThat(length(after, "W3")).isEqualTo(lengthM);
        assertThat(after.cables().require("W3").lengthEstimated()).isFalse();
        Link link = after.links().values().iterator().next();
        assertThat(List.of(link.from().component(), link.to().component())).containsExactlyInAnyOrder(in.id(), "WC1");
        assertThat(text(in)).contains("right at WC1", "W3 keeps its length");
        Scene scene = Drawn.of(after);
        Rect device = scene.item(Role.COMPONENT, in.id()).orElseThrow().bounds();
        Rect bar = scene.item(Role.BAR, "WC1").orElseThrow().bounds();
        assertThat(device.minY() - bar.maxY()).as("the joint is seen").isBetween(0.5, 5.0);
        assertThat(Edits.delete(Set.of(in.id())).applyTo(after).cables()).isEqualTo(d.cables());
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 1, 0.3, 0.05, 0.01})
    void no_share_is_nothing_and_both_are_the_whole(double lengthM) {
        Drawing d = circuit(lengthM);

        Drawing after = dropped(d, "W3", new Point(220, 78)).edit().applyTo(d);

        assertThat(length(after, "W3")).isPositive();
        assertThat(length(after, "W4")).isPositive();
        assertThat(length(after, "W3") + length(after, "W4")).isCloseTo(lengthM, within(1e-12));
    }

    @Test
    void a_length_that_is_entered_is_no_estimate_and_joined_with_one_it_is_one() {
        Drawing d = circuit(12);
        Insertions.Inserted in = dropped(d, "W3", new Point(220, 100));
        Drawing parted = in.edit().applyTo(d);

        Drawing typed = CardEdits.set("W3", "lengthM", 5.0, "").applyTo(parted);

        assertThat(typed.cables().require("W3").lengthEstimated()).isFalse();
        assertThat(typed.cables().require("W4").lengthEstimated()).isTrue();
        Cable joined = Edits.delete(Set.of(in.id())).applyTo(typed).cables().require("W3");
        assertThat(joined.lengthEstimated()).isTrue();
        Insertions.Inserted second = dropped(parted, "W3", on(parted, "W3", 0.5));
        Drawing thrice = second.edit().applyTo(parted);
        Cable two = Edits.delete(Set.of(second.id())).applyTo(thrice).cables().require("W3");
        assertThat(two.lengthEstimated()).as("still a share of the whole").isTrue();
    }

    @Test
    void a_cable_of_unknown_length_stays_unknown_in_both_parts() {
        Drawing d = circuit(1);
        d = d.with(d.cables().require("W3").withLengthM(null));

        Insertions.Inserted in = dropped(d, "W3", new Point(220, 100));
        Drawing after = in.edit().applyTo(d);

        assertThat(after.cables().require("W4").lengthM()).isNull();
        assertThat(after.cables().require("W4").lengthEstimated()).isFalse();
        assertThat(text(in)).isEqualTo(in.id() + " parts W3 into W3 and W4");
    }

    /** A line with a leg that is too short for a device, between two long ones. */
    private static Drawing stepped() {
        Drawing d = SmallBoat.put(SmallBoat.drawing(), "QB2", Kind.ISOLATOR, 220, 60);
        d = SmallBoat.put(d, "EA2", Kind.LIGHTING, 225, 160);
        d = SmallBoat.run(d, "W3", "QB2.2", "EA2.1", 12);
        return d.with(d.cables().require("W3").withBends(List.of(new Point(220, 100), new Point(225, 100))));
    }

    @Test
    void on_a_leg_that_is_too_short_it_goes_to_the_next_that_is_long_enough() {
        Drawing d = stepped();
        Point wanted = new Point(222.5, 100);
        assertThat(Objects.requireNonNull(Drawn.of(d).routes().get("W3")).points())
                .contains(new Point(220, 100), new Point(225, 100));

        Insertions.Inserted in = dropped(d, "W3", wanted);
        Drawing after = in.edit().applyTo(d);

        var place = after.components().require(in.id()).place();
        assertThat(place.rotationDegree() % 180).as("upright").isZero();
        assertThat(place.at().xMm()).isIn(220.0, 225.0);
        assertThat(Math.abs(place.at().yMm() - 100)).isBetween(5.0, 10.0);
        for (String w : List.of("W3", "W4")) {
            Scene scene = Drawn.of(after);
            Rect label = scene.items().stream()
                    .filter(i -> i.role() == Role.LABEL && i.subject().equals(w))
                    .map(SceneItem::bounds)
                    .findFirst()
                    .orElseThrow();
            Route line = Objects.requireNonNull(scene.routes().get(w));
            double far = line.points().stream()
                    .mapToDouble(p -> label.distance(p.xMm(), p.yMm()))
                    .min()
                    .orElseThrow();
            assertThat(Math.min(
                            far, line.nearest(label.centreX(), label.centreY()).distanceMm() - label.width() / 2))
                    .as("label of %s", w)
                    .isLessThan(10);
        }
    }

    @Test
    void estimated_lengths_are_said_on_the_sheet_and_found() {
        Drawing d = circuit(12);
        Drawing after = dropped(d, "W3", new Point(220, 100)).edit().applyTo(d);

        assertThat(Drawn.of(after).item(Role.CABLE, "W3").orElseThrow().title()).contains("≈ ");
        assertThat(Drawn.of(d).item(Role.CABLE, "W3").orElseThrow().title()).doesNotContain("≈");
        Finding f = Review.of(after, () -> false).findings().stream()
                .filter(x -> x.rule().equals("length-estimated"))
                .findFirst()
                .orElseThrow();
        assertThat(Words.english().text(f.message())).contains("W3 ", "W4 ", " m");
        assertThat(Review.of(d, () -> false).findings())
                .extracting(Finding::rule)
                .doesNotContain("length-estimated");
    }

    @Test
    void ends_of_the_link_are_terminals_of_the_device() {
        Drawing d = circuit(12);
        Insertions.Inserted in = dropped(d, "W3", new Point(220, 62));
        Drawing after = in.edit().applyTo(d);

        assertThat(after.cables().require("W3").from()).isEqualTo(TerminalRef.parse("EA2.1", "from"));
        assertThat(after.cables().require("W3").to()).isEqualTo(TerminalRef.parse(in.id() + ".1", "to"));
    }
}
