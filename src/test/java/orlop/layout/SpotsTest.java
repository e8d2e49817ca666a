package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Point;

/** The parts of a rule for places are what all of it is, and none of their places costs less than they say. */
class SpotsTest {
    private static final Rect INK = Rect.of(40, 40, 10, 15);
    private static final List<Point> WAY =
            List.of(new Point(0, 0), new Point(0, 60), new Point(35, 60), new Point(35, 72.5));

    static Stream<Spots> rules() {
        Spots line = LineSpots.of(WAY, 22, 6, Rect.of(-2, 30, 4, 5));
        Spots box = BoxSpots.around(INK, List.of(Side.LEFT, Side.ABOVE), 18, 7);
        return Stream.of(
                line,
                LineSpots.of(WAY, 22, 6, null),
                box,
                BoxSpots.alongBar(Rect.of(0, 0, 90, 1.6), 18, 7),
                BoxSpots.alongBar(Rect.of(0, 0, 1.6, 90), 18, 7),
                new Spots.Worse(line, 7),
                new Spots.Joined(List.of(box, new Spots.Worse(line, 7), new Spots.Worse(box, 3))),
                new Spots.Given(List.of(new Spot(INK, Side.RIGHT, 2), new Spot(INK, Side.LEFT, 0))));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void the_parts_one_after_the_other_are_all_places(Spots rule) {
        List<Spot> together = new ArrayList<>();
        rule.parts().forEach(p -> together.addAll(p.all()));

        assertThat(together).isNotEmpty().isEqualTo(rule.all());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void no_place_costs_less_than_its_part_says(Spots rule) {
        for (Spots.Part part : rule.parts()) {
            assertThat(part.all()).allSatisfy(s -> assertThat(s.cost()).isGreaterThanOrEqualTo(part.least() - 1e-9));
        }
    }

    /** Against the plain search through all of them. */
    @ParameterizedTest
    @MethodSource("rules")
    void the_best_is_the_first_of_the_cheapest(Spots rule) {
        for (int seed = 0; seed < 50; seed++) {
            int salt = seed;
            ToDoubleFunction<Spot> fixed = s -> s.cost() + Math.floorMod(salted(s) * 31 + salt, 9);
            ToDoubleFunction<Spot> moving = s -> Math.floorMod(salted(s) + 7 * salt, 5);
            Spot plain = null;
            double least = Double.POSITIVE_INFINITY;
            for (Spot s : rule.all()) {
                double cost = fixed.applyAsDouble(s) + moving.applyAsDouble(s);
                if (cost < least) {
                    plain = s;
                    least = cost;
                }
            }

            assertThat(new Candidates(rule).best(s -> {}, fixed, moving)).isEqualTo(plain);
        }
    }

    private static int salted(Spot s) {
        return Double.hashCode(3 * s.rect().minX() + s.rect().minY());
    }
}
