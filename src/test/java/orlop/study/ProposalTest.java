package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * The rating of a proposed device where no load is known: IEC 60364-4-43 433.1 wants Ib ≤ In ≤ Iz, and without Ib the
 * rating follows Iz (common practice, no source).
 */
@SuppressWarnings("NullAway") // a null fails the test
class ProposalTest {
    private static Gap only(Sketch s, String cable) {
        return s.study().gaps().stream()
                .filter(g -> g.cable().equals(cable))
                .findFirst()
                .orElseThrow(() -> new AssertionError(s.study().gaps().toString()));
    }

    private static Sketch board(double sourceOhm, double loadW) {
        return Sketch.dc(24, "iec60364")
                .supply("GB1", 25.2, sourceOhm)
                .fuse("F0", "class-t", 200)
                .bar("BAR")
                .power("E1", loadW)
                .cable("W0", "GB1.1", "F0.1", 0.1, 95)
                .cable("W1", "F0.2", "BAR.a", 2, 95)
                .cable("W2", "BAR.b", "E1.1", 6, 2.5);
    }

    @Test
    void a_spare_way_gets_a_device_that_follows_its_conductor() {
        Sketch s = board(0.01, 0);

        Gap.Proposal p = only(s, "W2").proposed();

        double ampacityA = s.study().governing().cables().get("W2").ampacityA();
        assertThat(p.ratingA()).isBetween(ampacityA / 2, ampacityA);
    }

    @Test
    void a_small_load_gets_a_device_that_follows_the_load() {
        assertThat(only(board(0.01, 24), "W2").proposed().ratingA()).isBetween(1.0, 2.0);
    }

    @Test
    void a_feeder_whose_current_cannot_be_found_gets_a_device_that_follows_its_conductor() {
        Sketch s = Sketch.dc(24, "iec60364")
                .supply("GB1", 25.2, 0.05)
                .bar("BAR")
                .power("E1", 5_000)
                .fuse("F1", "class-t", 200)
                .cable("W1", "GB1.1", "BAR.a", 5, 95)
                .link("BAR.b", "F1.1", 0.1)
                .cable("W2", "F1.2", "E1.1", 6, 70);

        assertThat(s.study().governing().converged()).isFalse();
        Gap.Proposal p = only(s, "W1").proposed();

        double ampacityA = s.study().governing().cables().get("W1").ampacityA();
        assertThat(p.ratingA()).isBetween(ampacityA / 2, ampacityA);
    }
}
