package orlop.study;

/**
 * How to study.
 *
 * @param faultOhm resistance of the fault itself, 0 for a bolted one
 */
public record StudyOptions(double faultOhm) {
    /** Bolted faults. */
    public static final StudyOptions DEFAULT = new StudyOptions(0);

    public StudyOptions {
        orlop.drawing.Checks.notNegative(faultOhm, "faultOhm");
    }
}
