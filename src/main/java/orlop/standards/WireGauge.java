package orlop.standards;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * American wire gauge. The diameter of gauge n is 0.127 mm × 92^((36 − n) / 39), gauges 1/0 to 4/0 being n = 0 to −3
 * (ASTM B258).
 */
public final class WireGauge {
    private static final Pattern TYPED =
            Pattern.compile("(?:awg\\s*#?\\s*([0-9]{1,2})(/0)?|#?([0-9]{1,2})(/0)?\\s*awg)", Pattern.CASE_INSENSITIVE);

    private WireGauge() {}

    /** The area of a gauge in mm², in four digits as the tables of the standard give it. */
    public static double areaMm2(int gauge) {
        double diameterMm = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
        return new BigDecimal(Math.PI / 4 * diameterMm * diameterMm)
                .round(new MathContext(4))
                .doubleValue();
    }

    /** The gauge in what was typed: {@code AWG 10}, {@code 2/0 AWG}, {@code awg4}. Empty if it is none. */
    public static Optional<Integer> typed(String text) {
        Matcher m = TYPED.matcher(text.strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        boolean before = m.group(1) != null;
        int number = Integer.parseInt(before ? m.group(1) : m.group(3));
        boolean aught = (before ? m.group(2) : m.group(4)) != null;
        if (aught) {
            return number >= 1 && number <= 4 ? Optional.of(1 - number) : Optional.empty();
        }
        return number <= 40 ? Optional.of(number) : Optional.empty();
    }

    /**
     * How an area stands to the gauges that are sold (the even ones to AWG 2, then every one): {@code AWG 10} if it is
     * that gauge to within 1 %, else {@code > AWG 10} with the thickest that is thinner; "" beyond the gauges.
     */
    public static String around(double areaMm2) {
        for (int n = -3; n <= 30; n += n < 2 ? 1 : 2) {
            double a = areaMm2(n);
            if (Math.abs(areaMm2 - a) <= 0.01 * a) {
                return name(n);
            }
            if (a < areaMm2) {
                return areaMm2 > 1.3 * areaMm2(-3) ? "" : "> " + name(n);
            }
        }
        return "";
    }

    private static String name(int gauge) {
        return gauge > 0
                ? String.format(Locale.ROOT, "AWG %d", gauge)
                : String.format(Locale.ROOT, "AWG %d/0", 1 - gauge);
    }
}
