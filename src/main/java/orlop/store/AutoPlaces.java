package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.Map;
import orlop.drawing.Place;

/**
 * Tidy places for components that a file puts nowhere, as a network translated by a machine does: rows below what is
 * placed already, wide enough that even many stay within the reach of a sheet's coordinates.
 */
final class AutoPlaces {
    private static final double LEFT_MM = 30;
    private static final double TOP_MM = 30;
    private static final double COLUMN_MM = 40;
    private static final double ROW_MM = 30;
    private static final double REACH_MM = 9_000;
    private static final int COLUMNS = 9;

    private static final class Rows {
        private double top = TOP_MM;
        private int unplaced;
        private int given;
    }

    private final Map<String, Rows> sheets = new HashMap<>();
    private final String firstSheet;

    /** @param components the list of the file, its items not checked yet */
    AutoPlaces(JsonNode components, String firstSheet) {
        this.firstSheet = firstSheet;
        for (JsonNode c : components) {
            Rows rows = sheets.computeIfAbsent(sheet(c), s -> new Rows());
            JsonNode y = c.path("at").path(1);
            if (!c.has("at")) {
                rows.unplaced++;
            } else if (y.isNumber() && y.doubleValue() + ROW_MM > rows.top && y.doubleValue() < 500) {
                rows.top = Math.ceil(y.doubleValue() / ROW_MM + 1) * ROW_MM;
            }
        }
    }

    private String sheet(JsonNode component) {
        JsonNode sheet = component.get("sheet");
        return sheet == null || !sheet.isTextual() ? firstSheet : sheet.textValue();
    }

    /** Where a component goes if it says nothing of its sheet or its place. */
    Place next(JsonNode component) {
        Rows rows = sheets.computeIfAbsent(sheet(component), s -> new Rows());
        if (component.has("at")) {
            return Place.at(firstSheet, 0, 0);
        }
        int columns = Math.max(COLUMNS, (int) Math.ceil(Math.sqrt(rows.unplaced)));
        int lines = (rows.unplaced + columns - 1) / columns;
        double dx = Math.min(COLUMN_MM, Math.floor(REACH_MM / columns));
        double dy = Math.min(ROW_MM, Math.floor(REACH_MM / Math.max(1, lines)));
        int n = rows.given++;
        int row = n / columns;
        return Place.at(firstSheet, LEFT_MM + n % columns * dx, rows.top + row * dy);
    }
}
