package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Energies worked out by hand from the gates of IEC 60269-1, UL 248-15 and EN 60898-1 (all from memory). */
class FaultEnergyTest {
    private static Optional<Sourced> energy(
            String family, double inA, double minA, double maxA, boolean dc, double kA) {
        return FaultEnergy.of(ProtectiveFamilies.published().get(family), inA).greatestA2s(minA, maxA, dc, kA * 1_000);
    }

    /** gG 100 A must have melted at 580 A within 5 s, at 1,450 A within 0.1 s (IEC 60269-1, gates). */
    @ParameterizedTest
    @CsvSource({
        "200, 3000, 1682000", // 580² × 5 s
        "1450, 9000, 210250", // 1,450² × 0.1 s, and no more beyond
        "600, 3000, 1557500", // 600² × 5 s × (0.1/5)^(ln(600/580) / ln(1450/580)) = 600² × 4.326 s
        "100, 500, 0" // takes longer than 5 s
    })
    void a_fuse_by_its_slowest_gates(double minA, double maxA, double a2s) {
        assertThat(energy("gg", 100, minA, maxA, true, 0).orElseThrow().value()).isCloseTo(a2s, within(100.0));
    }

    @Test
    void a_fuse_of_which_only_the_energy_of_the_case_is_printed() {
        assertThat(energy("class-t", 200, 500, 9_000, true, 0).orElseThrow().value())
                .isEqualTo(150_000);
    }

    /** C16: opens at once from 160 A; class 3 lets through 42,000 A²s at 6 kA, 84,000 at 10 kA; usually opens in 20 ms. */
    @ParameterizedTest
    @CsvSource({
        "150, 6, 0", // below its magnetic limit: overload
        "1000, 6, 20000", // 1,000² × 0.02 s
        "5000, 6, 42000",
        "5000, 10, 84000",
        "5000, 0, 84000", // breaking capacity not known: the greatest
        "20000, 25, 8000000" // 20,000² × 0.02 s: no class for it
    })
    void a_breaker_in_alternating_current(double maxA, double breakingKa, double a2s) {
        assertThat(energy("mcb-c", 16, 100, maxA, false, breakingKa)
                        .orElseThrow()
                        .value())
                .isCloseTo(a2s, within(1e-6));
    }

    @Test
    void nothing_is_known_of_breakers_in_direct_current_beyond_their_limit_and_of_adjustable_ones() {
        assertThat(energy("mcb-c-dc", 16, 100, 2_000, true, 10)).isEmpty();
        assertThat(energy("mcb-c-dc", 16, 100, 200, true, 10).orElseThrow().value())
                .isZero();
        assertThat(energy("mccb", 100, 100, 2_000, true, 10)).isEmpty();
    }
}
