package planted.editor;

/** A planted violation. */
public final class Exits {
    static void exit() {
        System.exit(0);
    }
}
