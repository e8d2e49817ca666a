package orlop.standards;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Resistance and reactance of copper conductors. Immutable.
 *
 * <p>Resistances are the highest that IEC 60228 allows at 20 °C. Hand-book figures of AWG conductors are a few percent
 * lower; they stand in {@link AwgSizes}.
 */
public final class Conductors {
    /** Temperature coefficient of copper's resistance at 20 °C, per kelvin. IEC 60028 (from memory). */
    public static final double ALPHA_20_PER_K = 0.00393;

    /** Areas within this share of each other are the same: 2.08 mm² is AWG 14's 2.0809. */
    static final double SAME_AREA = 0.005;

    private static final Sourced REACTANCE = new Sourced(
            0.08, Provenance.MEMORY, "IEC 60364-5-52 Annex G: 0.08 mΩ/m, multicore or singles touching in trefoil");

    private final Map<ConductorClass, Map<Finish, NavigableMap<Double, Sourced>>> r20;
    private final List<Double> areasMm2;

    private Conductors(CsvTable table) {
        r20 = new EnumMap<>(ConductorClass.class);
        for (CsvRow row : table.rows()) {
            ConductorClass strands = ConductorClass.valueOf("CLASS_" + row.word("class"));
            Finish finish = Finish.valueOf(row.word("finish").toUpperCase(Locale.ROOT));
            r20.computeIfAbsent(strands, k -> new EnumMap<>(Finish.class))
                    .computeIfAbsent(finish, k -> new TreeMap<>())
                    .put(row.number("area_mm2"), row.sourced("r20_ohm_per_km"));
        }
        areasMm2 = List.copyOf(column(ConductorClass.CLASS_5, Finish.PLAIN).keySet());
    }

    private static final class Holder {
        static final Conductors PUBLISHED = new Conductors(CsvTable.load("conductors.csv"));
    }

    /** The published table. */
    public static Conductors published() {
        return Holder.PUBLISHED;
    }

    /** The standard metric areas, ascending, mm². */
    public List<Double> standardAreasMm2() {
        return areasMm2;
    }

    /**
     * Highest resistance of one conductor at 20 °C, Ω/km.
     *
     * <p>A standard area gives the printed figure. Between two of them the product area × resistance is interpolated by
     * area (it hardly varies: it is the resistivity with the allowance for stranding), beyond the table the end's
     * product is kept; both are {@link Provenance#DERIVED}.
     *
     * @param areaMm2 above 0
     * @throws IllegalArgumentException if the area is not finite and above 0
     */
    public Sourced r20OhmPerKm(double areaMm2, ConductorClass strands, Finish finish) {
        Checks.positive(areaMm2, "areaMm2");
        NavigableMap<Double, Sourced> column = column(strands, finish);
        Sourced printed = column.get(areaMm2);
        return printed != null ? printed : interpolated(areaMm2, column);
    }

    private NavigableMap<Double, Sourced> column(ConductorClass strands, Finish finish) {
        Map<Finish, NavigableMap<Double, Sourced>> byFinish = r20.get(strands);
        NavigableMap<Double, Sourced> column = byFinish == null ? null : byFinish.get(finish);
        if (column == null) {
            throw new IllegalStateException("conductors.csv has no rows for " + strands + " " + finish);
        }
        return column;
    }

    private static Sourced interpolated(double areaMm2, NavigableMap<Double, Sourced> column) {
        Map.Entry<Double, Sourced> below = column.floorEntry(areaMm2);
        Map.Entry<Double, Sourced> above = column.ceilingEntry(areaMm2);
        Map.Entry<Double, Sourced> low = below != null ? below : column.firstEntry();
        Map.Entry<Double, Sourced> high = above != null ? above : column.lastEntry();
        double span = high.getKey() - low.getKey();
        double share = span == 0 ? 0 : (areaMm2 - low.getKey()) / span;
        double product = (1 - share) * product(low) + share * product(high);
        Provenance weakest =
                low.getValue().provenance().weaker(high.getValue().provenance()).weaker(Provenance.DERIVED);
        String source = String.format(
                Locale.ROOT,
                "IEC 60228: area × resistance interpolated between %s and %s mm²",
                low.getKey(),
                high.getKey());
        return new Sourced(product / areaMm2, weakest, source);
    }

    private static double product(Map.Entry<Double, Sourced> entry) {
        return entry.getKey() * entry.getValue().value();
    }

    /** Reactance of one conductor at 50 Hz, mΩ/m, where nothing better is known. */
    public static Sourced reactanceMilliohmPerM() {
        return REACTANCE;
    }

    /**
     * A copper conductor's resistance at a temperature: R20·(1 + {@link #ALPHA_20_PER_K}·(θ − 20)).
     *
     * <p>IEC 60228 rounds the coefficient to 0.004: see {@link #factorTo20C}. The two differ by less than 0.5 % up to
     * 90 °C.
     *
     * @param r20Ohm at 20 °C, at least 0
     * @param temperatureC from −100 to 400
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double resistanceAtOhm(double r20Ohm, double temperatureC) {
        return resistanceAtOhm(r20Ohm, temperatureC, ALPHA_20_PER_K);
    }

    /** As {@link #resistanceAtOhm(double, double)}, with a coefficient of one's own, per kelvin at 20 °C. */
    public static double resistanceAtOhm(double r20Ohm, double temperatureC, double alpha20PerK) {
        Checks.notNegative(r20Ohm, "r20Ohm");
        Checks.between(temperatureC, -100, 400, "temperatureC");
        Checks.between(alpha20PerK, 0, 0.01, "alpha20PerK");
        return r20Ohm * (1 + alpha20PerK * (temperatureC - 20));
    }

    /**
     * IEC 60228's factor that brings a copper conductor's resistance measured at a temperature to 20 °C:
     * kt = 250 / (230 + θ).
     *
     * @param temperatureC from −100 to 400
     */
    public static double factorTo20C(double temperatureC) {
        Checks.between(temperatureC, -100, 400, "temperatureC");
        return 250 / (230 + temperatureC);
    }

    /**
     * Resistance of a uniform conductor, Ω: resistivity × length / area.
     *
     * @param resistivityOhmM Ω·m, above 0
     * @param lengthM at least 0
     * @param areaMm2 above 0
     */
    public static double resistanceOhm(double resistivityOhmM, double lengthM, double areaMm2) {
        Checks.positive(resistivityOhmM, "resistivityOhmM");
        Checks.notNegative(lengthM, "lengthM");
        Checks.positive(areaMm2, "areaMm2");
        return resistivityOhmM * lengthM / (areaMm2 * 1e-6);
    }

    /** Area of a round wire, mm², from its diameter, above 0. */
    public static double roundAreaMm2(double diameterMm) {
        Checks.positive(diameterMm, "diameterMm");
        return Math.PI * diameterMm * diameterMm / 4;
    }
}
