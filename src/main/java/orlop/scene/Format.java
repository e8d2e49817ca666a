package orlop.scene;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;

/** How figures are written on the sheet. */
final class Format {
    /** Between the figures of a line. */
    static final String DOT = " · ";

    private Format() {}

    static String q(double value, Unit unit) {
        return new Quantity(value, unit).text();
    }

    /** A drop: below 1 % with one decimal, above it with two digits. */
    static String percent(double value) {
        if (Math.abs(value) >= 0.95) {
            return q(value, Unit.PERCENT);
        }
        double tenths = Math.floor(Math.abs(value) * 10 + 0.5) / 10;
        return q(Math.copySign(tenths, tenths == 0 ? 1 : value), Unit.PERCENT);
    }

    /** Below 100 A in amperes, above it in kiloamperes. */
    static String fault(double ampere) {
        return ampere < 99.95 ? q(ampere, Unit.AMPERE) : q(ampere / 1000, Unit.KILOAMPERE);
    }

    /** Below 1 kW in watts, above it in kilowatts. */
    static String power(double watt) {
        return Math.abs(watt) < 999.5 ? q(watt, Unit.WATT) : q(watt / 1000, Unit.KILOWATT);
    }

    /** A plain number, rounded to six digits. */
    static String number(double value) {
        return new Quantity(value, Unit.NONE).number();
    }

    /** A number for a machine: a point, no grouping, no sign but the hyphen. */
    static String data(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** What stands between the dots. */
    static List<String> parts(String dotted) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int dot = dotted.indexOf(DOT); dot >= 0; dot = dotted.indexOf(DOT, from)) {
            parts.add(dotted.substring(from, dot));
            from = dot + DOT.length();
        }
        parts.add(dotted.substring(from));
        return parts;
    }

    /** The parts that are not empty, with dots between. */
    static String dotted(List<String> parts) {
        StringBuilder all = new StringBuilder();
        for (String part : parts) {
            if (!part.isEmpty()) {
                all.append(all.length() == 0 ? "" : DOT).append(part);
            }
        }
        return all.toString();
    }
}
