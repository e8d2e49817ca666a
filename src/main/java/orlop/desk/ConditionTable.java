package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Group;
import orlop.drawing.LoadState;
import orlop.drawing.OperatingCondition;
import orlop.drawing.SwitchPositions;

/**
 * What all operating conditions say, as a table: a row for each source, switch and load, a column for each condition.
 *
 * @param rows sources first, then switches, then loads, each in the order of the drawing
 * @param conditions the columns
 */
public record ConditionTable(List<Row> rows, List<OperatingCondition> conditions) {
    /** What a row is about. */
    public enum Sort {
        SOURCE,
        SWITCH,
        LOAD
    }

    /** Which of a load's figures is shown. */
    public enum Figure {
        /** Whether it runs, and what share of its current feeders see. */
        SIMULTANEITY,
        /** What share of its power it takes on average: for energy alone. */
        AVERAGE
    }

    /**
     * A row.
     *
     * @param item the component; a thing that is both, such as a breaker at a source, has a row of each sort
     */
    public record Row(Sort sort, Component item) {}

    /**
     * What stands in a cell.
     *
     * @param on whether a source is on, a load runs, a switch is closed (or a changeover not in its off position)
     * @param position word of the file for a switch; "" for others
     * @param share of a load, 0 to 1; 1 for others
     */
    public record Cell(boolean on, String position, double share) {}

    public ConditionTable {
        rows = List.copyOf(rows);
        conditions = List.copyOf(conditions);
    }

    /** The table of a drawing. */
    public static ConditionTable of(Drawing d) {
        List<Row> sources = new ArrayList<>();
        List<Row> switches = new ArrayList<>();
        List<Row> loads = new ArrayList<>();
        for (Component c : d.components().values()) {
            if (c.kind().group() == Group.SOURCES) {
                sources.add(new Row(Sort.SOURCE, c));
            }
            if (!SwitchPositions.of(c.particulars()).isEmpty()) {
                switches.add(new Row(Sort.SWITCH, c));
            }
            if (c.kind().group() == Group.LOADS) {
                loads.add(new Row(Sort.LOAD, c));
            }
        }
        List<Row> rows = new ArrayList<>(sources);
        rows.addAll(switches);
        rows.addAll(loads);
        return new ConditionTable(rows, d.conditions().stream().toList());
    }

    /** What a condition says of a row. */
    public static Cell cell(Row row, OperatingCondition c, Figure figure) {
        Component item = row.item();
        switch (row.sort()) {
            case SOURCE:
                return new Cell(c.sourceOn(item.id()), "", 1);
            case SWITCH:
                String position = SwitchPositions.in(c, item);
                return new Cell(!position.equals("open") && !position.equals("0"), position, 1);
            default:
                LoadState s = c.load(item.id());
                return new Cell(s.running(), "", figure == Figure.AVERAGE ? s.average() : s.simultaneity());
        }
    }
}
