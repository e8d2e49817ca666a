package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static orlop.drawing.Sketch.cable;
import static orlop.drawing.Sketch.component;
import static orlop.drawing.Sketch.end;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EditsTest {
    private final Drawing start = Sketch.make();

    /** Makes the edit in a history, takes it back, makes it again; nothing may be unsound. */
    private Drawing made(Edit edit) {
        return made(start, edit);
    }

    private static Drawing made(Drawing start, Edit edit) {
        History history = new History(start);
        assertThat(history.apply(edit)).as("changed").isTrue();
        Drawing after = history.current();
        history.undo();
        assertThat(history.current()).isSameAs(start);
        history.redo();
        assertThat(history.current()).isSameAs(after);
        assertThat(edit.applyTo(start)).isEqualTo(after);
        assertThat(Soundness.flaws(after)).isEmpty();
        assertThat(Words.english().text(edit.label())).doesNotContain("drawing.", "{");
        return after;
    }

    private Message refused(Edit edit) {
        History history = new History(start);
        Edit.Refusal r = Objects.requireNonNull(
                catchThrowableOfType(Edit.Refusal.class, () -> history.apply(edit)), "it was not refused");
        assertThat(history.current()).isSameAs(start);
        assertThat(history.undoLabel()).isEmpty();
        assertThat(Words.english().text(r.reason())).doesNotContain("drawing.", "{");
        return r.reason();
    }

    @Test
    void the_sketch_is_sound() {
        assertThat(Soundness.flaws(start)).isEmpty();
    }

    @Test
    void a_component_is_placed() {
        Component c = component("E7", Kind.HEATER, 30, "12");
        assertThat(made(Edits.place(c))).isEqualTo(start.with(c));
    }

    @ParameterizedTest
    @ValueSource(strings = {"E1", "W1", "strap"})
    void a_taken_tag_is_refused(String tag) {
        assertThat(refused(Edits.place(component(tag, Kind.HEATER, 30, "12"))))
                .isEqualTo(Message.of("drawing.refuse.tag-taken", tag));
        assertThat(refused(Edits.runCable(cable(tag, "WC1.z", "E2.2", 1.0))))
                .isEqualTo(Message.of("drawing.refuse.tag-taken", tag));
        assertThat(refused(Edits.rename("E2", tag))).isEqualTo(Message.of("drawing.refuse.tag-taken", tag));
    }

    @Test
    void a_component_of_an_unknown_system_or_sheet_is_refused() {
        assertThat(refused(Edits.place(component("E7", Kind.HEATER, 30, "48"))).key())
                .isEqualTo("drawing.flaw.no-system");
        Component lost = component("E7", Kind.HEATER, 30, "24").withPlace(Place.at("9", 0, 0));
        assertThat(refused(Edits.place(lost)).key()).isEqualTo("drawing.flaw.no-sheet");
    }

    @Test
    void components_move_and_hand_set_bends_between_them_follow() {
        Drawing bent = start.with(start.cables().require("W3").withBends(List.of(new Point(85, 70))))
                .with(start.cables().require("W4").withBends(List.of(new Point(90, 60))));

        Drawing after = made(bent, Edits.move(Set.of("WC1", "E1"), 10, -5, "k"));

        assertThat(after.components().require("WC1").place().at()).isEqualTo(new Point(90, 45));
        assertThat(after.components().require("E2")).isEqualTo(bent.components().require("E2"));
        assertThat(after.cables().require("W3").bends()).containsExactly(new Point(95, 65));
        assertThat(after.cables().require("W4").bends()).containsExactly(new Point(90, 60));
    }

    @Test
    void a_locked_a_lost_and_a_far_component_are_not_moved() {
        Component c = start.components().require("E1");
        Drawing locked = start.with(new Component(
                c.id(),
                c.name(),
                c.place(),
                c.systems(),
                c.refit(),
                c.stage(),
                c.location(),
                true,
                c.particulars(),
                c.extras()));
        Edit.Refusal r = catchThrowableOfType(
                Edit.Refusal.class, () -> Edits.move(Set.of("E1"), 1, 1, "k").applyTo(locked));
        assertThat(r.reason()).isEqualTo(Message.of("drawing.refuse.locked", "E1"));
        assertThat(refused(Edits.move(Set.of("E9"), 1, 1, "k"))).isEqualTo(Message.of("drawing.refuse.gone", "E9"));
        assertThat(refused(Edits.move(Set.of("E1"), 1e6, 0, "k")).key()).isEqualTo("drawing.range.between");
    }

    @Test
    void a_cable_is_run_and_a_link_is_made() {
        Cable w = cable("W9", "WC1.d", "FC1.2", 1.0);
        assertThat(made(Edits.runCable(w))).isEqualTo(start.with(w));
        Link l = Link.of(end("WC1.e"), end("FC1.2"));
        assertThat(made(Edits.joinDirectly(l))).isEqualTo(start.with(l));
    }

    @Test
    void a_cable_or_link_that_cannot_be_is_refused() {
        assertThat(refused(Edits.runCable(cable("W9", "WC1.d", "E3.1", 1.0))).key())
                .isEqualTo("drawing.flaw.systems-meet");
        assertThat(refused(Edits.runCable(cable("W9", "WC1.d", "E2.7", 1.0))).key())
                .isEqualTo("drawing.flaw.no-terminal");
        assertThat(refused(Edits.runCable(cable("W9", "WC1.d", "E8.1", 1.0))).key())
                .isEqualTo("drawing.flaw.no-component");
        assertThat(refused(Edits.joinDirectly(Link.of(end("QB1.2"), end("WC1.main"))))
                        .key())
                .isEqualTo("drawing.refuse.joined");
        assertThat(refused(Edits.joinDirectly(Link.of(end("QB1.2"), end("E3.1"))))
                        .key())
                .isEqualTo("drawing.flaw.systems-meet");
    }

    @Test
    void particulars_of_components_cables_conditions_and_vessel_change() {
        Component c = start.components().require("E1").withName("bilge pump");
        assertThat(made(Edits.change(c)).components().require("E1").name()).isEqualTo("bilge pump");
        Cable w = start.cables().require("W1").withAreaMm2(70.0);
        assertThat(made(Edits.change(w)).cables().require("W1").areaMm2()).isEqualTo(70);
        OperatingCondition o = OperatingCondition.asDrawn("night", "").withSource("GB1", false);
        assertThat(made(Edits.change(o)).conditions().size()).isEqualTo(2);
        assertThat(made(Edits.change(Vessel.named("Other"))).vessel().name()).isEqualTo("Other");
        Acceptance a = new Acceptance("a2", "rule", "E1", "known", "", "", List.of(), Extras.NONE);
        assertThat(made(Edits.accept(a)).accepted().size()).isEqualTo(2);
    }

    @Test
    void a_change_that_leaves_a_cable_without_its_terminal_is_refused() {
        Component c = start.components().require("E1");
        assertThat(refused(Edits.change(c.withParticulars(Kind.HEATER.defaults())))
                        .key())
                .isEqualTo("drawing.flaw.no-terminal");
        assertThat(refused(Edits.change(c.withSystems(List.of("12")))).key()).isEqualTo("drawing.flaw.systems-meet");
        assertThat(refused(Edits.change(c.withId("E9")))).isEqualTo(Message.of("drawing.refuse.gone", "E9"));
        assertThat(refused(Edits.change(cable("W9", "WC1.a", "E1.1", 1.0))))
                .isEqualTo(Message.of("drawing.refuse.gone", "W9"));
        OperatingCondition o = OperatingCondition.asDrawn("x", "").withSwitch("QB1", "7");
        assertThat(refused(Edits.change(o)).key()).isEqualTo("drawing.flaw.position");
    }

    @Test
    void a_component_is_renamed_everywhere() {
        Drawing after = made(Edits.rename("QB1", "Q-main"));

        assertThat(after.components().contains("QB1")).isFalse();
        assertThat(after.cables().require("W2").to()).isEqualTo(end("Q-main.1"));
        assertThat(after.links().require("Q-main.2~WC1.main").from()).isEqualTo(end("Q-main.2"));
        assertThat(after.conditions().require("anchor").switches().get("Q-main"))
                .isEqualTo("open");
        assertThat(after.measurements().require("m3").item()).isEqualTo("Q-main.2~WC1.main");
        assertThat(after.components().stream().map(Component::id).toList())
                .isEqualTo(start.components().stream()
                        .map(c -> c.id().equals("QB1") ? "Q-main" : c.id())
                        .toList());
        assertThat(made(Edits.rename("FC1", "F1")).accepted().require("a1").item())
                .isEqualTo("F1");
        assertThat(made(Edits.rename("FC1", "F1")).measurements().require("m2").item())
                .isEqualTo("F1");
        Drawing battery = made(Edits.rename("GB1", "G"));
        assertThat(battery.conditions().require("anchor").sources().get("G")).isEqualTo("on");
        assertThat(battery.components().require("XE1").particulars()).isEqualTo(new Earth.NeutralEarthLink("G"));
        assertThat(battery.links().require("strap").from()).isEqualTo(end("G.2"));
        Drawing load = made(Edits.rename("E1", "E9"));
        assertThat(load.conditions().require("anchor").load("E9").average()).isEqualTo(0.25);
        assertThat(load.links().require("strap").to()).isEqualTo(end("E9.2"));
        assertThat(made(Edits.rename("XL1", "X")).components().require("XL2").particulars())
                .isEqualTo(new Distribution.SheetLink("X"));
    }

    @Test
    void a_cable_is_renamed_with_what_was_measured_on_it() {
        Drawing after = made(Edits.rename("W2", "W-main"));
        assertThat(after.cables().require("W-main").to()).isEqualTo(end("QB1.1"));
        assertThat(after.measurements().require("m1").item()).isEqualTo("W-main");
    }

    @Test
    void an_impossible_new_tag_is_refused() {
        assertThat(refused(Edits.rename("E1", "two words")).key()).isEqualTo("drawing.range.id");
        assertThat(refused(Edits.rename("E1", "")).key()).isEqualTo("drawing.range.id");
        assertThat(refused(Edits.rename("E9", "E8")).key()).isEqualTo("drawing.refuse.gone");
    }

    @Test
    void a_device_inserted_in_the_middle_parts_the_cable() {
        Drawing after = made(Edits.insert("W3", component("FC2", Kind.FUSE, 0, "24"), 0.4));

        assertThat(after.cables().require("W3"))
                .isEqualTo(cable("W3", "WC1.a", "FC2.1", 4.0).withLengthEstimated(true));
        assertThat(after.cables().require("W7"))
                .isEqualTo(cable("W7", "FC2.2", "E1.1", 6.0).withLengthEstimated(true));
        assertThat(after.links()).isEqualTo(start.links());
    }

    @Test
    void a_device_inserted_at_an_end_sits_on_the_terminal() {
        Component fuse = component("FC2", Kind.FUSE, 0, "24");
        Drawing first = made(Edits.insert("W3", fuse, 0));
        assertThat(first.cables().require("W3")).isEqualTo(cable("W3", "FC2.2", "E1.1", 10.0));
        assertThat(first.links().require("WC1.a~FC2.1").lengthM()).isZero();
        Drawing last = made(Edits.insert("W3", fuse, 1));
        assertThat(last.cables().require("W3")).isEqualTo(cable("W3", "WC1.a", "FC2.1", 10.0));
        assertThat(last.links().require("FC2.2~E1.1").lengthM()).isZero();
        assertThat(first.cables().size()).isEqualTo(6);
    }

    @Test
    void the_parts_of_a_cable_of_unknown_length_have_none() {
        Drawing after = made(Edits.insert("W4", component("FC2", Kind.FUSE, 0, "24"), 0.5));
        assertThat(after.cables().require("W4").lengthM()).isNull();
        assertThat(after.cables().require("W7").lengthM()).isNull();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.4, 1})
    void deleting_an_inserted_device_heals_the_cable(double share) {
        Drawing inserted =
                Edits.insert("W3", component("FC2", Kind.FUSE, 0, "24"), share).applyTo(start);

        Drawing healed = made(inserted, Edits.delete(Set.of("FC2")));

        assertThat(healed).isEqualTo(start);
    }

    @Test
    void what_does_not_stand_in_a_line_or_is_of_another_system_is_not_inserted() {
        assertThat(refused(Edits.insert("W3", component("E9", Kind.HEATER, 0, "24"), 0.5))
                        .key())
                .isEqualTo("drawing.refuse.not-inline");
        assertThat(refused(Edits.insert("W3", component("GB9", Kind.BATTERY, 0, "24"), 0.5))
                        .key())
                .isEqualTo("drawing.refuse.not-inline");
        assertThat(refused(Edits.insert("W3", component("FC9", Kind.FUSE, 0, "12"), 0.5))
                        .key())
                .isEqualTo("drawing.flaw.systems-meet");
        assertThat(refused(Edits.insert("W9", component("FC9", Kind.FUSE, 0, "24"), 0.5))
                        .key())
                .isEqualTo("drawing.refuse.gone");
        assertThat(refused(Edits.insert("W3", component("FC9", Kind.FUSE, 0, "24"), 1.5))
                        .key())
                .isEqualTo("drawing.range.between");
    }

    @Test
    void deleting_a_device_between_two_cables_joins_them_and_drops_what_was_measured_there() {
        Drawing after = made(Edits.delete(Set.of("FC1")));
        assertThat(after.cables().require("W1")).isEqualTo(cable("W1", "GB1.1", "QB1.1", 5.0));
        assertThat(after.cables().contains("W2")).isFalse();
        assertThat(after.measurements().stream().map(Measurement::id)).containsExactly("m3");
        assertThat(after.accepted().isEmpty()).isTrue();
    }

    @Test
    void deleting_a_device_between_two_links_adds_their_lengths() {
        Drawing d = start.with(component("FC2", Kind.FUSE, 0, "24"))
                .with(new Link("l1", end("WC1.x"), end("FC2.1"), 0.1, null, Extras.NONE))
                .with(new Link("l2", end("FC2.2"), end("QB1.2"), 0.2, null, Extras.NONE));
        Drawing after = made(d, Edits.delete(Set.of("FC2")));
        assertThat(after.links().require("WC1.x~QB1.2").lengthM())
                .isCloseTo(0.3, org.assertj.core.data.Offset.offset(1e-12));
        assertThat(after.links().size()).isEqualTo(3);
    }

    @Test
    void deleting_a_load_takes_its_cables_and_what_conditions_say_of_it() {
        Drawing after = made(Edits.delete(Set.of("E1")));
        assertThat(after.cables().contains("W3")).isFalse();
        assertThat(after.links().contains("strap")).isFalse();
        assertThat(after.conditions().require("anchor").loads().isEmpty()).isTrue();
    }

    @Test
    void deleting_what_others_name_leaves_no_name_behind() {
        assertThat(made(Edits.delete(Set.of("XL1"))).components().require("XL2").particulars())
                .isEqualTo(new Distribution.SheetLink(""));
        assertThat(made(Edits.delete(Set.of("GB1"))).components().require("XE1").particulars())
                .isEqualTo(new Earth.NeutralEarthLink(""));
    }

    @Test
    void cables_links_and_notes_are_deleted_and_a_device_goes_with_its_cables() {
        Drawing after = made(Edits.delete(Set.of("W1", "strap", "n1")));
        assertThat(after.cables()).isEqualTo(start.cables().without("W1"));
        assertThat(after.links()).isEqualTo(start.links().without("strap"));
        assertThat(after.notes().isEmpty()).isTrue();
        Drawing all = made(Edits.delete(Set.of("FC1", "W1", "W2")));
        assertThat(all.cables().stream().map(Cable::id)).containsExactly("W3", "W4", "W5", "W6");
    }

    @Test
    void several_edits_are_one_step_and_one_refusal_refuses_all() {
        Message label = Message.of("drawing.edit.vessel");
        Edit both = Edits.all(label, List.of(Edits.rename("E1", "E8"), Edits.rename("E2", "E1")));
        assertThat(made(both).cables().require("W4").to()).isEqualTo(end("E1.1"));
        refused(Edits.all(label, List.of(Edits.rename("E1", "E8"), Edits.rename("E9", "E1"))));
    }
}
