package planted.desk;

/** A planted violation. */
public final class Halts {
    static void halt() {
        Runtime.getRuntime().halt(0);
    }
}
