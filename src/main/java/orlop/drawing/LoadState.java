package orlop.drawing;

/**
 * What a load does in an operating condition.
 *
 * @param running whether it is on; a running load draws its rated current, which governs its own circuit
 * @param simultaneity share of its rated current that feeders see, 0 to 1
 * @param average mean share of its rated power, for energy only, 0 to 1
 * @param extras keys that this version does not know
 */
public record LoadState(boolean running, double simultaneity, double average, Extras extras) {
    /** What holds where a condition says nothing: it runs, all of it, all the time. */
    public static final LoadState DEFAULT = new LoadState(true, 1, 1, Extras.NONE);

    public LoadState {
        Checks.between(simultaneity, 0, 1, "simultaneity");
        Checks.between(average, 0, 1, "average");
    }
}
