package orlop.standards;

import java.util.Optional;

/**
 * A size of the American Wire Gauge.
 *
 * @param name as written: {@code 18} … {@code 1}, {@code 1/0} … {@code 4/0}
 * @param areaMm2 nominal area, mm², with its source
 * @param r20PlainOhmPerKm hand-book resistance of a stranded plain conductor at 20 °C, Ω/km; none for the odd sizes that
 *     are hardly traded
 * @param r20TinnedOhmPerKm the same, tinned
 */
public record AwgSize(
        String name, Sourced areaMm2, Optional<Sourced> r20PlainOhmPerKm, Optional<Sourced> r20TinnedOhmPerKm) {
    /** How it is shown and typed: {@code AWG 10}. */
    public String label() {
        return "AWG " + name;
    }
}
