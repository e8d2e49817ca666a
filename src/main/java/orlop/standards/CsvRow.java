package orlop.standards;

import java.util.List;
import java.util.OptionalDouble;

/** One row of a {@link CsvTable}; every complaint names file, line and column. */
final class CsvRow {
    private final String table;
    private final int line;
    private final List<String> columns;
    private final List<String> fields;

    CsvRow(String table, int line, List<String> columns, List<String> fields) {
        this.table = table;
        this.line = line;
        this.columns = columns;
        this.fields = List.copyOf(fields);
        if (fields.size() != columns.size()) {
            throw new IllegalStateException(table + " line " + line + ": " + fields.size() + " fields where the header"
                    + " names " + columns.size() + " columns");
        }
    }

    /** The text of a field, possibly empty. */
    String text(String column) {
        int at = columns.indexOf(column);
        if (at < 0) {
            throw wrong("no column \"" + column + "\" among " + columns);
        }
        return fields.get(at);
    }

    /** The text of a field that may not be empty. */
    String word(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            throw wrong("\"" + column + "\" is empty");
        }
        return text;
    }

    /** The number in a field that may not be empty. */
    double number(String column) {
        String text = word(column);
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new IllegalStateException(place() + "\"" + column + "\" is not a number: " + text, e);
        }
        throw wrong("\"" + column + "\" is not a finite number: " + text);
    }

    /** The number in a field, or none where it is empty. */
    OptionalDouble optionalNumber(String column) {
        return text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(column));
    }

    /** The number in a field, or {@code otherwise} where it is empty. */
    double numberOr(String column, double otherwise) {
        return text(column).isEmpty() ? otherwise : number(column);
    }

    /** Whether a field says {@code yes}; anything but yes and no is refused. */
    boolean yes(String column) {
        return switch (text(column)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw wrong("\"" + column + "\" is neither yes nor no: " + text(column));
        };
    }

    /** A number with this row's provenance and source. */
    Sourced sourced(String column) {
        return new Sourced(number(column), provenance(), source());
    }

    Provenance provenance() {
        return provenance("provenance");
    }

    Provenance provenance(String column) {
        try {
            return Provenance.parse(word(column));
        } catch (IllegalArgumentException e) {
            throw new IllegalStateException(place() + e.getMessage(), e);
        }
    }

    String source() {
        return word("source");
    }

    /** A complaint about this row. */
    IllegalStateException wrong(String what) {
        return new IllegalStateException(place() + what);
    }

    private String place() {
        return table + " line " + line + ": ";
    }
}
