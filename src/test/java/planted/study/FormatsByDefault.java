package planted.study;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.text.DecimalFormat;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.Formatter;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Planted violations, one a method. */
public final class FormatsByDefault {
    static String format(double v) {
        return String.format("%f", v);
    }

    static String formatted(double v) {
        return "%f".formatted(v);
    }

    static UnaryOperator<String> upper() {
        return String::toUpperCase;
    }

    static Formatter formatter() {
        return new Formatter();
    }

    static MessageFormat messageFormat() {
        return new MessageFormat("{0}");
    }

    static String message(double v) {
        return MessageFormat.format("{0}", v);
    }

    static void printf(PrintStream out) {
        out.printf("%f", 1.0);
    }

    static void printfToWriter(PrintWriter out) {
        out.printf("%f", 1.0);
    }

    static DecimalFormat decimal() {
        return new DecimalFormat("0.0");
    }

    static DecimalFormat decimalAlone() {
        return new DecimalFormat();
    }

    static NumberFormat number() {
        return NumberFormat.getInstance();
    }

    static NumberFormat plainNumber() {
        return NumberFormat.getNumberInstance();
    }

    static NumberFormat percent() {
        return NumberFormat.getPercentInstance();
    }

    static Locale locale() {
        return Locale.getDefault();
    }
}
