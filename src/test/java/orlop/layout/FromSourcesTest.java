package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.desk.Sample;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;
import orlop.symbols.SymbolLibrary;

/** What is asked of the places: a single-line diagram is read from the sources down (IEC 61082-1, from memory). */
class FromSourcesTest {
    private static final SymbolLibrary SYMBOLS = SymbolLibrary.bundled();
    private static final Rect ROOM = new Rect(30, 20, 334, 251);

    private static Set<String> on(Drawing d, String sheet) {
        Set<String> ids = new LinkedHashSet<>();
        d.components().stream().filter(c -> c.place().sheet().equals(sheet)).forEach(c -> ids.add(c.id()));
        return ids;
    }

    private static Drawing anew(Drawing d, String sheet) {
        return FromSources.placed(d, new FromSources(SYMBOLS).arrange(d, on(d, sheet), ROOM));
    }

    private static Drawing boat() {
        return Drawing.empty("boat")
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(Sheet.of("1", "main"));
    }

    private static Drawing put(Drawing d, String id, Kind kind) {
        return d.with(Component.of(id, kind, Place.at("1", 0, 0), List.of("24")));
    }

    private static Drawing run(Drawing d, String from, String to) {
        String id = "W" + (d.cables().size() + 1);
        return d.with(Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to")));
    }

    private static double y(Drawing d, String id) {
        return d.components().require(id).place().at().yMm();
    }

    private static double x(Drawing d, String id) {
        return d.components().require(id).place().at().xMm();
    }

    @ParameterizedTest
    @CsvSource({
        "pilot-cutter, 1",
        "pilot-cutter, 2",
        "pilot-cutter, 3",
        "pilot-cutter, 4",
        "pilot-cutter-first-sketch, 1",
        "coastal-sloop, 1",
        "harbour-workboat, 1"
    })
    void no_two_components_of_a_vessel_stand_on_one_another_and_all_stand_on_the_grid(String sample, String sheet) {
        Drawing d = anew(Sample.of(sample), sheet);

        List<Placed> all = new Placing(SYMBOLS).place(d, sheet, null);
        assertThat(all).isNotEmpty();
        List<String> over = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                if (all.get(i).ink().overlaps(all.get(j).ink())) {
                    over.add(all.get(i).id() + " " + all.get(j).id());
                }
            }
        }
        assertThat(over).isEmpty();
        assertThat(all).allSatisfy(p -> {
            assertThat(p.component().place().at().xMm() % 2.5).isZero();
            assertThat(p.component().place().at().yMm() % 2.5).isZero();
        });
    }

    @Test
    void sources_stand_over_the_bar_that_they_feed_and_loads_below() {
        Drawing d = boat();
        d = put(put(put(d, "GB1", Kind.BATTERY), "GA1", Kind.ALTERNATOR), "WC1", Kind.BUSBAR);
        d = put(put(put(d, "FC1", Kind.FUSE), "EA1", Kind.LIGHTING), "MA1", Kind.MOTOR);
        d = run(run(run(d, "GB1.1", "FC1.1"), "FC1.2", "WC1.a"), "WC1.b", "EA1.1");
        d = anew(run(run(d, "GA1.1", "WC1.c"), "WC1.d", "MA1.1"), "1");

        assertThat(y(d, "GB1")).isLessThan(y(d, "FC1"));
        assertThat(y(d, "FC1")).isLessThan(y(d, "WC1"));
        assertThat(y(d, "GA1")).isLessThan(y(d, "WC1"));
        assertThat(y(d, "EA1")).isGreaterThan(y(d, "WC1"));
        assertThat(y(d, "MA1")).isEqualTo(y(d, "EA1"));
        assertThat(x(d, "GB1")).as("one straight line").isEqualTo(x(d, "FC1"));
    }

    @Test
    void a_fuse_fed_at_its_second_terminal_is_turned_over() {
        Drawing d = put(put(put(boat(), "WC1", Kind.BUSBAR), "FC1", Kind.FUSE), "EA1", Kind.LIGHTING);
        d = put(d, "GB1", Kind.BATTERY);
        d = anew(run(run(run(d, "GB1.1", "WC1.a"), "WC1.b", "FC1.2"), "FC1.1", "EA1.1"), "1");

        assertThat(d.components().require("FC1").place().rotationDegree()).isEqualTo(180);
    }

    @Test
    void a_ring_of_bars_is_drawn_and_no_component_is_left_out() {
        Drawing d = put(boat(), "GB1", Kind.BATTERY);
        for (int i = 0; i < 5; i++) {
            d = put(d, "WC" + i, Kind.BUSBAR);
        }
        d = run(d, "GB1.1", "WC0.s");
        for (int i = 0; i < 5; i++) {
            d = run(d, "WC" + i + ".a", "WC" + (i + 1) % 5 + ".b");
        }

        Map<String, FromSources.Spot> spots = new FromSources(SYMBOLS).arrange(d, on(d, "1"), ROOM);

        assertThat(spots.keySet()).isEqualTo(on(d, "1"));
        assertThat(spots.values()).extracting(FromSources.Spot::at).doesNotHaveDuplicates();
    }

    @Test
    void many_boards_one_behind_the_other_take_no_longer_than_their_number() {
        Drawing d = put(boat(), "GB1", Kind.BATTERY);
        String before = "GB1.1";
        for (int i = 0; i < 120; i++) {
            d = run(put(d, "WC" + i, Kind.BUSBAR), before, "WC" + i + ".a");
            d = run(put(d, "EA" + i, Kind.LIGHTING), "WC" + i + ".b", "EA" + i + ".1");
            before = "WC" + i + ".c";
        }

        assertThat(new FromSources(SYMBOLS).arrange(d, on(d, "1"), ROOM)).hasSize(241);
    }

    @Test
    void a_chain_that_no_ship_has_is_refused_and_nothing_overflows() {
        Drawing d = put(boat(), "GB1", Kind.BATTERY);
        String before = "GB1.1";
        for (int i = 0; i < 1_500; i++) {
            d = run(put(d, "FC" + i, Kind.FUSE), before, "FC" + i + ".1");
            before = "FC" + i + ".2";
        }

        assertThat(new FromSources(SYMBOLS).arrange(d, on(d, "1"), ROOM)).isEmpty();
    }

    @Test
    void what_is_not_joined_stands_side_by_side() {
        Drawing d = boat();
        for (int i = 0; i < 30; i++) {
            d = put(d, "EA" + i, Kind.LIGHTING);
        }
        Drawing placed = anew(d, "1");

        assertThat(on(placed, "1")).allSatisfy(id -> assertThat(x(placed, id)).isBetween(ROOM.minX(), ROOM.maxX()));
        assertThat(y(placed, "EA0")).isLessThan(y(placed, "EA29"));
    }
}
