package orlop.scene;

import java.util.List;
import java.util.Locale;
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
        String s = String.format(Locale.ROOT, "%.6f", value);
        int end = s.length();
        while (s.charAt(end - 1) == '0') {
            end--;
        }
        return s.substring(0, s.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /** The parts that are not empty, with dots between. */
    static String dotted(List<String> parts) {
        return String.join(DOT, parts.stream().filter(p -> !p.isEmpty()).toList());
    }
}
