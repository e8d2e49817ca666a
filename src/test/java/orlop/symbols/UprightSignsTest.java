package orlop.symbols;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Letters and signs within the program's symbols are read alike, however the symbol stands. */
class UprightSignsTest {
    /** Clear paper between a sign and what is drawn around it, in every position. */
    private static final double CLEAR_MM = 0.3;

    private static final List<Turn> TURNS = Stream.of(0, 90, 180, 270)
            .flatMap(degree -> Stream.of(new Turn(degree, false), new Turn(degree, true)))
            .toList();

    static Stream<String> names() {
        return SymbolLibrary.bundled().all().stream().map(Symbol::name);
    }

    private static Symbol symbol(String name) {
        return SymbolLibrary.bundled().named(name).orElseThrow();
    }

    @Test
    void every_symbol_with_a_letter_or_a_sign_of_current_keeps_it_upright() {
        Set<String> names = new TreeSet<>();
        SymbolLibrary.bundled().all().stream().filter(Symbol::hasUprights).forEach(s -> names.add(s.name()));

        assertThat(names)
                .containsExactly(("alternator charge-controller charger combining-relay-closed combining-relay-open"
                                + " dc-dc-converter frequency-converter generator-ac1 generator-ac3 generator-dc"
                                + " insulation-monitor inverter inverter-charger limited-supply meter"
                                + " meter-current meter-energy meter-power motor-ac1 motor-ac3 motor-dc"
                                + " neutral-earth-link power-supply protective-earth-bar shore-pedestal"
                                + " short-time-machine turbine")
                        .split(" ", -1));
    }

    @ParameterizedTest
    @MethodSource("names")
    void what_turns_is_mirrored_and_then_turned_clockwise_about_the_origin(String name) {
        for (Turn turn : TURNS) {
            for (Outline o : symbol(name).outlines()) {
                if (o.upright() == null) {
                    List<double[]> was = points(o.shape());
                    List<double[]> is = points(placed(o, turn));
                    assertThat(is).hasSameSizeAs(was);
                    for (int i = 0; i < was.size(); i++) {
                        assertThat(is.get(i)).containsExactly(turned(was.get(i), turn), within(1e-9));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_sign_only_moves_and_its_middle_goes_where_the_symbol_takes_it(String name) {
        for (Turn turn : TURNS) {
            for (Upright sign : signs(symbol(name))) {
                List<double[]> was = new ArrayList<>();
                List<double[]> is = new ArrayList<>();
                for (Outline o : symbol(name).outlines()) {
                    if (sign.equals(o.upright())) {
                        was.addAll(points(o.shape()));
                        is.addAll(points(placed(o, turn)));
                    }
                }
                double[] from = middle(was);
                double[] to = middle(is);
                // The reader flattens curves to 0.005 mm, this test finer.
                assertThat(to).containsExactly(turned(from, turn), within(0.006));
                for (int i = 0; i < was.size(); i++) {
                    double[] moved = {was.get(i)[0] + to[0] - from[0], was.get(i)[1] + to[1] - from[1]};
                    assertThat(is.get(i)).containsExactly(moved, within(1e-9));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_bounds_lie_around_the_ink_of_every_part(String name) {
        for (Turn turn : TURNS) {
            Bounds all = symbol(name).outlines().stream()
                    .map(o -> Bounds.around(placed(o, turn), o.strokeWidthMm() / 2))
                    .reduce(Bounds::union)
                    .orElseThrow();
            Bounds said = symbol(name).bounds(turn);

            assertThat(said.contains(all, 1e-6)).as(said + " " + all).isTrue();
            assertThat(all.contains(said, 1e-6)).as(said + " " + all).isTrue();
        }
    }

    /** But for the ring of a protective-earth bar, which is a part of the sign and joins the bar. */
    @ParameterizedTest
    @MethodSource("names")
    void a_sign_touches_neither_what_turns_nor_another_sign(String name) {
        List<Outline> outlines =
                name.equals("protective-earth-bar") ? List.of() : symbol(name).outlines();
        for (Turn turn : TURNS) {
            for (Outline o : outlines) {
                if (o.upright() != null) {
                    Area near = ink(o, turn, CLEAR_MM);
                    for (Outline other : outlines) {
                        if (!o.upright().equals(other.upright())) {
                            Area both = ink(other, turn, 0);
                            both.intersect(near);
                            assertThat(both.isEmpty()).as(turn.toString()).isTrue();
                        }
                    }
                }
            }
        }
    }

    /** Letters 3.17 mm wide in a box 3.5 mm wide inside its lines have 0.17 mm on either side. */
    @Test
    void a_sign_that_comes_too_near_is_seen() {
        Outline sign = new Outline(new Rectangle2D.Double(-1.585, -1, 3.17, 2), 0);
        Outline box = new Outline(new Rectangle2D.Double(-1.875, -3, 3.75, 6), 0.25);
        Area both = ink(box, Turn.NONE, 0);
        both.intersect(ink(sign, Turn.NONE, CLEAR_MM));
        Area apart = ink(box, Turn.NONE, 0);
        apart.intersect(ink(sign, Turn.NONE, 0.15));

        assertThat(both.isEmpty()).isFalse();
        assertThat(apart.isEmpty()).isTrue();
    }

    /** What an outline covers, or all that comes as near to it as this. */
    private static Area ink(Outline o, Turn turn, double nearMm) {
        Shape shape = placed(o, turn);
        BasicStroke pen = nearMm > 0
                ? new BasicStroke(
                        (float) (o.strokeWidthMm() + 2 * nearMm), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : new BasicStroke((float) o.strokeWidthMm(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4);
        Area area = o.filled() ? new Area(shape) : new Area();
        if (!o.filled() || nearMm > 0) {
            area.add(new Area(pen.createStrokedShape(shape)));
        }
        return area;
    }

    /** Mirrored, then turned clockwise: y points downwards. */
    private static double[] turned(double[] point, Turn turn) {
        double cos = Math.cos(Math.toRadians(turn.rotationDegree()));
        double sin = Math.sin(Math.toRadians(turn.rotationDegree()));
        double x = turn.mirrored() ? -point[0] : point[0];
        return new double[] {x * cos - point[1] * sin, x * sin + point[1] * cos};
    }

    private static Set<Upright> signs(Symbol symbol) {
        Set<Upright> signs = new LinkedHashSet<>();
        symbol.outlines().stream()
                .map(Outline::upright)
                .filter(Objects::nonNull)
                .forEach(signs::add);
        return signs;
    }

    private static Shape placed(Outline outline, Turn turn) {
        return outline.transform(turn).createTransformedShape(outline.shape());
    }

    /** Every point that is named in the path, the ends of its flattened curves too. */
    private static List<double[]> points(Shape shape) {
        List<double[]> all = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = new FlatteningPathIterator(shape.getPathIterator(null), 0.002); !i.isDone(); i.next()) {
            if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
                all.add(new double[] {at[0], at[1]});
            }
        }
        return all;
    }

    private static double[] middle(List<double[]> points) {
        double[] middle = new double[2];
        for (int axis = 0; axis < 2; axis++) {
            int a = axis;
            double min = points.stream().mapToDouble(p -> p[a]).min().orElseThrow();
            double max = points.stream().mapToDouble(p -> p[a]).max().orElseThrow();
            middle[axis] = (min + max) / 2;
        }
        return middle;
    }
}
