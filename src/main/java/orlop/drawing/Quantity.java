package orlop.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A number with its unit, as it is shown to a person.
 *
 * @param value any double; a value that is not finite is shown as a dash
 * @param unit its unit
 */
public record Quantity(double value, Unit unit) {
    /** Below this a number is what rounding in the sums has left of nothing. */
    private static final double NOISE = 1e-9;

    /** Number and unit sign, with a decimal point and the unit's significant digits: {@code 5.9 %}, {@code 12 A}. */
    public String text() {
        return unit.sign().isEmpty() ? number() : number() + " " + unit.sign();
    }

    /** The number alone, rounded half up to the unit's significant digits; whole parts are never cut. */
    public String number() {
        if (!Double.isFinite(value)) {
            return "–";
        }
        return rounded(Math.abs(value) < NOISE ? 0 : value, unit.digits())
                .toPlainString()
                .replace('-', '−');
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
