package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import org.jspecify.annotations.Nullable;
import orlop.desk.ConditionEdits;
import orlop.desk.ConditionTable;
import orlop.desk.ConditionTable.Cell;
import orlop.desk.ConditionTable.Figure;
import orlop.desk.ConditionTable.Row;
import orlop.desk.ConditionTable.Sort;
import orlop.desk.NumberInput;
import orlop.desk.Session;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.OperatingCondition;

/** The cells of the table of conditions, with a head above each group of rows. Column 0 says what the row is about. */
final class ConditionsModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    /** A row of the table; the head of a group has no row of the desk's table. */
    private record Line(Sort sort, @Nullable Row row) {}

    private final transient Session session;
    private transient ConditionTable content;
    private transient List<Line> lines;
    private Figure figure = Figure.SIMULTANEITY;

    ConditionsModel(Session session) {
        this.session = session;
        this.content = ConditionTable.of(session.state().drawing());
        this.lines = lines(content);
    }

    private static List<Line> lines(ConditionTable t) {
        List<Line> lines = new ArrayList<>();
        Sort last = null;
        for (Row r : t.rows()) {
            if (r.sort() != last) {
                lines.add(new Line(r.sort(), null));
                last = r.sort();
            }
            lines.add(new Line(r.sort(), r));
        }
        return lines;
    }

    /** Takes another drawing; whether the columns are others than before. */
    boolean read(Drawing d) {
        ConditionTable next = ConditionTable.of(d);
        boolean sameColumns = names(next).equals(names(content));
        boolean sameRows = next.rows().size() == content.rows().size();
        content = next;
        lines = lines(next);
        if (!sameColumns) {
            fireTableStructureChanged();
        } else if (!sameRows) {
            fireTableDataChanged();
        } else if (!lines.isEmpty()) {
            fireTableRowsUpdated(0, lines.size() - 1);
        }
        return !sameColumns;
    }

    private static List<String> names(ConditionTable t) {
        return t.conditions().stream().map(c -> c.id() + "\n" + c.title()).toList();
    }

    /** Shows another figure of the loads. */
    void figure(Figure f) {
        figure = f;
        fireTableRowsUpdated(0, Math.max(0, lines.size() - 1));
    }

    OperatingCondition condition(int column) {
        return content.conditions().get(column - 1);
    }

    /** The column of a condition; 0 if it has none. */
    int column(String condition) {
        for (int i = 0; i < content.conditions().size(); i++) {
            if (content.conditions().get(i).id().equals(condition)) {
                return i + 1;
            }
        }
        return 0;
    }

    /** What a row is about; empty for the head of a group. */
    Optional<Row> row(int row) {
        return row < 0 || row >= lines.size()
                ? Optional.empty()
                : Optional.ofNullable(lines.get(row).row());
    }

    boolean isLoad(int row) {
        return row(row).filter(r -> r.sort() == Sort.LOAD).isPresent();
    }

    /** Whether a cell says that something is off, open or doesn't run. */
    boolean off(int row, int column) {
        return column > 0
                && row(row).filter(r -> !ConditionTable.cell(r, condition(column), figure)
                                .on())
                        .isPresent();
    }

    @Override
    public int getRowCount() {
        return lines.size();
    }

    @Override
    public int getColumnCount() {
        return content.conditions().size() + 1;
    }

    @Override
    public String getColumnName(int column) {
        return column == 0
                ? Texts.of("editor.conditions.what")
                : condition(column).title();
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column > 0 && row(row).isPresent();
    }

    @Override
    public Object getValueAt(int row, int column) {
        Line line = lines.get(row);
        Row r = line.row();
        if (r == null) {
            String key = "editor.conditions." + line.sort().name().toLowerCase(Locale.ROOT);
            return column == 0 ? Texts.of(key) : "";
        }
        if (column == 0) {
            return what(r.item());
        }
        Cell cell = ConditionTable.cell(r, condition(column), figure);
        return switch (r.sort()) {
            case SOURCE -> Texts.of(cell.on() ? "editor.conditions.on" : "editor.conditions.off");
            case SWITCH -> Texts.of("editor.choice.position." + cell.position());
            case LOAD ->
                cell.on()
                        ? NumberInput.typed(cell.share(), orlop.desk.Measure.RATIO)
                        : Texts.of("editor.conditions.off");
        };
    }

    private static String what(Component c) {
        String name = c.name().isEmpty() ? Texts.of(c.kind().term()) : c.name();
        return c.id() + "   " + name;
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        take(value, row, column);
    }

    /** Gives the drawing what was typed, and says why that was refused. */
    Optional<Message> take(Object value, int row, int column) {
        Optional<Row> r = row(row);
        String typed = String.valueOf(value);
        return r.isPresent() && !typed.isBlank() && !typed.equals(getValueAt(row, column))
                ? session.apply(ConditionEdits.type(r.get(), condition(column).id(), figure, typed))
                : Optional.empty();
    }
}
