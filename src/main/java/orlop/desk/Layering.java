package orlop.desk;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.drawing.Sheet;
import orlop.layout.FromSources;
import orlop.layout.Rect;
import orlop.scene.SheetRoom;

/** Draws a sheet, or what is chosen on it, anew from the sources down. */
public final class Layering {
    private Layering() {}

    /**
     * The components that would be placed: the chosen ones, or all of the sheet if none is chosen; locked ones stay where they
     * are.
     *
     * @param sheet the sheet shown
     * @param chosen ids of anything; may be empty
     */
    public static Set<String> moved(Drawing drawing, String sheet, Set<String> chosen) {
        Set<String> moved = new LinkedHashSet<>();
        for (Component c : drawing.components().values()) {
            boolean meant = chosen.isEmpty() || chosen.contains(c.id());
            if (meant && !c.locked() && c.place().sheet().equals(sheet)) {
                moved.add(c.id());
            }
        }
        return moved;
    }

    /**
     * One step: places, turns and bars' lengths anew, corners and labels that were set by hand forgotten. Chosen components
     * begin where the uppermost and leftmost of them stood.
     */
    public static Edit edit(String sheet, Set<String> chosen) {
        Set<String> ids = new LinkedHashSet<>(chosen);
        return Edit.of(Message.of("desk.from-sources"), d -> {
            Set<String> moved = moved(d, sheet, ids);
            Sheet paper = d.sheets().get(sheet);
            if (moved.isEmpty() || paper == null) {
                throw new Edit.Refusal(Message.of("desk.from-sources.none"));
            }
            Rect room = SheetRoom.of(paper.size(), 0);
            FromSources layout = new FromSources(OwnSymbols.library());
            Map<String, FromSources.Spot> spots = layout.arrange(d, moved, ids.isEmpty() ? room : from(d, moved, room));
            if (spots.isEmpty()) {
                throw new Edit.Refusal(Message.of("desk.from-sources.deep"));
            }
            return FromSources.placed(d, spots);
        });
    }

    private static Rect from(Drawing d, Set<String> ids, Rect room) {
        double left = room.maxX();
        double top = room.maxY();
        for (String id : ids) {
            Component c = d.components().require(id);
            left = Math.min(left, c.place().at().xMm());
            top = Math.min(top, c.place().at().yMm());
        }
        return new Rect(left, top, room.maxX(), room.maxY());
    }
}
