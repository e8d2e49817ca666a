package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.util.Objects;
import java.util.Set;
import javax.swing.Action;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Cable;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.TerminalRef;

/** What the keys do on the sheet, without a screen. */
@Timeout(60)
class SheetKeysTest extends OnBench {
    SheetKeysTest() {
        super(TestBoat.drawing().with(ElectricalSystem.of("230", Nature.AC1, 230)));
    }

    private Drawing drawing() {
        return on.session().state().drawing();
    }

    private void press(String... keys) throws Exception {
        for (String key : keys) {
            HeadlessBench.onUi(() -> {
                Action a = Objects.requireNonNull(
                        on.bench().canvas().getActionMap().get("keys." + key), key);
                a.actionPerformed(new ActionEvent(on.bench().canvas(), ActionEvent.ACTION_PERFORMED, ""));
            });
        }
        HeadlessBench.onUi(on::paint);
    }

    private void select(String... ids) throws Exception {
        HeadlessBench.onUi(() -> on.session().select(Set.of(ids)));
    }

    private RunTool runFrom(String id) throws Exception {
        select(id);
        on.run(CommandId.RUN);
        return (RunTool) on.bench().canvas().tool();
    }

    private void type(RunTool tool, String tag) throws Exception {
        HeadlessBench.onUi(() -> tag.chars().forEach(c -> tool.typed((char) c)));
    }

    private String said() {
        return ((JLabel) on.named("status").orElseThrow()).getText();
    }

    @Test
    void a_cable_is_run_by_keys_from_one_component_to_another_by_its_tag() throws Exception {
        type(runFrom("GA1"), "QB1");
        press("ENTER");

        String made = on.session().state().soleSelection().orElseThrow();
        Cable w = drawing().cables().require(made);
        assertThat(start.cables().contains(made)).isFalse();
        assertThat(w.from().component()).isEqualTo("GA1");
        assertThat(w.to().component()).isEqualTo("QB1");
        assertThat(on.bench().canvas().busy()).isFalse();
        on.run(CommandId.UNDO);
        assertThat(drawing()).isEqualTo(start);
    }

