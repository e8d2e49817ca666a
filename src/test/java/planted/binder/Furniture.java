package planted.binder;

/** Something for the planted violations to point at. */
public final class Furniture {
    private Furniture() {}
}
