package planted.binder;

/** A planted violation. */
public final class PrintsErrors {
    static void print(Exception e) {
        e.printStackTrace();
    }
}
