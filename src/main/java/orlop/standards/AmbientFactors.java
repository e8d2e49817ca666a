package orlop.standards;

import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Factors for air warmer or cooler than a table's base.
 *
 * <p>A printed temperature gives the printed factor; between two, a straight line (the curve is hollow downwards, so that
 * is the safe side); below the first, the first one's; above the last, and for columns without a printed row,
 * {@link #byFormula}.
 */
final class AmbientFactors {
    private final double baseC;
    private final Map<Double, NavigableMap<Double, Sourced>> columns = new TreeMap<>();

    AmbientFactors(double baseC, CsvTable table) {
        this.baseC = baseC;
        for (CsvRow row : table.rows()) {
            columns.computeIfAbsent(row.number("column_c"), k -> new TreeMap<>())
                    .put(row.number("ambient_c"), row.sourced("factor"));
        }
    }

    /** The factor; {@code ambientC} must lie below {@code columnC}. */
    Sourced at(double columnC, double ambientC) {
        NavigableMap<Double, Sourced> column = columns.get(columnC);
        if (column == null) {
            return byFormula(columnC, Math.max(ambientC, coldestC()), baseC);
        }
        Map.Entry<Double, Sourced> below = column.floorEntry(ambientC);
        Map.Entry<Double, Sourced> above = column.ceilingEntry(ambientC);
        if (below == null) {
            return column.firstEntry().getValue();
        }
        if (above == null) {
            return byFormula(columnC, ambientC, baseC);
        }
        return below.getKey().equals(above.getKey()) ? below.getValue() : between(below, above, ambientC);
    }

    private double coldestC() {
        return columns.values().stream()
                .mapToDouble(NavigableMap::firstKey)
                .min()
                .orElseThrow();
    }

    private static Sourced between(
            Map.Entry<Double, Sourced> below, Map.Entry<Double, Sourced> above, double ambientC) {
        double share = (ambientC - below.getKey()) / (above.getKey() - below.getKey());
        double factor = below.getValue().value()
                + share * (above.getValue().value() - below.getValue().value());
        Provenance weakest = below.getValue()
                .provenance()
                .weaker(above.getValue().provenance())
                .weaker(Provenance.DERIVED);
        return new Sourced(
                factor,
                weakest,
                "between two printed temperatures of: " + below.getValue().source());
    }

    /**
     * √((θ − ambient) / (θ − base)): the losses that a conductor at θ can shed grow with its excess over the air. It
     * reproduces the printed factors within 0.01.
     */
    static Sourced byFormula(double columnC, double ambientC, double baseC) {
        double factor = Math.sqrt((columnC - ambientC) / (columnC - baseC));
        String source = String.format(
                Locale.ROOT, "sqrt((%.0f − ambient) / (%.0f − %.0f)), temperatures in °C", columnC, columnC, baseC);
        return new Sourced(factor, Provenance.DERIVED, source);
    }
}
