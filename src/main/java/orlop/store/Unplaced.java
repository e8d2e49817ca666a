package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Sheet;
import orlop.layout.FromSources;
import orlop.layout.Rect;
import orlop.scene.SheetRoom;
import orlop.symbols.SymbolLibrary;

/** Draws the components that a file puts nowhere from their sources down, below what has its place already. */
final class Unplaced {
    /** More than these on one sheet nobody reads: they stay in the rows of {@link AutoPlaces}. */
    private static final int MOST = 2_000;

    private static final double BELOW_MM = 40;

    private Unplaced() {}

    /**
     * @param drawing as it was read, sound
     * @param root the file
     */
    static Drawing placed(Drawing drawing, JsonNode root) {
        Map<String, Set<String>> sheets = new LinkedHashMap<>();
        for (JsonNode c : root.path(Section.COMPONENTS.key())) {
            String id = c.path("id").asText();
            if (!c.has("at")) {
                drawing.components()
                        .find(id)
                        .ifPresent(k -> sheets.computeIfAbsent(k.place().sheet(), s -> new LinkedHashSet<>())
                                .add(id));
            }
        }
        Drawing placed = drawing;
        for (Map.Entry<String, Set<String>> e : sheets.entrySet()) {
            Sheet sheet = drawing.sheets().get(e.getKey());
            if (sheet != null && e.getValue().size() <= MOST) {
                Rect room = SheetRoom.of(sheet.size(), top(drawing, e.getKey(), e.getValue()));
                FromSources tidy = new FromSources(SymbolLibrary.bundled());
                placed = FromSources.placed(placed, tidy.arrange(drawing, e.getValue(), room));
            }
        }
        return placed;
    }

    private static double top(Drawing drawing, String sheet, Set<String> ids) {
        double top = 0;
        for (Component c : drawing.components().values()) {
            if (c.place().sheet().equals(sheet) && !ids.contains(c.id())) {
                top = Math.max(top, c.place().at().yMm() + BELOW_MM);
            }
        }
        return top;
    }
}
