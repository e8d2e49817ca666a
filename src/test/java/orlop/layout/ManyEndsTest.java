package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Poles;
import orlop.drawing.Sheet;
import orlop.drawing.Switching;
import orlop.symbols.SymbolLibrary;

/** Switches and diode isolators of more ways than any symbol has. */
class ManyEndsTest {
    private static Placed placed(Component c) {
        Drawing d = Drawing.empty("x")
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(Sheet.of("1", ""))
                .with(c);
        return new Placing(SymbolLibrary.bundled()).place(d, "1", null).get(0);
    }

    private static Set<Point> ends(List<List<Point>> strokes) {
        Set<Point> ends = new HashSet<>();
        strokes.forEach(s -> {
            ends.add(s.get(0));
            ends.add(s.get(s.size() - 1));
        });
        return ends;
    }

    private static Component changeover(int ways, int turn) {
        Place at = Place.at("1", 80, 80).withRotationDegree(turn);
        return Component.of("QC1", new Switching.Changeover(ways, null, Poles.POSITIVE, 0, ""), at, List.of("24"));
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6})
    void every_terminal_of_a_switch_of_many_ways_has_a_stroke_and_the_blade_reaches_the_closed_way(int ways) {
        for (int turn : new int[] {0, 90, 180, 270}) {
            Component c = changeover(ways, turn);
            Placed p = placed(c);
            for (int way = 1; way <= ways; way++) {
                List<List<Point>> strokes = ManyEnds.strokes(c, Integer.toString(way));
                p.ports().forEach(q -> assertThat(ends(strokes)).contains(new Point(q.x(), q.y())));
                Port closed = p.port(Integer.toString(way)).orElseThrow();
                Point tip = strokes.get(strokes.size() - 1).get(2);
                Point contact = new Point(
                        closed.x() - 3.5 * closed.heading().dx(),
                        closed.y() - 3.5 * closed.heading().dy());
                assertThat(tip).isEqualTo(contact);
                strokes.forEach(s -> s.forEach(
                        a -> assertThat(p.ink().contains(a.xMm(), a.yMm())).isTrue()));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5})
    void a_switch_that_is_off_touches_no_way(int ways) {
        Component c = changeover(ways, 0);
        List<List<Point>> strokes = ManyEnds.strokes(c, "0");

        Point tip = strokes.get(strokes.size() - 1).get(2);
        assertThat(strokes.subList(0, strokes.size() - 1))
                .noneMatch(s -> Rect.around(s.get(0), s.get(1)).grown(0.4).contains(tip.xMm(), tip.yMm()));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4, 5})
    void every_output_of_a_diode_isolator_has_its_diode(int outputs) {
        Component c = Component.of(
                "V1", new Switching.DiodeIsolator(outputs, null, 0.7), Place.at("1", 80, 80), List.of("24"));
        Placed p = placed(c);
        List<List<Point>> strokes = ManyEnds.strokes(c, "");

        p.ports().forEach(q -> assertThat(ends(strokes)).contains(new Point(q.x(), q.y())));
        assertThat(strokes.stream().filter(s -> s.size() == 4)).hasSize(outputs);
    }
}
