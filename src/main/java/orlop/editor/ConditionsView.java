package orlop.editor;

import java.awt.Component;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.List;
import java.util.Locale;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.ListSelectionModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.jspecify.annotations.Nullable;
import orlop.desk.ConditionEdits;
import orlop.desk.ConditionTable.Figure;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.study.Results;

/**
 * All operating conditions as columns, all sources, switches and loads as rows. The column of the cell that is chosen is the
 * condition that is shown. Space turns a cell over; typing puts a share or a position in.
 */
final class ConditionsView implements SessionListener {
    private static final int FIRST = 250;
    private static final int OTHERS = 110;

    private final Session session;
    private final ConditionsModel model;
    private final JTable table;
    private final JPanel panel;
    private boolean following;
    private boolean arriving;

    ConditionsView(Session session, Commands commands) {
        this.session = session;
        this.model = new ConditionsModel(session);
        this.table = new Grid.Typed(model) {
            private static final long serialVersionUID = 1L;

            @Override
            public void changeSelection(int row, int column, boolean toggle, boolean extend) {
                int shown = arriving ? model.column(session.state().condition()) : column;
                super.changeSelection(noHead(row), Math.max(1, shown), toggle, extend);
            }

            /** A double click turns over what is on or off, and doesn't begin to change its text. */
            @Override
            public boolean editCellAt(int row, int column, @Nullable EventObject event) {
                boolean clicked = event instanceof MouseEvent && !model.isLoad(row);
                return !clicked && super.editCellAt(row, column, event);
            }

            /** That the keys come to the table shows no other condition. */
            @Override
            protected void processFocusEvent(FocusEvent e) {
                arriving = true;
                super.processFocusEvent(e);
                arriving = false;
            }

            /** The keys pass over the heads of groups. */
            private int noHead(int row) {
                int by = row < getSelectedRow() && row > 0 ? -1 : 1;
                int to = row;
                while (to >= 0 && to < getRowCount() && model.row(to).isEmpty()) {
                    to += by;
                }
                return to >= 0 && to < getRowCount() ? to : row;
            }
        };
        Grid.look(table, "conditions.table");
        table.setCellSelectionEnabled(true);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setDefaultRenderer(Object.class, new Cell());
        table.setDefaultEditor(Object.class, new TypedCell(model::take));
        table.getAccessibleContext().setAccessibleName(Texts.of("editor.fold.conditions"));
        table.getColumnModel().getSelectionModel().addListSelectionListener(e -> chosen());
        table.getSelectionModel().addListSelectionListener(e -> chosen());
        Grid.key(table, "SPACE", this::turn);
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2 && !model.isLoad(table.getSelectedRow())) {
                    turn();
                }
            }
        });
        panel = Grid.page(buttons(commands), table);
        widths();
        session.listen(this);
    }

    private JPanel buttons(Commands commands) {
        JPanel row = Grid.row();
        ButtonGroup group = new ButtonGroup();
        for (Figure f : Figure.values()) {
            String word = f.name().toLowerCase(Locale.ROOT);
            JToggleButton b =
                    Ring.toggle(Texts.of("editor.conditions." + word), f == Figure.SIMULTANEITY, "toolBarButton");
            b.setName("conditions." + word);
            b.setToolTipText(Texts.of("editor.conditions." + word + ".how"));
            b.addActionListener(e -> model.figure(f));
            group.add(b);
            row.add(b);
        }
        row.add(javax.swing.Box.createHorizontalStrut(Look.px(12)));
        for (CommandId id : List.of(
                CommandId.NEW_CONDITION,
                CommandId.COPY_CONDITION,
                CommandId.RENAME_CONDITION,
                CommandId.DELETE_CONDITION)) {
            row.add(Grid.button(commands, id));
        }
        row.add(Flat.quiet(Texts.of("editor.conditions.how")));
        return row;
    }

    JPanel panel() {
        return panel;
    }

    private void widths() {
        for (int i = 0; i < table.getColumnCount(); i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(Look.px(i == 0 ? FIRST : OTHERS));
        }
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        following = true;
        if (!Same.object(before.drawing(), after.drawing())) {
            int row = table.getSelectedRow();
            int column = table.getSelectedColumn();
            if (model.read(after.drawing())) {
                widths();
                restore(row, column);
            }
        }
        if (!before.condition().equals(after.condition())) {
            int column = model.column(after.condition());
            if (column > 0 && table.getSelectedRow() >= 0 && table.getSelectedColumn() != column) {
                table.changeSelection(table.getSelectedRow(), column, false, false);
            }
            table.repaint();
        }
        following = false;
    }

    private void restore(int row, int column) {
        int r = Math.min(row, table.getRowCount() - 1);
        int c = Math.min(column, table.getColumnCount() - 1);
        if (r >= 0 && c > 0) {
            table.changeSelection(r, c, false, false);
        }
    }

    private void chosen() {
        int column = table.getSelectedColumn();
        if (!following && !arriving && column > 0 && column < model.getColumnCount()) {
            session.showCondition(model.condition(column).id());
        }
    }

    private void turn() {
        int row = table.getSelectedRow();
        int column = table.getSelectedColumn();
        if (model.isCellEditable(row, column)) {
            chosen(); // the keys may have come here without showing it
            if (table.isEditing()) {
                table.getCellEditor().cancelCellEditing();
            }
            session.apply(ConditionEdits.turn(
                    model.row(row).orElseThrow(), model.condition(column).id()));
        }
    }

    /** Heads of groups are bold; what is off is quiet; the column that is shown has a ground of its own. */
    private final class Cell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(of, value, selected, focus, row, column);
            boolean head = model.row(row).isEmpty();
            setFont(head ? Look.bold() : Look.font());
            if (!selected) {
                String shown = session.state().condition();
                boolean here = column > 0
                        && !shown.equals(Results.GOVERNING)
                        && model.condition(column).id().equals(shown);
                setBackground(here ? Look.chosen() : Look.card());
                setForeground(model.off(row, column) ? Look.quiet() : Look.text());
            }
            int left = head || column > 0 ? 8 : 20;
            setBorder(focus ? Ring.cell(left) : Flat.rim(0, left, 0, 6));
            return this;
        }
    }
}
