package orlop.standards;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** The cells of one ampacity table: by the column's temperature, then by area. */
final class AmpacityColumns {
    private final NavigableMap<Double, NavigableMap<Double, TableCell>> columns = new TreeMap<>();

    /** Adds a cell while a table is read; a second one in its place is refused. */
    void add(double columnC, double areaMm2, TableCell cell) {
        TableCell there = columns.computeIfAbsent(columnC, k -> new TreeMap<>()).putIfAbsent(areaMm2, cell);
        if (there != null) {
            throw new IllegalStateException(
                    cell.table() + " has two cells in row " + cell.row() + ", column " + cell.column());
        }
    }

    /** A cell that was found, with its column's temperature. */
    record Found(double columnC, TableCell cell) {
        /** What to answer where the air is as warm as this column's conductor may get. */
        AmpacityResult.NoValue ambientTooWarm() {
            return new AmpacityResult.NoValue(
                    AmpacityResult.Reason.AMBIENT_TOO_WARM, new Sourced(columnC, cell.provenance(), cell.source()));
        }
    }

    /** Looks a cell up by the rules of {@link Ampacity} and hands it to {@code then}, or says why there is none. */
    AmpacityResult with(double insulationC, double areaMm2, Function<Found, AmpacityResult> then) {
        NavigableMap<Double, NavigableMap<Double, TableCell>> permitted = columns.headMap(insulationC, true);
        if (permitted.isEmpty()) {
            return missing(AmpacityResult.Reason.INSULATION_BELOW_TABLE, columns.firstKey());
        }
        double wanted = areaMm2 * (1 + Conductors.SAME_AREA);
        double reach = Math.min(
                areaMm2 * (1 - Conductors.SAME_AREA), areasMm2().get(areasMm2().size() - 1));
        for (Map.Entry<Double, NavigableMap<Double, TableCell>> column :
                permitted.descendingMap().entrySet()) {
            Map.Entry<Double, TableCell> row = column.getValue().floorEntry(wanted);
            if (row != null && column.getValue().lastKey() >= reach) {
                return then.apply(new Found(column.getKey(), row.getValue()));
            }
        }
        return missing(AmpacityResult.Reason.AREA_BELOW_TABLE, areasMm2().get(0));
    }

    private AmpacityResult missing(AmpacityResult.Reason reason, double limit) {
        TableCell any = columns.firstEntry().getValue().firstEntry().getValue();
        return new AmpacityResult.NoValue(reason, new Sourced(limit, any.provenance(), any.source()));
    }

    /** The areas of all rows, ascending. */
    List<Double> areasMm2() {
        TreeSet<Double> areas = new TreeSet<>();
        columns.values().forEach(c -> areas.addAll(c.keySet()));
        return List.copyOf(areas);
    }
}
