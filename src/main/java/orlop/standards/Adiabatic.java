package orlop.standards;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Short-circuit heating of copper conductors, IEC 60364-4-43 clause 434.5.2: I²t ≤ k²S², up to 5 s. Immutable.
 */
public final class Adiabatic {
    /** Insulations up to this rating, in °C, are taken as PVC where nothing else is known. */
    private static final double PVC_UP_TO_C = 125;

    /** Above this area, in mm², PVC ends at 140 °C in place of 160 °C. */
    private static final double LARGE_MM2 = 300;

    private final List<Row> rows = new ArrayList<>();

    private record Row(String insulation, double upToMm2, AdiabaticFactor factor) {}

    private Adiabatic(CsvTable table) {
        for (CsvRow row : table.rows()) {
            AdiabaticFactor factor =
                    new AdiabaticFactor(row.number("initial_c"), row.number("final_c"), row.sourced("k"));
            rows.add(new Row(row.word("insulation"), row.numberOr("up_to_mm2", Double.POSITIVE_INFINITY), factor));
        }
    }

    private static final class Holder {
        static final Adiabatic PUBLISHED = new Adiabatic(CsvTable.load("adiabatic.csv"));
    }

    /** The published table. */
    public static Adiabatic published() {
        return Holder.PUBLISHED;
    }

    /** The insulations of the table, e.g. {@code pvc-70}, {@code xlpe-90}. */
    public Set<String> insulations() {
        Set<String> names = new LinkedHashSet<>();
        rows.forEach(r -> names.add(r.insulation()));
        return names;
    }

    /** The printed k of an insulation for an area; none if the table doesn't know the insulation. */
    public Optional<AdiabaticFactor> factor(String insulation, double areaMm2) {
        Checks.positive(areaMm2, "areaMm2");
        return rows.stream()
                .filter(r -> r.insulation().equals(insulation) && areaMm2 <= r.upToMm2())
                .findFirst()
                .map(Row::factor);
    }

    /**
     * k where only the temperature rating is known: the insulation is taken as PVC (160 °C at the end, 140 °C above
     * 300 mm²), which is the safe side of rubber and XLPE.
     *
     * @param insulationC rated temperature, °C, 40 to 300
     * @return none above 125 °C: such insulation is no PVC, ask for its k
     */
    public Optional<AdiabaticFactor> assumedForRating(double insulationC, double areaMm2) {
        Checks.between(insulationC, 40, 300, "insulationC");
        Checks.positive(areaMm2, "areaMm2");
        if (insulationC > PVC_UP_TO_C) {
            return Optional.empty();
        }
        double finalC = areaMm2 > LARGE_MM2 ? 140 : 160;
        Sourced k = new Sourced(
                k(insulationC, finalC),
                Provenance.ENGINEERING_ESTIMATE,
                "226·sqrt(ln((234.5+final)/(234.5+initial))), insulation taken as PVC");
        return Optional.of(new AdiabaticFactor(insulationC, finalC, k));
    }

    /**
     * k of copper, A·s½/mm²: 226·√ln((234.5+final)/(234.5+initial)), IEC 60364-5-54 Annex A.
     *
     * @param initialC temperature at the start, °C, −50 to 400
     * @param finalC temperature at the end, °C, above the initial one, up to 400
     */
    public static double k(double initialC, double finalC) {
        Checks.between(initialC, -50, 400, "initialC");
        Checks.between(finalC, Math.nextUp(initialC), 400, "finalC");
        return 226 * Math.sqrt(Math.log((234.5 + finalC) / (234.5 + initialC)));
    }

    /**
     * Least area that withstands a fault, mm²: √(I²t)/k.
     *
     * @param currentA fault current, A, at least 0
     * @param timeS until it is cleared, s, 0 to 5: beyond that heat leaves the conductor and the formula doesn't hold
     * @param k A·s½/mm², above 0
     */
    public static double leastAreaMm2(double currentA, double timeS, double k) {
        Checks.notNegative(currentA, "currentA");
        Checks.between(timeS, 0, 5, "timeS");
        Checks.positive(k, "k");
        return currentA * Math.sqrt(timeS) / k;
    }
}
