package planted.editor;

/** A planted violation. */
public final class Prints {
    static void print() {
        System.out.println("planted");
    }
}
