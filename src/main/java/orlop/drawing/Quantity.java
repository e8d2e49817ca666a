package orlop.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * A number with its unit, as it is shown to a person.
 *
 * @param value any double; a value that is not finite is shown as a dash
 * @param unit its unit
 */
public record Quantity(double value, Unit unit) {
    /** Below this a number is what rounding in the sums has left of nothing. */
    private static final double NOISE = 1e-9;

    private static final long[] POWERS = {
        1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000
    };

    /** Nearer than this to the middle between two roundings a double doesn't tell on which side the number lies. */
    private static final double TIE = 1e-4;

    /** Number and unit sign, with a decimal point and the unit's significant digits: {@code 5.9 %}, {@code 12 A}. */
    public String text() {
        return unit.sign().isEmpty() ? number() : number() + " " + unit.sign();
    }

    /** The number alone, rounded half up to the unit's significant digits; whole parts are never cut. */
    public String number() {
        if (!Double.isFinite(value)) {
            return "–";
        }
        String common = common();
        if (common != null) {
            return common;
        }
        return rounded(Math.abs(value) < NOISE ? 0 : value, unit.digits())
                .toPlainString()
                .replace('-', '−');
    }

    /** The same without decimal arithmetic, for numbers of common size that don't lie at a tie; null for all others. */
    private @Nullable String common() {
        double size = Math.abs(value);
        if (size < 0.001 || size >= 100_000) {
            return null;
        }
        int decimals = unit.digits() - 1;
        for (double power = 10; power <= size; power *= 10) {
            decimals--;
        }
        decimals += size < 0.01 ? 3 : size < 0.1 ? 2 : size < 1 ? 1 : 0;
        decimals = Math.max(0, decimals);
        double scaled = size * POWERS[decimals];
        double down = Math.floor(scaled);
        if (Math.abs(scaled - down - 0.5) < TIE) {
            return null;
        }
        long units = (long) down + (scaled - down > 0.5 ? 1 : 0);
        while (decimals > 0 && units % 10 == 0) {
            units /= 10;
            decimals--;
        }
        StringBuilder text = new StringBuilder(12);
        text.append(value < 0 ? "−" : "").append(units / POWERS[decimals]);
        if (decimals > 0) {
            String rest = Long.toString(units % POWERS[decimals]);
            text.append('.').append("0".repeat(decimals - rest.length())).append(rest);
        }
        return text.toString();
    }

    /**
     * Rounds to {@code digits} significant digits, but never coarser than whole numbers, and drops trailing zeros.
     *
     * @param value finite
     */
    public static BigDecimal rounded(double value, int digits) {
        BigDecimal exact = BigDecimal.valueOf(value);
        int wholeDigits = Math.max(0, exact.precision() - exact.scale());
        BigDecimal r = exact.round(new MathContext(Math.max(digits, wholeDigits), RoundingMode.HALF_UP));
        return r.signum() == 0 ? BigDecimal.ZERO : r.stripTrailingZeros();
    }
}
