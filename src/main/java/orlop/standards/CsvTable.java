package orlop.standards;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * A table of this room, read from a CSV resource: lines with {@code #} are comments, the first other line names the
 * columns, every further one is a row with exactly as many fields. Whatever is wrong throws {@link
 * IllegalStateException} naming file and line: the tables are shipped with the program, so it is a bug.
 */
final class CsvTable {
    private final String name;
    private final List<String> columns;
    private final List<CsvRow> rows;

    private CsvTable(String name, List<String> columns, List<CsvRow> rows) {
        this.name = name;
        this.columns = List.copyOf(columns);
        this.rows = List.copyOf(rows);
    }

    /** Reads the resource of that name beside this class. */
    static CsvTable load(String name) {
        try (InputStream in = CsvTable.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not on the class path beside " + CsvTable.class.getName());
            }
            return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException(name + " cannot be read", e);
        }
    }

    /** Reads the text of a table; {@code name} stands in errors. */
    static CsvTable parse(String name, String text) {
        List<String> columns = List.of();
        List<CsvRow> rows = new ArrayList<>();
        int lineNumber = 0;
        for (String line : text.lines().toList()) {
            lineNumber++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> fields = fields(name, lineNumber, line);
            if (columns.isEmpty()) {
                columns = checkedColumns(name, lineNumber, fields);
            } else {
                rows.add(new CsvRow(name, lineNumber, columns, fields));
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException(name + " has no rows");
        }
        return new CsvTable(name, columns, rows);
    }

    private static List<String> fields(String name, int line, String text) {
        try {
            return CsvLines.split(text);
        } catch (IllegalArgumentException e) {
            throw new IllegalStateException(name + " line " + line + ": " + e.getMessage(), e);
        }
    }

    private static List<String> checkedColumns(String name, int line, List<String> columns) {
        if (new HashSet<>(columns).size() < columns.size() || columns.contains("")) {
            throw new IllegalStateException(
                    name + " line " + line + ": column names must be different and not empty: " + columns);
        }
        return columns;
    }

    String name() {
        return name;
    }

    List<String> columns() {
        return columns;
    }

    List<CsvRow> rows() {
        return rows;
    }
}
