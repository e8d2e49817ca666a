package planted.study;

/** A planted violation. */
public final class FormatsByDefault {
    static String format(double value) {
        return String.format("%f", value);
    }
}