    @Test
    void a_tag_leads_to_the_free_terminal_that_is_nearest() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session()
                    .apply(Edits.place(orlop.drawing.Component.of(
                            "GB8", Kind.BATTERY, Place.at("1", 340, 150), java.util.List.of("24"))));
            on.session()
                    .apply(Edits.place(orlop.drawing.Component.of(
                            "FC88", Kind.FUSE, Place.at("1", 340, 110), java.util.List.of("24"))));
            on.paint();
        });
        type(runFrom("GB8"), "FC88");
        press("ENTER");
        Cable up =
                drawing().cables().require(on.session().state().soleSelection().orElseThrow());

        assertThat(up.from()).as("the upper one").isEqualTo(new TerminalRef("GB8", "1"));
        assertThat(up.to()).as("the lower one").isEqualTo(new TerminalRef("FC88", "2"));
    }

    private void inverterAndShore() throws Exception {
        HeadlessBench.onUi(() -> {
            place("TB8", Kind.INVERTER_CHARGER, 300, "24", "230");
            place("QC8", Kind.CHANGEOVER_SWITCH, 330, "230");
            place("XD8", Kind.SHORE_INLET, 360, "230");
            on.paint();
        });
    }

    private void place(String id, Kind kind, double x, String... systems) {
        on.session()
                .apply(Edits.place(
                        orlop.drawing.Component.of(id, kind, Place.at("1", x, 45), java.util.List.of(systems))));
    }

    /** By tag from the one to the other; where it begins and ends. */
    private String ran(String from, String to) throws Exception {
        type(runFrom(from), to);
        press("ENTER");
        Cable w =
                drawing().cables().require(on.session().state().soleSelection().orElseThrow());
        return w.from() + " to " + w.to();
    }

    @Test
    void a_tag_typed_before_the_beginning_is_taken_begins_and_ends_where_the_cable_belongs() throws Exception {
        inverterAndShore();

        assertThat(ran("TB8", "QC8")).as("its output, to the first way").isEqualTo("TB8.2 to QC8.1");
        assertThat(ran("XD8", "QC8")).as("the inlet, to the other way").isEqualTo("XD8.1 to QC8.2");
        assertThat(ran("XD8", "TB8")).as("a source feeds the input").isEqualTo("XD8.1 to TB8.3");
    }

    @Test
    void what_shore_or_generator_feeds_through_a_changeover_is_the_input_of_an_inverter_that_charges()
            throws Exception {
        inverterAndShore();
        HeadlessBench.onUi(() -> {
            place("GA8", Kind.GENERATOR, 390, "230");
            on.paint();
        });

        assertThat(ran("XD8", "QC8")).isEqualTo("XD8.1 to QC8.1");
        assertThat(ran("GA8", "QC8")).isEqualTo("GA8.1 to QC8.2");
        assertThat(ran("TB8", "QC8")).as("its input, at what is common").isEqualTo("TB8.3 to QC8.3");
    }

    @Test
    void of_two_ways_the_one_that_is_left_is_for_the_output_of_an_inverter() throws Exception {
        inverterAndShore();

        assertThat(ran("XD8", "QC8")).isEqualTo("XD8.1 to QC8.1");
        assertThat(ran("TB8", "QC8")).isEqualTo("TB8.2 to QC8.2");
    }

    @Test
    void the_negative_of_a_bank_is_not_what_is_offered_first_however_near_it_is() throws Exception {
        HeadlessBench.onUi(() -> {
            place("GB8", Kind.BATTERY, 330, "24");
            on.session()
                    .apply(Edits.place(orlop.drawing.Component.of(
                            "EA8", Kind.LIGHTING, Place.at("1", 350, 60), java.util.List.of("24"))));
            on.paint();
        });
        runFrom("EA8");
        assertThat(said()).contains("EA8.1").contains("GB8.1").doesNotContain("GB8.2");
    }

    @Test
    void a_fuse_is_offered_where_its_cable_is_fed() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(TestBoat.UNGUARDED));
            on.bench().canvas().byKeys(true);
            on.bench().locker().take(Kind.FUSE);
        });
        press("ENTER");
        double toFuse = drawing().cables().stream()
                .filter(w -> w.from().component().equals("24MAIN")
                        && w.to().component()
                                .equals(on.session().state().soleSelection().orElseThrow()))
                .mapToDouble(w -> Objects.requireNonNull(w.lengthM()))
                .findFirst()
                .orElseThrow();

        assertThat(toFuse).as("of 11 m, from the bar").isLessThan(4);
    }

    @Test
    void what_is_offered_below_a_bar_keeps_clear_of_the_foot_of_the_sheet() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session()
                    .apply(Edits.place(orlop.drawing.Component.of(
                            "WC8", Kind.BUSBAR, Place.at("1", 330, 195), java.util.List.of("24"))));
            on.session().select(Set.of("WC8"));
            on.paint();
            on.bench().canvas().byKeys(true);
            on.bench().locker().take(Kind.HEATER);
        });
        press("ENTER");
        orlop.drawing.Component heater = drawing()
                .components()
                .require(on.session().state().soleSelection().orElseThrow());
        double foot = on.bench().canvas().scene().orElseThrow().items().stream()
                .filter(i -> i.role() == orlop.scene.Role.LEGEND)
                .mapToDouble(i -> i.bounds().minY())
                .min()
                .orElseThrow();

        assertThat(heater.kind()).isEqualTo(Kind.HEATER);
        assertThat(heater.place().at().yMm()).isLessThan(foot - 10).isGreaterThan(200);
    }

    @Test
    void two_that_are_selected_are_joined_where_the_cable_belongs() throws Exception {
        inverterAndShore();
        HeadlessBench.onUi(
                () -> on.session().select(new java.util.LinkedHashSet<>(java.util.List.of("24MAIN", "TB8"))));
        on.run(CommandId.JOIN);
        String made = on.session().state().soleSelection().orElseThrow();

        assertThat(drawing().cables().require(made).to()).isEqualTo(new TerminalRef("TB8", "1"));
    }

    @Test
    void a_terminal_is_named_with_what_it_is() throws Exception {
        inverterAndShore();
        runFrom("TB8");

        assertThat(said()).contains("TB8.1 (DC)");
    }

    @Test
    void two_components_are_joined_directly_with_the_alt_key() throws Exception {
        type(runFrom("GA1"), "QB1");
        press("alt ENTER");

        assertThat(drawing().links().size()).isEqualTo(start.links().size() + 1);
        assertThat(drawing().cables()).isEqualTo(start.cables());
    }

    @Test
    void a_terminal_that_cannot_take_the_cable_says_why_and_does_not_take_it() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session()
                    .apply(Edits.place(orlop.drawing.Component.of(
                            "GA8", Kind.GENERATOR, Place.at("1", 300, 45), java.util.List.of("230"))));
            on.session()
                    .apply(Edits.place(orlop.drawing.Component.of(
                            "EB8", Kind.HEATER, Place.at("1", 330, 45), java.util.List.of("230"))));
            TerminalRef a = new TerminalRef("GA8", "1");
            on.session().apply(Edits.runCable(Cable.of("W88", a, new TerminalRef("EB8", "1"))));
            on.paint();
        });
        Drawing before = drawing();

        type(runFrom("GB1"), "GA8");
        String why = said();
        press("ENTER");

        assertThat(why).contains("GA8").contains("230").contains("24");
        assertThat(drawing()).isEqualTo(before);
        assertThat(on.bench().canvas().busy()).as("another can be chosen").isTrue();
        on.run(CommandId.BACK_OUT);
        assertThat(on.bench().canvas().busy()).isFalse();
        assertThat(drawing()).isEqualTo(before);
    }

    @Test
    void full_stop_offers_only_what_can_take_the_cable_and_comes_round() throws Exception {
        runFrom("GA1");
        String first = said();
        press("PERIOD");
        String second = said();
        press("COMMA");

        assertThat(second).isNotEqualTo(first).startsWith(first.substring(0, 10));
        assertThat(said()).isEqualTo(first);
    }

    @Test
    void a_component_is_offered_beside_the_selected_one_and_set_down_again_and_again() throws Exception {
        select("QB1");
        press("PERIOD", "COMMA"); // from now on it is worked by keys
        select("QB1");
        HeadlessBench.onUi(() -> on.bench().locker().take(Kind.LIGHTING));
        assertThat(said()).contains("Enter");
        press("shift ENTER", "ENTER");

        assertThat(drawing().components().size()).isEqualTo(start.components().size() + 2);
        assertThat(on.bench().canvas().busy()).isFalse();
    }

    @Test
    void ctrl_and_an_arrow_lead_to_what_lies_that_way() throws Exception {
        select("FC1");
        press("ctrl UP");
        String above = on.session().state().soleSelection().orElseThrow();
        press("ctrl shift DOWN");

        assertThat(above).isNotEqualTo("FC1");
        assertThat(on.session().state().selection()).hasSize(2).contains(above);
    }

    @Test
    void alt_and_an_arrow_move_a_label_in_one_step_of_the_history() throws Exception {
        select("GB1");
        press("alt RIGHT", "alt RIGHT", "alt DOWN");

        assertThat(drawing().components().require("GB1").place().labelAt()).isNotNull();
        on.run(CommandId.UNDO);
        assertThat(drawing()).isEqualTo(start);
    }

    @Test
    void a_bar_is_stretched_and_a_cable_led_aside_by_keys() throws Exception {
        select("24MAIN");
        press("alt shift RIGHT");
        Distribution.Busbar bar =
                (Distribution.Busbar) drawing().components().require("24MAIN").particulars();
        select("W6");
        press("alt shift LEFT");

        assertThat(bar.drawnLengthMm()).isEqualTo(245);
        assertThat(drawing().cables().require("W6").bends()).isNotEmpty();
    }

    @Test
    void plus_and_minus_do_so_too_where_a_window_manager_keeps_the_arrows() throws Exception {
        select("24MAIN");
        press("typed +", "typed +", "typed -");
        Distribution.Busbar bar =
                (Distribution.Busbar) drawing().components().require("24MAIN").particulars();
        select("W6");
        press("typed +");

        assertThat(bar.drawnLengthMm()).isEqualTo(245);
        assertThat(drawing().cables().require("W6").bends()).isNotEmpty();
        press("typed -");
        select("GB1");
        Drawing before = drawing();
        press("typed +");
        assertThat(drawing()).isEqualTo(before);
    }

    @Test
    void with_nothing_selected_the_arrows_move_the_sheet_and_not_what_is_drawn() throws Exception {
        select();
        Viewport before = on.bench().canvas().viewport();
        press("RIGHT");

        assertThat(on.bench().canvas().viewport()).isNotEqualTo(before);
        assertThat(drawing()).isEqualTo(start);
    }

    @Test
    void a_key_that_can_do_nothing_now_says_why() throws Exception {
        select();
        HeadlessBench.onUi(
                () -> Objects.requireNonNull(on.bench().panel().getActionMap().get(CommandId.RENAME))
                        .actionPerformed(new ActionEvent(on.bench().panel(), ActionEvent.ACTION_PERFORMED, "")));

        assertThat(said()).contains(Texts.of("editor.why.rename"));
    }

    @Test
    void a_device_that_is_deleted_leaves_the_healed_cable_selected_and_comes_back_selected() throws Exception {
        select("FC1");
        on.run(CommandId.DELETE);
        String healed = on.session().state().soleSelection().orElseThrow();
        assertThat(drawing().cables().contains(healed)).isTrue();
        select();
        on.run(CommandId.UNDO);

        assertThat(on.session().state().selection()).containsExactly("FC1");
        assertThat(drawing()).isEqualTo(start);
    }
}
