package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.LoadState;
import orlop.drawing.Point;
import orlop.drawing.Soundness;
import orlop.drawing.Stage;
import orlop.drawing.TerminalRef;

class RepeatsTest {
    private static final Set<String> CIRCUIT = Set.of("FC1", "EA2", "W4", "W5");
    private final Drawing d = boat();

    private static TerminalRef end(String text) {
        return TerminalRef.parse(text, "end");
    }

    /** The small boat with a bar, on it a fuse right at the bar and a fuse on a cable, each with its lamp. */
    private static Drawing boat() {
        Drawing d = SmallBoat.put(SmallBoat.drawing(), "WC1", Kind.BUSBAR, 200, 60);
        d = SmallBoat.put(SmallBoat.put(d, "FC1", Kind.FUSE, 200, 90), "EA2", Kind.LIGHTING, 200, 140);
        d = SmallBoat.run(d, "W3", "QB1.1", "WC1.a", 1);
        d = SmallBoat.run(d, "W4", "WC1.b", "FC1.1", 0.3);
        d = SmallBoat.run(d, "W5", "FC1.2", "EA2.1", 6);
        d = d.with(d.cables().require("W5").withBends(List.of(new Point(205, 120))));
        return d.with(d.conditions().require("sail").withLoad("EA2", new LoadState(true, 0.5, 0.25, Extras.NONE)));
    }

    @Test
    void copies_get_fresh_tags_and_taps_of_the_same_bar() {
        Drawing after = Repeats.edit(CIRCUIT, 30, 0, 3).applyTo(d);

        assertThat(Repeats.added(d, after))
                .containsExactly("FC2", "EA3", "FC3", "EA4", "FC4", "EA5", "W6", "W7", "W8", "W9", "W10", "W11");
        assertThat(after.cables().require("W6"))
                .extracting(Cable::from, Cable::to, Cable::lengthM)
                .containsExactly(end("WC1.c"), end("FC2.1"), 0.3);
        assertThat(after.cables().require("W8").from()).isEqualTo(end("WC1.d"));
        assertThat(after.cables().require("W11").to()).isEqualTo(end("EA5.1"));
        assertThat(after.components().require("EA5").place().at()).isEqualTo(new Point(290, 140));
        assertThat(after.cables().require("W7").bends()).containsExactly(new Point(235, 120));
        assertThat(Soundness.flaws(after)).isEmpty();
    }

    @Test
    void the_tap_comes_along_though_only_the_components_are_chosen() {
        Drawing after = Repeats.edit(Set.of("FC1", "EA2"), 0, 80, 1).applyTo(d);

        assertThat(after.cables().size()).isEqualTo(d.cables().size() + 2);
    }

    @Test
    void a_link_to_the_bar_is_repeated_and_a_cable_to_a_device_is_not() {
        Drawing linked = d.withCables(d.cables().without("W4")).with(Link.of(end("WC1.b"), end("FC1.1")));

        Drawing after = Repeats.edit(Set.of("FC1", "QB1"), 30, 0, 1).applyTo(linked);

        assertThat(after.links().contains("WC1.d~FC2.1")).isTrue();
        assertThat(after.cables().stream()
                        .filter(w -> w.from().equals(end("QB2.1")))
                        .map(w -> w.to()))
                .as("the isolator's cable to the bar; those to the lamp and the battery would hang in the air")
                .containsExactly(end("WC1.c"));
        assertThat(after.cables().size()).isEqualTo(linked.cables().size() + 1);
    }

    @Test
    void a_copy_does_the_same_in_every_condition() {
        Drawing after = Repeats.edit(CIRCUIT, 30, 0, 1).applyTo(d);

        assertThat(after.conditions().require("sail").load("EA3").simultaneity())
                .isEqualTo(0.5);
    }

    @Test
    void a_copy_is_planned_work_and_not_locked() {
        Drawing done = Locks.set(CIRCUIT, true).applyTo(d);
        done = CardEdits.setAll(CIRCUIT, "stage", Stage.TESTED, "").applyTo(done);

        Drawing after = Repeats.edit(CIRCUIT, 30, 0, 1).applyTo(done);

        assertThat(after.components().require("FC2").locked()).isFalse();
        assertThat(after.components().require("FC2").stage()).isEqualTo(Stage.PLANNED);
        assertThat(after.cables().require("W7").stage()).isEqualTo(Stage.PLANNED);
    }

    @Test
    void copies_beyond_the_paper_are_refused_and_no_copies_are_a_bug() {
        Edit far = Repeats.edit(CIRCUIT, 300, 0, 90);

        assertThatThrownBy(() -> far.applyTo(d)).isInstanceOf(Edit.Refusal.class);
        assertThatThrownBy(() -> Repeats.edit(CIRCUIT, 30, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
