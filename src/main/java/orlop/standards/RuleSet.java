package orlop.standards;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A set of rules that a vessel is checked against. Immutable. */
public final class RuleSet {
    private final String id;
    private final String title;
    private final Ampacity ampacity;
    private final DeviceRule deviceRule;
    private final String deviceClause;
    private final Provenance deviceProvenance;
    private final String deviceSource;
    private final Map<Construction, RuleLimit> leastAreas = new EnumMap<>(Construction.class);
    private final Map<SourceKind, RuleLimit> bareDistances = new EnumMap<>(SourceKind.class);
    private final Map<SourceKind, RuleLimit> sheathedDistances = new EnumMap<>(SourceKind.class);
    private final List<DropLimit> drops;

    /** A row of the drop limits; upToV is infinite where it holds for all other systems. */
    private record DropLimit(boolean dc, double upToV, boolean vital, RuleLimit percent) {}

    RuleSet(CsvRow row, Ampacity ampacity, RuleTables tables) {
        this.id = row.word("rule_set");
        this.title = row.word("title");
        this.ampacity = ampacity;
        this.deviceRule = DeviceRule.parse(row.word("device_rule"));
        this.deviceClause = row.word("clause");
        this.deviceProvenance = row.provenance();
        this.deviceSource = row.source();
        for (CsvRow area : tables.areas(id)) {
            leastAreas.put(Construction.parse(area.word("construction")), RuleLimit.of(area, "area_mm2"));
        }
        for (CsvRow run : tables.distances(id)) {
            Map<SourceKind, RuleLimit> distances = run.yes("sheathed") ? sheathedDistances : bareDistances;
            distances.put(SourceKind.parse(run.word("start")), RuleLimit.of(run, "distance_m"));
        }
        drops = tables.drops(id).stream().map(RuleSet::drop).toList();
    }

    private static DropLimit drop(CsvRow row) {
        return new DropLimit(
                row.word("current").equals("dc"),
                row.numberOr("up_to_v", Double.POSITIVE_INFINITY),
                row.word("circuit").equals("vital"),
                RuleLimit.of(row, "percent"));
    }

    /** {@code abyc}, {@code iec60364}, {@code iso13297} or {@code iec60092}. */
    public String id() {
        return id;
    }

    /** The standards' own designation, not translated. */
    public String title() {
        return title;
    }

    /** Its ampacity table with its correction factors. */
    public Ampacity ampacity() {
        return ampacity;
    }

    /**
     * The areas to choose from, ascending, mm²: the rows of its ampacity table (AWG sizes for {@code abyc}; metric areas
     * can be asked of that table as well).
     */
    public List<Double> standardAreasMm2() {
        return ampacity.areasMm2();
    }

    /** Least area of a power or lighting conductor for its strength, mm². */
    public RuleLimit leastAreaMm2(Construction construction) {
        return present(leastAreas.get(construction), "least area of", construction);
    }

    /**
     * Longest run from a source to the first overcurrent device, m.
     *
     * @param sheathed in sheath, conduit or enclosure all the way
     */
    public RuleLimit firstDeviceWithinM(SourceKind start, boolean sheathed) {
        return present((sheathed ? sheathedDistances : bareDistances).get(start), "distance from", start);
    }

    /**
     * Voltage drop limit from source to load, percent of the nominal voltage.
     *
     * @param dc DC or AC
     * @param nominalV of the system, above 0
     * @param vital whether the circuit is vital to safety (navigation lights, bilge pumps and blowers, electronics, main
     *     feeders)
     */
    public RuleLimit dropPercent(boolean dc, double nominalV, boolean vital) {
        Checks.positive(nominalV, "nominalV");
        Optional<DropLimit> limit = drops.stream()
                .filter(d -> d.dc() == dc && d.vital() == vital && nominalV <= d.upToV())
                .findFirst();
        return present(limit.map(DropLimit::percent).orElse(null), "drop limit up to volts", nominalV);
    }

    /** How it holds a device against a conductor. */
    public DeviceRule deviceRule() {
        return deviceRule;
    }

    /**
     * The greatest device of a family in front of a conductor.
     *
     * @param ampacityA of the smallest conductor it protects, with all factors, above 0
     */
    public DeviceLimit maxDeviceA(double ampacityA, ProtectiveFamily family) {
        Optional<Sourced> max = deviceRule.maxDeviceA(ampacityA, family);
        return new DeviceLimit(
                max.map(Sourced::value),
                deviceRule,
                deviceClause,
                max.map(m -> deviceProvenance.weaker(m.provenance())).orElse(deviceProvenance),
                max.map(m -> deviceSource + "; " + m.source()).orElse(deviceSource));
    }

    /** As {@link #maxDeviceA}, the rated current alone; none if the family doesn't protect the conductor. */
    public Optional<Double> greatestDeviceA(double ampacityA, ProtectiveFamily family) {
        return deviceRule.maxDeviceA(ampacityA, family).map(Sourced::value);
    }

    private RuleLimit present(@Nullable RuleLimit limit, String what, Object which) {
        if (limit == null) {
            throw new IllegalStateException("the tables of rule set " + id + " lack: " + what + " " + which);
        }
        return limit;
    }

    @Override
    public String toString() {
        return id;
    }
}
