package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Particulars;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;
import orlop.scene.RandomSheet;
import orlop.symbols.SymbolLibrary;

class RouterTest {
    private static final Rect AREA = new Rect(20, 10, 334, 251);
    private static final Placing PLACING = new Placing(SymbolLibrary.bundled());

    private Drawing drawing =
            Drawing.empty("x").with(ElectricalSystem.of("24", Nature.DC, 24)).with(Sheet.of("1", ""));

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 50);
    }

    private void put(String id, Particulars p, double x, double y, int turn) {
        Place place = Place.at("1", x, y).withRotationDegree(turn);
        drawing = drawing.with(Component.of(id, p, place, List.of("24")));
    }

    private void put(String id, Kind kind, double x, double y) {
        put(id, kind.defaults(), x, y, 0);
    }

    private static Connection join(String id, String from, String to, Point... bends) {
        return new Connection(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"), List.of(bends));
    }

    private Map<String, Way> route(Connection... connections) {
        return Router.route(PLACING.place(drawing, "1", null), List.of(connections), AREA, List.of());
    }

    private static Way way(Map<String, Way> ways, String id) {
        return Objects.requireNonNull(ways.get(id));
    }

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    @Test
    void two_terminals_that_face_each_other_are_joined_straight() {
        put("F1", Kind.FUSE, 50, 50);
        put("M1", Kind.MOTOR, 50, 90);

        assertThat(way(route(join("W1", "F1.2", "M1.1")), "W1").points()).containsExactly(p(50, 55), p(50, 85));
    }

    @Test
    void a_drop_from_a_bar_falls_straight_from_where_the_other_end_is() {
        put("B", new Distribution.Busbar(null, 100), 100, 50, 0);
        put("F1", Kind.FUSE, 72.5, 70);
        put("F2", Kind.FUSE, 78.3, 90);

        Map<String, Way> ways = route(join("W1", "B.a", "F1.1"), join("W2", "F2.1", "B.b"));

        assertThat(way(ways, "W1").points()).containsExactly(p(72.5, 50), p(72.5, 65));
        assertThat(way(ways, "W2").points()).containsExactly(p(78.3, 85), p(78.3, 50));
    }

    @Test
    void a_standing_bar_is_tapped_from_the_side() {
        put("B", new Distribution.Busbar(null, 100), 100, 100, 90);
        put("F1", Kind.FUSE.defaults(), 130, 90, 90);

        Way w = way(route(join("W1", "B.a", "F1.2")), "W1");

        assertThat(w.points()).containsExactly(p(100, 90), p(125, 90));
    }

    @Test
    void a_line_goes_round_what_stands_in_its_way() {
        put("F1", Kind.FUSE, 50, 50);
        put("X", Kind.INVERTER, 50, 75);
        put("M1", Kind.MOTOR, 50, 110);

        List<Point> points = way(route(join("W1", "F1.2", "M1.1")), "W1").points();

        assertThat(points).hasSizeGreaterThan(2);
        assertThat(points.get(0)).isEqualTo(p(50, 55));
        assertThat(points.get(points.size() - 1)).isEqualTo(p(50, 105));
    }

    @Test
    void corners_set_by_hand_are_kept() {
        put("F1", Kind.FUSE, 50, 50);
        put("M1", Kind.MOTOR, 90, 100);

        Way w = way(route(join("W1", "F1.2", "M1.1", p(50, 62.5), p(120, 62.5), p(120, 90), p(90, 90))), "W1");

        assertThat(w.points()).containsExactly(p(50, 55), p(50, 62.5), p(120, 62.5), p(120, 90), p(90, 90), p(90, 95));
    }

    @Test
    void a_corner_out_of_line_is_joined_at_right_angles() {
        put("F1", Kind.FUSE, 50, 50);
        put("M1", Kind.MOTOR, 90, 100);

        Way w = way(route(join("W1", "F1.2", "M1.1", p(70, 70))), "W1");

        assertThat(w.points()).containsExactly(p(50, 55), p(50, 70), p(90, 70), p(90, 95)); // through (70, 70)
        assertOrthogonal(w);
    }

    @Test
    void parallel_lines_keep_the_grid_between_them() {
        for (int i = 0; i < 4; i++) {
            put("F" + i, Kind.FUSE, 50 + 10 * i, 50);
            put("M" + i, Kind.MOTOR, 150 + 20 * i, 120);
        }
        Map<String, Way> ways = route(
                join("W0", "F0.2", "M0.1"),
                join("W1", "F1.2", "M1.1"),
                join("W2", "F2.2", "M2.1"),
                join("W3", "F3.2", "M3.1"));
        List<Way> all = new ArrayList<>(ways.values());
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                assertThat(closest(all.get(i), all.get(j))).isGreaterThanOrEqualTo(2.5 - 1e-9);
            }
        }
    }

    @Test
    void three_ends_get_a_dot_and_a_crossing_gets_none() {
        put("F1", Kind.FUSE, 50, 50);
        put("M1", Kind.MOTOR, 50, 100);
        put("M2", Kind.MOTOR, 80, 100);
        put("L", Kind.FUSE.defaults(), 30, 75, 90);
        put("R", Kind.FUSE.defaults(), 110, 75, 90);
        List<Placed> placed = PLACING.place(drawing, "1", null);
        Map<String, Way> ways = route(join("W1", "F1.2", "M1.1"), join("W2", "F1.2", "M2.1"), join("W3", "L.1", "R.2"));

        assertThat(Junctions.dots(ways.values(), placed)).hasSize(1);
        assertThat(Junctions.dots(List.of(way(ways, "W1"), way(ways, "W3")), placed))
                .isEmpty();
    }

    @Test
    void a_change_far_away_leaves_a_way_as_it_is() {
        put("F1", Kind.FUSE, 50, 50);
        put("M1", Kind.MOTOR, 90, 100);
        put("F2", Kind.FUSE, 250, 150);
        put("M2", Kind.MOTOR, 280, 200);
        List<Point> before = way(route(join("W1", "F1.2", "M1.1"), join("W2", "F2.2", "M2.1")), "W1")
                .points();

        put("M2", Kind.MOTOR, 260, 220);

        assertThat(way(route(join("W1", "F1.2", "M1.1"), join("W2", "F2.2", "M2.1")), "W1")
                        .points())
                .isEqualTo(before);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ways_are_orthogonal_end_at_their_terminals_and_cross_no_symbol(long seed) {
        Drawing d = RandomSheet.request(seed).drawing();
        List<Placed> placed = PLACING.place(d, "1", null);
        List<Connection> connections = new ArrayList<>();
        d.links().values().forEach(l -> connections.add(new Connection(l.id(), l.from(), l.to(), List.of())));
        d.cables().values().forEach(c -> connections.add(new Connection(c.id(), c.from(), c.to(), List.of())));
        Map<String, Placed> byId = new LinkedHashMap<>();
        placed.forEach(q -> byId.put(q.id(), q));

        Map<String, Way> ways = Router.route(placed, connections, AREA, List.of());

        assertThat(ways).hasSameSizeAs(connections);
        for (Way w : ways.values()) {
            assertOrthogonal(w);
            assertEnd(byId, w.connection().from(), w.points().get(0));
            assertEnd(byId, w.connection().to(), w.points().get(w.points().size() - 1));
            placed.forEach(q -> assertClear(w, q));
        }
    }

    private static void assertOrthogonal(Way w) {
        for (int i = 1; i < w.points().size(); i++) {
            Point a = w.points().get(i - 1);
            Point b = w.points().get(i);
            assertThat(a.xMm() == b.xMm() || a.yMm() == b.yMm())
                    .as(w.connection().id() + " from " + a + " to " + b)
                    .isTrue();
        }
    }

    private static void assertEnd(Map<String, Placed> placed, TerminalRef end, Point at) {
        Placed p = Objects.requireNonNull(placed.get(end.component()));
        if (p.bar() != null) {
            assertThat(p.bar().grown(1e-9).contains(at.xMm(), at.yMm())).isTrue();
        } else {
            Port port = p.port(end.terminal()).orElseThrow();
            assertThat(at).isEqualTo(new Point(port.x(), port.y()));
        }
    }

    /** A way touches its own two components at their edges at most, and others not at all. */
    private static void assertClear(Way w, Placed p) {
        TerminalRef from = w.connection().from();
        TerminalRef to = w.connection().to();
        boolean own = from.component().equals(p.id()) || to.component().equals(p.id());
        if (own && p.bar() != null) {
            return;
        }
        Rect body = own ? p.ink().grown(-0.3) : p.ink().grown(0.5);
        for (int i = 1; i < w.points().size(); i++) {
            Rect leg = Rect.around(w.points().get(i - 1), w.points().get(i)).grown(1e-6);
            assertThat(leg.overlaps(body))
                    .as(w.connection().id() + " through " + p.id())
                    .isFalse();
        }
    }

    /** Least distance of two legs that run alongside each other. */
    private static double closest(Way a, Way b) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < a.points().size(); i++) {
            for (int j = 1; j < b.points().size(); j++) {
                Rect r = Rect.around(a.points().get(i - 1), a.points().get(i));
                Rect s = Rect.around(b.points().get(j - 1), b.points().get(j));
                boolean lying = r.height() == 0 && s.height() == 0;
                boolean standing = r.width() == 0 && s.width() == 0;
                double along = lying
                        ? Math.min(r.maxX(), s.maxX()) - Math.max(r.minX(), s.minX())
                        : Math.min(r.maxY(), s.maxY()) - Math.max(r.minY(), s.minY());
                if ((lying || standing) && along > 0) {
                    least = Math.min(least, lying ? Math.abs(r.minY() - s.minY()) : Math.abs(r.minX() - s.minX()));
                }
            }
        }
        return least;
    }

    @Test
    void a_line_led_by_hand_taps_a_bar_straight_across_from_its_corner_even_off_the_grid() {
        put("B", new Distribution.Busbar(null, 100), 100, 50, 0);
        put("F1", Kind.FUSE, 80, 90);

        Way w = way(route(join("W1", "B.a", "F1.1", p(111.3, 70), p(80, 70))), "W1");

        assertThat(w.points()).containsExactly(p(111.3, 50), p(111.3, 70), p(80, 70), p(80, 85));
    }

    @Test
    void a_line_led_by_hand_goes_round_and_never_back_over_itself() {
        put("F1", Kind.FUSE, 50, 50);
        put("M1", Kind.MOTOR, 50, 90);

        Way w = way(route(join("W1", "F1.2", "M1.1", p(75, 70))), "W1");

        assertThat(w.points()).containsExactly(p(50, 55), p(50, 70), p(75, 70), p(75, 80), p(50, 80), p(50, 85));
    }
}
