package orlop.standards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The families of protective devices. Immutable. */
public final class ProtectiveFamilies {
    private final Map<String, ProtectiveFamily> byId = new LinkedHashMap<>();
    private final List<ProtectiveFamily> onAc;
    private final List<ProtectiveFamily> onLowDc;
    private final List<ProtectiveFamily> onHigherDc;

    private ProtectiveFamilies() {
        Map<String, List<Sourced>> ratings = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.load("protection-ratings.csv").rows()) {
            ratings.computeIfAbsent(row.word("family"), k -> new ArrayList<>()).add(row.sourced("rating_a"));
        }
        Map<String, Map<ProtectiveFamily.Limit, Sourced>> limits = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.load("protection-limits.csv").rows()) {
            limits.computeIfAbsent(row.word("family"), k -> new EnumMap<>(ProtectiveFamily.Limit.class))
                    .put(ProtectiveFamily.Limit.parse(row.word("quantity")), row.sourced("value"));
        }
        Map<String, List<Characteristic>> points = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.load("protection-characteristics.csv").rows()) {
            points.computeIfAbsent(row.word("family"), k -> new ArrayList<>()).add(point(row));
        }
        for (CsvRow row : CsvTable.load("families.csv").rows()) {
            byId.put(row.word("family"), family(row, ratings, limits, points));
        }
        refuseUnknown(ratings.keySet());
        refuseUnknown(limits.keySet());
        refuseUnknown(points.keySet());
        onAc = these("mcb-c", "mcb-b", "mcb-d", "gg", "class-t", "mccb");
        onLowDc = these("iso8820-f", "iso8820-c", "iso8820-e", "iso8820-sf30", "iso8820-sf51", "class-t", "gg", "mccb");
        onHigherDc = these("class-t", "mcb-c-dc", "mcb-b-dc", "iso8820-f", "iso8820-c", "iso8820-e", "gg", "mccb");
    }

    private static ProtectiveFamily family(
            CsvRow row,
            Map<String, List<Sourced>> ratings,
            Map<String, Map<ProtectiveFamily.Limit, Sourced>> limits,
            Map<String, List<Characteristic>> points) {
        String id = row.word("family");
        return new ProtectiveFamily(
                id,
                ProtectiveFamily.Kind.parse(row.word("kind")),
                row.word("standard"),
                row.yes("overload"),
                ratings.getOrDefault(id, List.of()),
                limits.getOrDefault(id, Map.of()),
                new Characteristics(points.getOrDefault(id, List.of())),
                row.provenance(),
                row.source());
    }

    private void refuseUnknown(Collection<String> ids) {
        for (String id : ids) {
            if (!byId.containsKey(id)) {
                throw new IllegalStateException("family " + id + " stands in a table but not in families.csv");
            }
        }
    }

    private static Characteristic point(CsvRow row) {
        return new Characteristic(
                Characteristic.Kind.valueOf(
                        row.word("kind").toUpperCase(Locale.ROOT).replace('-', '_')),
                row.numberOr("in_min_a", 0),
                row.numberOr("in_max_a", Double.POSITIVE_INFINITY),
                row.optionalNumber("multiple"),
                row.optionalNumber("current_a"),
                row.optionalNumber("t_min_s"),
                row.optionalNumber("t_max_s"),
                row.optionalNumber("i2t_a2s"),
                Characteristic.Confidence.valueOf(row.word("confidence").toUpperCase(Locale.ROOT)),
                row.provenance(),
                row.source(),
                row.text("note"));
    }

    private static final class Holder {
        static final ProtectiveFamilies PUBLISHED = new ProtectiveFamilies();
    }

    /** The published families. */
    public static ProtectiveFamilies published() {
        return Holder.PUBLISHED;
    }

    /** All of them, in the order in which they are listed to a person. */
    public Collection<ProtectiveFamily> all() {
        return Collections.unmodifiableCollection(byId.values());
    }

    /** The family of that id, if there is one. */
    public Optional<ProtectiveFamily> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The family of that id.
     *
     * @throws IllegalArgumentException if there is none, naming those there are
     */
    public ProtectiveFamily get(String id) {
        return find(id).orElseThrow(
                        () -> new IllegalArgumentException("no device family " + id + "; there are " + byId.keySet()));
    }

    /**
     * The devices that would do at a place, the one to propose first.
     *
     * <p>Order: on DC up to 32 V blade fuses (F, C, E), bolted strips (SF 30, SF 51), class T, gG, moulded-case breaker; on
     * higher DC class T, DC miniature breakers, gG, moulded-case breaker; on AC miniature breakers (C, B, D), gG, class T,
     * moulded-case breaker. Those that must be marked for the voltage come last.
     *
     * @param systemHighestV highest voltage of the system in service, above 0
     * @param dc DC or AC
     * @param minRatingA least rated current that carries the load, above 0
     * @param maxRatingA greatest rated current that protects the conductor, at least 0
     * @param prospectiveA highest fault current at the place, at least 0
     */
    public Proposals proposals(
            double systemHighestV, boolean dc, double minRatingA, double maxRatingA, double prospectiveA) {
        return new Proposer(systemHighestV, dc, minRatingA, maxRatingA, prospectiveA).among(order(systemHighestV, dc));
    }

    /** As {@link #proposals}, for a string or array of PV modules: gPV fuses only. */
    public Proposals pvProposals(double highestV, double minRatingA, double maxRatingA, double prospectiveA) {
        return new Proposer(highestV, true, minRatingA, maxRatingA, prospectiveA).among(List.of(get("gpv")));
    }

    private List<ProtectiveFamily> order(double systemHighestV, boolean dc) {
        return !dc ? onAc : systemHighestV <= 32 ? onLowDc : onHigherDc;
    }

    private List<ProtectiveFamily> these(String... ids) {
        return Arrays.stream(ids).map(this::get).toList();
    }
}
