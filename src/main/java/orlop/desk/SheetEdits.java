package orlop.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Ledger;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.layout.Rect;
import orlop.scene.SheetRoom;

/** What can be done to the drawing register: sheets come, change, change places and go. */
public final class SheetEdits {
    private SheetEdits() {}

    /** Puts a new sheet behind the last one. */
    public static Edit add(Sheet sheet) {
        return Edit.of(Message.of("desk.sheet.add", sheet.number()), d -> {
            if (d.sheets().contains(sheet.id())) {
                throw new Edit.Refusal(Message.of("desk.sheet.taken", sheet.id()));
            }
            return d.with(sheet);
        });
    }

    /** Puts a changed sheet in the place of the one with its id. */
    public static Edit change(Sheet sheet) {
        return Edit.of(Message.of("desk.sheet.change", sheet.number()), d -> {
            require(d, sheet.id());
            return d.with(sheet);
        });
    }

    /** Gives a sheet the next larger paper. */
    public static Edit larger(String id) {
        return Edit.of(Message.of("desk.sheet.larger", id), d -> {
            Sheet sheet = require(d, id);
            SheetSize size = larger(sheet.size())
                    .orElseThrow(() -> new Edit.Refusal(
                            Message.of("desk.sheet.largest", sheet.size().designation())));
            return d.with(RecordParts.with(sheet, "size", size));
        });
    }

    /** The next larger paper of ISO 216, lying; empty for the largest that is known. */
    public static Optional<SheetSize> larger(SheetSize size) {
        return switch (size) {
            case A1 -> Optional.empty();
            case A2 -> Optional.of(SheetSize.A1);
            case A3 -> Optional.of(SheetSize.A2);
            case A4, A4_UPRIGHT -> Optional.of(SheetSize.A3);
        };
    }

    /** The components of a sheet that stand beyond the room that its paper has for them. */
    public static Set<String> beyond(Drawing d, String sheet) {
        Set<String> ids = new LinkedHashSet<>();
        Sheet paper = d.sheets().get(sheet);
        if (paper != null) {
            Rect room = SheetRoom.of(paper.size(), 0);
            for (Component c : d.components().values()) {
                Point at = c.place().at();
                if (c.place().sheet().equals(sheet) && !room.contains(Rect.of(at.xMm(), at.yMm(), 0, 0))) {
                    ids.add(c.id());
                }
            }
        }
        return ids;
    }

    /**
     * Puts a sheet at another place in the register.
     *
     * @param place from 0; beyond the ends means at the end
     */
    public static Edit reorder(String id, int place) {
        return Edit.of(Message.of("desk.sheet.reorder", id), d -> {
            Sheet moved = require(d, id);
            List<Sheet> all = new ArrayList<>(d.sheets().stream().toList());
            all.remove(moved);
            all.add(Math.max(0, Math.min(place, all.size())), moved);
            Ledger<Sheet> sheets = Ledger.empty();
            for (Sheet s : all) {
                sheets = sheets.with(s.id(), s);
            }
            return sheets.equals(d.sheets()) ? d : d.withSheets(sheets);
        });
    }

    /**
     * Takes a sheet away with all that is drawn on it. Its sheet links go with their other halves on other sheets, so that
     * no half leads nowhere.
     */
    public static Edit delete(String id) {
        return Edit.of(Message.of("desk.sheet.delete", id), d -> {
            require(d, id);
            if (d.sheets().size() == 1) {
                throw new Edit.Refusal(Message.of("desk.sheet.last"));
            }
            Set<String> gone = contents(d, id);
            for (String item : List.copyOf(gone)) {
                d.components()
                        .find(item)
                        .flatMap(c -> mate(d, c))
                        .map(Component::id)
                        .ifPresent(gone::add);
            }
            Drawing after = gone.isEmpty() ? d : Edits.delete(gone).applyTo(d);
            return after.withSheets(after.sheets().without(id));
        });
    }

    /** Components and notes on a sheet. */
    public static Set<String> contents(Drawing d, String sheet) {
        Set<String> ids = new LinkedHashSet<>();
        d.components().stream()
                .filter(c -> c.place().sheet().equals(sheet))
                .map(Component::id)
                .forEach(ids::add);
        d.notes().stream().filter(n -> n.sheet().equals(sheet)).map(Note::id).forEach(ids::add);
        return ids;
    }

    /** The other half of a sheet link; empty for anything else, and for a half that has none. */
    public static Optional<Component> mate(Drawing d, Component c) {
        return c.particulars() instanceof Distribution.SheetLink l && !l.mate().isEmpty()
                ? d.components().find(l.mate())
                : Optional.empty();
    }

    static Sheet require(Drawing d, String id) {
        return d.sheets().find(id).orElseThrow(() -> new Edit.Refusal(Message.of("desk.sheet.gone", id)));
    }

    /** An id that no sheet has: the least number that is free. */
    public static String freeId(Drawing d) {
        int n = 1;
        while (d.sheets().contains(Integer.toString(n))) {
            n++;
        }
        return Integer.toString(n);
    }

    /** The number that follows the last one of the register: {@code 004} after {@code 003}; else the sheet's own id. */
    public static String nextNumber(Drawing d, String id) {
        List<Sheet> all = d.sheets().stream().toList();
        String last = all.isEmpty() ? "" : all.get(all.size() - 1).number();
        if (!last.matches("[0-9]{1,6}")) {
            return id;
        }
        int n = Integer.parseInt(last) + 1;
        String next = Integer.toString(n);
        return "0".repeat(Math.max(0, last.length() - next.length())) + next;
    }
}
