package orlop.scene;

/**
 * Which parts of a cable's annotation are shown. The tag always is.
 *
 * @param size conductors and area
 * @param length one-way length
 * @param current current in the condition shown
 * @param drop voltage drop along the cable, percent of the system's nominal voltage
 * @param fault highest prospective fault current at the far end
 * @param gauge how the area stands to the wire gauges, beside it where it is shown
 */
public record Annotations(boolean size, boolean length, boolean current, boolean drop, boolean fault, boolean gauge) {
    /** All but the wire gauge, which is for who buys by it. */
    public static final Annotations ALL = new Annotations(true, true, true, true, true, false);

    public static final Annotations NONE = new Annotations(false, false, false, false, false, false);

    public Annotations withGauge(boolean g) {
        return g == gauge ? this : new Annotations(size, length, current, drop, fault, g);
    }
}
