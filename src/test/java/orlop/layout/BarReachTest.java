package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;
import orlop.symbols.SymbolLibrary;

class BarReachTest {
    private static final Rect AREA = new Rect(20, 10, 334, 251);

    private Drawing drawing =
            Drawing.empty("x").with(ElectricalSystem.of("24", Nature.DC, 24)).with(Sheet.of("1", ""));
    private final List<Connection> connections = new ArrayList<>();

    private void put(String id, Kind kind, double x, double y) {
        drawing = drawing.with(Component.of(id, kind, Place.at("1", x, y), List.of("24")));
    }

    private void join(String from, String to) {
        TerminalRef a = TerminalRef.parse(from, "from");
        TerminalRef b = TerminalRef.parse(to, "to");
        Link link = Link.of(a, b);
        drawing = drawing.with(link);
        connections.add(new Connection(link.id(), a, b, List.of()));
    }

    private List<Placed> placed() {
        return new Placing(SymbolLibrary.bundled()).place(drawing, "1", null);
    }

    private Rect bar() {
        return placed().stream()
                .filter(p -> p.id().equals("WC1"))
                .map(p -> Objects.requireNonNull(p.bar()))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            names = {"BUSBAR", "DISTRIBUTION_BOARD"})
    void a_bar_grows_from_tap_to_tap_until_all_that_hang_evenly_fall_straight(Kind kind) {
        put("WC1", kind, 100, 90);
        for (int k = 0; k < 12; k++) {
            put("FC" + k, Kind.CIRCUIT_BREAKER, 35 + 25 * k, 125);
            join("WC1." + k, "FC" + k + ".1");
        }

        Map<String, Way> ways = Router.route(placed(), connections, AREA, List.of());

        assertThat(ways.values())
                .hasSize(12)
                .allSatisfy(w -> assertThat(w.points()).hasSize(2));
        assertThat(bar().minX()).isLessThanOrEqualTo(35);
        assertThat(bar().maxX()).isBetween(310.0, 315.0);
    }

    @Test
    void what_stands_alone_far_away_does_not_lengthen_a_bar() {
        put("WC1", Kind.BUSBAR, 100, 90);
        double before = bar().maxX();
        put("FC1", Kind.CIRCUIT_BREAKER, 300, 125);
        join("WC1.a", "FC1.1");

        assertThat(bar().maxX()).isEqualTo(before);
    }

    @Test
    void a_bar_grows_only_as_far_as_nothing_stands_in_its_way() {
        put("WC1", Kind.BUSBAR, 60, 90);
        for (int k = 0; k < 6; k++) {
            put("FC" + k, Kind.CIRCUIT_BREAKER, 90 + 30 * k, 125);
            join("WC1." + k, "FC" + k + ".1");
        }
        put("MA1", Kind.MOTOR, 170, 90);

        assertThat(bar().maxX()).isBetween(122.5, 160.0);
    }

    /** 2.5 mm above the bar, beyond its end: where a device is put that sits right at a bar. */
    @ParameterizedTest
    @ValueSource(doubles = {2.5, 5, 7.5, 20})
    void a_bar_grows_to_what_sits_right_at_it(double gapMm) {
        put("WC1", Kind.BUSBAR, 100, 90);
        double end = bar().minX();
        put("FC1", Kind.FUSE, end - 12.5, 90 - gapMm - 5);
        join("FC1.2", "WC1.a");

        Map<String, Way> ways = Router.route(placed(), connections, AREA, List.of());

        assertThat(ways.values())
                .singleElement()
                .satisfies(w -> assertThat(w.points()).hasSize(2));
        assertThat(bar().minX()).isLessThan(end - 12.5);
    }
}
