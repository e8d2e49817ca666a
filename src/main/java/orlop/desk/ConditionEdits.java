package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Ledger;
import orlop.drawing.LoadState;
import orlop.drawing.Message;
import orlop.drawing.OperatingCondition;
import orlop.drawing.SwitchPositions;

/** What can be done to operating conditions: each is one step of the history. */
public final class ConditionEdits {
    private static final List<String> YES = List.of("on", "yes", "x");
    private static final List<String> NO = List.of("off", "no", "-", "–");

    private ConditionEdits() {}

    /** An id that no condition has. */
    public static String freeId(Drawing d) {
        int n = 1;
        while (d.conditions().contains("c" + n)) {
            n++;
        }
        return "c" + n;
    }

    /** Adds a condition in which everything stands as drawn. */
    public static Edit add(String id, String name) {
        return Edits.change(OperatingCondition.asDrawn(id, name));
    }

    /** Adds a condition that says what another says. */
    public static Edit duplicate(String id, String copy, String name) {
        return Edit.of(Message.of("drawing.edit.condition", name), d -> {
            OperatingCondition from = require(d, id);
            return d.with(
                    new OperatingCondition(copy, name, from.loads(), from.sources(), from.switches(), from.extras()));
        });
    }

    /** Gives a condition another name. */
    public static Edit rename(String id, String name) {
        return Edit.of(Message.of("desk.condition.rename", name), d -> {
            if (name.isBlank()) {
                throw new Edit.Refusal(Message.of("desk.condition.no-name"));
            }
            return d.with(RecordParts.with(require(d, id), "name", name.strip()));
        });
    }

    /**
     * Takes a condition away. The hours that day plans have in it pass to its neighbour in the plan; of a plan that knows
     * no other condition it is refused.
     */
    public static Edit delete(String id) {
        return Edit.of(Message.of("desk.condition.delete", id), d -> {
            require(d, id);
            return PlannedHours.passedOn(d, id).withConditions(d.conditions().without(id));
        });
    }

    /** What a person should know of the drawing without this condition; empty where there is nothing. */
    public static Optional<Message> saidOfDeleting(Drawing d, String id) {
        return PlannedHours.said(d, id);
    }

    /** Puts a condition at another place in the strip; places beyond the ends mean the end. */
    public static Edit reorder(String id, int place) {
        return Edit.of(Message.of("desk.condition.reorder", id), d -> {
            List<OperatingCondition> all =
                    new ArrayList<>(d.conditions().stream().toList());
            OperatingCondition moved = require(d, id);
            all.remove(moved);
            all.add(Math.max(0, Math.min(place, all.size())), moved);
            Ledger<OperatingCondition> conditions = Ledger.empty();
            for (OperatingCondition c : all) {
                conditions = conditions.with(c.id(), c);
            }
            return conditions.equals(d.conditions()) ? d : d.withConditions(conditions);
        });
    }

    /** Turns a cell over: on and off, running or not, the switch's next position. */
    public static Edit turn(ConditionTable.Row row, String condition) {
        return change(row, condition, c -> {
            String id = row.item().id();
            return switch (row.sort()) {
                case SOURCE -> c.withSource(id, !c.sourceOn(id));
                case SWITCH -> {
                    List<String> all = SwitchPositions.of(row.item().particulars());
                    int now = all.indexOf(SwitchPositions.in(c, row.item()));
                    yield c.withSwitch(id, all.get((now + 1) % all.size()));
                }
                case LOAD -> {
                    LoadState s = c.load(id);
                    yield c.withLoad(id, RecordParts.with(s, "running", !s.running()));
                }
            };
        });
    }

    /**
     * Puts what a person typed into a cell: {@code on}, {@code off}; the word or number of a position; for a load a share
     * with comma or point, or percent. A share above 0 lets the load run; {@code 0} doesn't stop it from counting in its
     * own circuit, only {@code off} does.
     */
    public static Edit type(ConditionTable.Row row, String condition, ConditionTable.Figure figure, String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT);
        return change(row, condition, c -> {
            String id = row.item().id();
            return switch (row.sort()) {
                case SOURCE -> c.withSource(id, flag(word, typed));
                case SWITCH -> c.withSwitch(id, known(row, word, typed));
                case LOAD -> c.withLoad(id, load(c.load(id), figure, word, typed));
            };
        });
    }

    private static String known(ConditionTable.Row row, String word, String typed) {
        List<String> all = SwitchPositions.of(row.item().particulars());
        String position = position(word, all);
        if (!all.contains(position)) {
            throw new Edit.Refusal(Message.of("desk.condition.position", Message.quote(typed), all));
        }
        return position;
    }

    private static String position(String word, List<String> all) {
        return switch (word) {
            case "on" -> "closed";
            case "off" -> all.contains("0") ? "0" : "open";
            default -> word.replaceFirst("^way ", "");
        };
    }

    private static boolean flag(String word, String typed) {
        if (YES.contains(word) || word.equals("1")) {
            return true;
        }
        if (NO.contains(word) || word.equals("0")) {
            return false;
        }
        throw new Edit.Refusal(Message.of("desk.condition.on-off", Message.quote(typed)));
    }

    private static LoadState load(LoadState now, ConditionTable.Figure figure, String word, String typed) {
        if (YES.contains(word) || NO.contains(word)) {
            return RecordParts.with(now, "running", YES.contains(word));
        }
        NumberInput.Reading r = NumberInput.read(word, Measure.RATIO);
        if (!(r instanceof NumberInput.Value v)) {
            throw new Edit.Refusal(Message.of("desk.condition.share", Message.quote(typed)));
        }
        LoadState on = RecordParts.with(now, "running", true);
        return RecordParts.with(on, figure == ConditionTable.Figure.AVERAGE ? "average" : "simultaneity", v.value());
    }

    private static Edit change(
            ConditionTable.Row row, String condition, java.util.function.UnaryOperator<OperatingCondition> change) {
        return Edit.of(Message.of("desk.condition.cell", row.item().id()), d -> {
            if (!d.components().contains(row.item().id())) {
                throw new Edit.Refusal(
                        Message.of("drawing.refuse.gone", row.item().id()));
            }
            OperatingCondition before = require(d, condition);
            OperatingCondition after = change.apply(before);
            boolean same = says(before, row).equals(says(after, row));
            return same ? d : d.with(after); // what goes without saying is not said
        });
    }

    private static List<Object> says(OperatingCondition c, ConditionTable.Row row) {
        return List.of(
                ConditionTable.cell(row, c, ConditionTable.Figure.SIMULTANEITY),
                ConditionTable.cell(row, c, ConditionTable.Figure.AVERAGE));
    }

    private static OperatingCondition require(Drawing d, String id) {
        return d.conditions().find(id).orElseThrow(() -> new Edit.Refusal(Message.of("drawing.flaw.no-condition", id)));
    }
}
