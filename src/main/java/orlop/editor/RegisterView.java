package orlop.editor;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import org.jspecify.annotations.Nullable;
import orlop.desk.RecordParts;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.desk.SheetEdits;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;

/** The drawing register: a line for each sheet. The line that is chosen is the sheet that is shown. */
final class RegisterView implements SessionListener {
    private static final String[] COLUMNS = {
        "number", "title", "size", "revision", "status", "drawnBy", "date", "items", "findings"
    };
    private static final int TITLE = 1;
    private static final int SIZE = 2;
    private static final int ITEMS = 7;

    private final Session session;
    private final Model model;
    private final JTable table;
    private final JPanel panel;
    private boolean following;

    RegisterView(Session session, Commands commands) {
        this.session = session;
        this.model = new Model(session);
        this.table = Grid.table(model);
        Grid.look(table, "register.table");
        table.setDefaultEditor(Object.class, new TypedCell(model::take));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getAccessibleContext().setAccessibleName(Texts.of("editor.access.register"));
        JComboBox<String> sizes = new JComboBox<>();
        for (SheetSize s : SheetSize.values()) {
            sizes.addItem(size(s));
        }
        sizes.setName("register.size");
        table.getColumnModel().getColumn(SIZE).setCellEditor(new DefaultCellEditor(sizes));
        table.getSelectionModel().addListSelectionListener(e -> chosen());
        Grid.key(table, "DELETE", () -> commands.get(CommandId.DELETE_SHEET).run());
        Grid.key(table, "alt UP", () -> commands.get(CommandId.SHEET_EARLIER).run());
        Grid.key(table, "alt DOWN", () -> commands.get(CommandId.SHEET_LATER).run());
        JPanel buttons = Grid.row();
        for (CommandId id : List.of(
                CommandId.NEW_SHEET,
                CommandId.SHEET_EARLIER,
                CommandId.SHEET_LATER,
                CommandId.MOVE_TO_SHEET,
                CommandId.SHEET_DETAILS,
                CommandId.DELETE_SHEET)) {
            buttons.add(Grid.button(commands, id));
        }
        panel = Grid.page(buttons, table);
        session.listen(this);
        read(session.state());
    }

    JPanel panel() {
        return panel;
    }

    private static String size(SheetSize s) {
        return Texts.of("editor.size." + s.word());
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        if (!Same.object(before.drawing(), after.drawing())
                || !Same.object(before.review(), after.review())
                || !before.sheet().equals(after.sheet())) {
            read(after);
        }
    }

    private void read(SessionState s) {
        following = true;
        boolean sameRows = model.sheets.size() == s.drawing().sheets().size();
        model.state = s;
        List<Sheet> before = model.sheets;
        model.sheets = s.drawing().sheets().stream().toList();
        if (sameRows) {
            model.fireTableRowsUpdated(0, Math.max(0, model.sheets.size() - 1));
        } else {
            model.fireTableDataChanged();
        }
        if (!model.sheets.equals(before)) {
            Widths.fit(table, TITLE);
        }
        int row = s.shownSheet().map(model.sheets::indexOf).orElse(-1);
        if (row >= 0 && table.getSelectedRow() != row) {
            table.setRowSelectionInterval(row, row);
        }
        if (table.getSelectedColumn() < 0) {
            table.setColumnSelectionInterval(TITLE, TITLE); // what is typed is a title
        }
        following = false;
    }

    private void chosen() {
        int row = table.getSelectedRow();
        if (!following && row >= 0 && row < model.sheets.size()) {
            session.showSheet(model.sheets.get(row).id());
        }
    }

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private final transient Session session;
        private transient SessionState state;
        private transient List<Sheet> sheets = List.of();

        Model(Session session) {
            this.session = session;
            this.state = session.state();
        }

        @Override
        public int getRowCount() {
            return sheets.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.length;
        }

        @Override
        public String getColumnName(int column) {
            return Texts.of("editor.register." + COLUMNS[column].toLowerCase(Locale.ROOT));
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return column < ITEMS;
        }

        @Override
        public Object getValueAt(int row, int column) {
            Sheet s = sheets.get(row);
            Drawing d = state.drawing();
            if (column == SIZE) {
                return size(s.size());
            }
            if (column == ITEMS) {
                return SheetEdits.contents(d, s.id()).size();
            }
            if (column > ITEMS) {
                return FindingPlaces.all(state).stream()
                        .filter(n -> FindingPlaces.sheet(d, n.finding()).equals(s.id()))
                        .count();
            }
            return String.valueOf(RecordParts.get(s, COLUMNS[column]));
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            take(value, row, column);
        }

        Optional<Message> take(@Nullable Object value, int row, int column) {
            Sheet s = sheets.get(row);
            if (value == null || value.equals(getValueAt(row, column))) {
                return Optional.empty();
            }
            Object part = value instanceof String t ? t.strip() : value;
            if (column == SIZE) {
                for (SheetSize size : SheetSize.values()) {
                    part = size(size).equals(value) ? size : part;
                }
            }
            Object taken = part;
            return session.apply(orlop.drawing.Edit.of(
                    Message.of("desk.sheet.change", s.number()),
                    d -> d.with(RecordParts.with(d.sheets().require(s.id()), COLUMNS[column], taken))));
        }
    }
}
