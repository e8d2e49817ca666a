package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;

class DrawnBarTest {
    private static final Point FROM = new Point(50, 60);

    @ParameterizedTest
    @CsvSource({
        "150, 63, 100, 60, 100, true", // pulled to the right
        "-50, 60, 0, 60, 100, true", // to the left
        "55, 160, 50, 110, 100, false", // down
        "50, 38.2, 50, 50, 20, false", // up, in steps
        "65, 75, 57.5, 60, 15, true", // aslant: it lies
        "9000, 60, 1050, 60, 2000, true", // as long as a bar may be
    })
    void it_reaches_from_where_it_is_pressed_to_where_it_is_let_go(
            double toXMm, double toYMm, double xMm, double yMm, double lengthMm, boolean lying) {
        assertThat(DrawnBar.pulled(FROM, new Point(toXMm, toYMm)))
                .contains(new DrawnBar(new Point(xMm, yMm), lengthMm, lying));
    }

    @Test
    void a_short_pull_is_a_click() {
        assertThat(DrawnBar.pulled(FROM, new Point(62, 60))).isEmpty();
    }

    @Test
    void a_board_takes_its_place_length_and_turn() {
        Component board = Component.of("WB1", Kind.DISTRIBUTION_BOARD, Place.at("1", 0, 0), java.util.List.of("24"));

        Component drawn =
                DrawnBar.pulled(FROM, new Point(50, 160)).orElseThrow().of(board);

        assertThat(drawn.place().at()).isEqualTo(new Point(50, 110));
        assertThat(drawn.place().rotationDegree()).isEqualTo(90);
        assertThat(((Distribution.DistributionBoard) drawn.particulars()).drawnLengthMm())
                .isEqualTo(100);
    }

    @Test
    void only_bars_and_boards_have_a_drawn_length() {
        for (Kind k : Kind.values()) {
            assertThat(DrawnBar.usualMm(k) > 0)
                    .as(k.word())
                    .isEqualTo(k == Kind.BUSBAR || k == Kind.DISTRIBUTION_BOARD);
        }
    }
}
