package orlop.symbols;

/** What a symbol may take. Each is far above the need of a good symbol and far below what could hurt. */
final class Limits {
    static final int SVG_BYTES = 64 * 1024;
    static final int MANIFEST_BYTES = 256 * 1024;
    static final int FILES = 500;
    static final int DEPTH = 100;
    static final int ELEMENTS = 2_000;
    static final int VALUE_CHARACTERS = 200;
    static final int PATH_CHARACTERS = 20_000;
    /** Points and curves of one element. */
    static final int PATH_SEGMENTS = 5_000;
    /** Greatest distance from the origin, in mm. */
    static final double COORDINATE_MM = 1_000;

    static final double STROKE_MM = 5;
    static final double VIEW_BOX_MM = 500;

    private Limits() {}
}
