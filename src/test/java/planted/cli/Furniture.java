package planted.cli;

/** Something for the planted violations to point at. */
public final class Furniture {
    private Furniture() {}
}
