package orlop.standards;

import java.util.Objects;

/**
 * The cell of a printed table that an ampacity starts from.
 *
 * @param table its name in the standard
 * @param row the row's label: an area in mm², or an AWG size
 * @param column the column's label: temperature, method, loaded conductors
 * @param amps what is printed there
 * @param provenance how firm it is
 * @param source the text read or remembered
 */
public record TableCell(String table, String row, String column, double amps, Provenance provenance, String source) {
    /** Refuses a current that is not above 0 or a blank source. */
    public TableCell {
        Checks.positive(amps, "amps");
        Objects.requireNonNull(provenance, "provenance");
        if (source.isBlank()) {
            throw new IllegalArgumentException("source of " + table + " " + row + " is blank");
        }
    }
}
