package orlop.desk;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.standards.WireGauge;

/**
 * Reads a number as a person types it: {@code 2,5}, {@code 2.5 mm2}, {@code AWG 10}, {@code 150W}, {@code 1.2 kW}.
 *
 * <p>Comma and point are both decimal, whatever the machine's language. Thousands are never parted: what looks like it
 * ({@code 1.234,5}, {@code 1 000}) is refused, and {@code 1.500} is one and a half, which {@link Value#understood()}
 * shows before it is taken.
 */
public final class NumberInput {
    private static final Pattern NUMBER = Pattern.compile("([+\\-−]?)([0-9]*)(?:([.,])([0-9]*))?(.*)");
    private static final Pattern REST_LIKE_NUMBER = Pattern.compile("[\\s'’.,_]*[0-9].*|[.,'’].*");

    private NumberInput() {}

    /** What was understood of what was typed. */
    public sealed interface Reading permits Value, Nothing, Refused {}

    /**
     * A number.
     *
     * @param value in the measure of the field
     * @param understood how it was read, to be shown: "1.5 m"
     */
    public record Value(double value, Message understood) implements Reading {}

    /** Nothing was typed. */
    public record Nothing() implements Reading {}

    /**
     * It cannot be read.
     *
     * @param reason what to tell the person
     */
    public record Refused(Message reason) implements Reading {}

    /** Reads what was typed into a field of this measure. */
    public static Reading read(String typed, Measure measure) {
        String text = typed.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
        if (text.isEmpty()) {
            return new Nothing();
        }
        if (measure == Measure.SQUARE_MILLIMETRE) {
            Optional<Integer> gauge = WireGauge.typed(text);
            if (gauge.isPresent()) {
                return value(WireGauge.areaMm2(gauge.get()), measure);
            }
        }
        Matcher m = NUMBER.matcher(text);
        boolean digits = m.matches()
                && (!m.group(2).isEmpty() || (m.group(4) != null && !m.group(4).isEmpty()));
        if (!digits) {
            return refused("desk.number.none", typed, measure);
        }
        String rest = m.group(5);
        if (REST_LIKE_NUMBER.matcher(rest).matches()) {
            return refused("desk.number.thousands", typed, measure);
        }
        return scaled(number(m), rest.strip(), typed, measure);
    }

    private static BigDecimal number(Matcher m) {
        String whole = m.group(2).isEmpty() ? "0" : m.group(2);
        String part = m.group(4) == null || m.group(4).isEmpty() ? "0" : m.group(4);
        BigDecimal n = new BigDecimal(whole + "." + part);
        return m.group(1).isEmpty() || m.group(1).equals("+") ? n : n.negate();
    }

    private static Reading scaled(BigDecimal number, String sign, String typed, Measure measure) {
        Optional<Double> factor = measure.factor(sign);
        if (factor.isEmpty()) {
            return refused("desk.number.unit", typed, measure);
        }
        // In decimals: 1.2 kW is 1200 W and not 1199.9999999999998 W.
        double value = number.multiply(BigDecimal.valueOf(factor.get())).doubleValue();
        return Double.isFinite(value) ? value(value, measure) : refused("desk.number.none", typed, measure);
    }

    private static Value value(double value, Measure measure) {
        return new Value(value, shown(value, measure));
    }

    /** A value of this measure as it is shown. */
    public static Message shown(double value, Measure measure) {
        String number = new Quantity(value, orlop.drawing.Unit.NONE).number();
        return measure.shown().isEmpty()
                ? Message.of("desk.number.plain", number)
                : Message.of("desk.number.understood", number, measure.shown());
    }

    /** A value as a person would type it: every digit of it, and the sign of the measure. */
    public static String typed(double value, Measure measure) {
        BigDecimal exact = BigDecimal.valueOf(value);
        String number = exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
        return measure.shown().isEmpty() ? number : number + " " + measure.shown();
    }

    private static Refused refused(String key, String typed, Measure measure) {
        return new Refused(Message.of(key, Message.quote(typed.strip()), String.join(", ", measure.signs())));
    }
}
