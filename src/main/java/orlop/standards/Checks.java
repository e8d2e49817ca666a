package orlop.standards;

/** Refusals of numbers out of range, each naming the argument and showing the value. */
final class Checks {
    private Checks() {}

    static void positive(double value, String name) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be finite and above 0, was " + value);
        }
    }

    static void notNegative(double value, String name) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be finite and at least 0, was " + value);
        }
    }

    static void between(double value, double low, double high, String name) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " must be from " + low + " to " + high + ", was " + value);
        }
    }
}
