package orlop.drawing;

/**
 * An operating condition, as in a ship's load analysis: at anchor, in harbour on shore power, motoring …
 *
 * @param id short name, used on the command line
 * @param name in words, "" to use the id
 * @param loads what single loads do; one that is not named runs fully
 * @param sources {@code on} or {@code off} for single sources; one that is not named is on
 * @param switches positions of switches: {@code open}, {@code closed} or the number of a way; one that is not named
 *     stands as drawn
 * @param extras keys that this version does not know
 */
public record OperatingCondition(
        String id,
        String name,
        Ledger<LoadState> loads,
        Ledger<String> sources,
        Ledger<String> switches,
        Extras extras) {
    public OperatingCondition {
        Checks.id(id, "id");
        Checks.text(name, "name");
    }

    /** A condition in which everything stands as drawn. */
    public static OperatingCondition asDrawn(String id, String name) {
        return new OperatingCondition(id, name, Ledger.empty(), Ledger.empty(), Ledger.empty(), Extras.NONE);
    }

    /** What this load does here. */
    public LoadState load(String component) {
        LoadState s = loads.get(component);
        return s == null ? LoadState.DEFAULT : s;
    }

    /** Whether this source is on here. */
    public boolean sourceOn(String component) {
        return !"off".equals(sources.get(component));
    }

    /** The name that a person reads. */
    public String title() {
        return name.isEmpty() ? id : name;
    }

    public OperatingCondition withLoad(String component, LoadState state) {
        return new OperatingCondition(id, name, loads.with(component, state), sources, switches, extras);
    }

    public OperatingCondition withSource(String component, boolean on) {
        return new OperatingCondition(id, name, loads, sources.with(component, on ? "on" : "off"), switches, extras);
    }

    public OperatingCondition withSwitch(String component, String position) {
        return new OperatingCondition(id, name, loads, sources, switches.with(component, position), extras);
    }
}
