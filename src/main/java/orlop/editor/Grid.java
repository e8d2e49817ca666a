package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.EventObject;
import javax.accessibility.Accessible;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.KeyStroke;
import javax.swing.table.TableModel;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;

/** What the tables of the fold-out have in common. */
final class Grid {
    private Grid() {}

    /** A page with a row of buttons above a table. */
    static JPanel page(JComponent buttons, JTable table) {
        JPanel page = Flat.panel(new BorderLayout(), Look::card);
        page.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                buttons.revalidate(); // they take more lines, or fewer
            }
        });
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        page.add(buttons, BorderLayout.NORTH);
        page.add(scroll, BorderLayout.CENTER);
        return page;
    }

    static JPanel row() {
        return Flat.clear(new WrapRow(Look.px(6), Look.px(3)));
    }

    /** A button for a command, with a short text of its own. */
    static JButton button(Commands commands, CommandId id) {
        Command c = commands.get(id);
        JButton b = Ring.button(c);
        b.setText(Texts.of("editor.short." + id.word()));
        b.setName("button." + id.word());
        b.setToolTipText(id.text());
        b.setFocusable(true);
        b.getAccessibleContext().setAccessibleName(id.text());
        return b;
    }

    /** A table in which typing replaces what stands in a cell, and doesn't go on behind it. */
    static JTable table(TableModel model) {
        return new Typed(model);
    }

    /** See {@link #table}. */
    static class Typed extends JTable {
        private static final long serialVersionUID = 1L;

        Typed(TableModel model) {
            super(model);
        }

        @Override
        public boolean editCellAt(int row, int column, @Nullable EventObject event) {
            boolean editing = super.editCellAt(row, column, event);
            if (editing && getEditorComponent() instanceof JTextComponent text) {
                text.selectAll();
            }
            if (editing && getEditorComponent() instanceof Accessible a) {
                a.getAccessibleContext().setAccessibleName(getColumnName(column));
            }
            return editing;
        }

        /** Where whole rows are chosen, the one cell that typing would change stands out from them. */
        @Override
        protected void paintComponent(Graphics g) {
            super.paintComponent(g);
            int row = getSelectionModel().getLeadSelectionIndex();
            int column = getColumnModel().getSelectionModel().getLeadSelectionIndex();
            if (!getCellSelectionEnabled() && isFocusOwner() && types(row, column)) {
                Rectangle cell = getCellRect(row, column, false);
                int width = Look.px(2);
                g.setColor(Look.card());
                for (int i = width; i < 2 * width; i++) {
                    g.drawRect(cell.x + i, cell.y + i, cell.width - 2 * i - 1, cell.height - 2 * i - 1);
                }
            }
        }

        private boolean types(int row, int column) {
            boolean there = row >= 0 && row < getRowCount() && column >= 0 && column < getColumnCount();
            return there && isRowSelected(row) && isCellEditable(row, column);
        }

        /** Where not even the headings have room side by side the table is slid sideways. */
        @Override
        public boolean getScrollableTracksViewportWidth() {
            int least = 0;
            for (int i = 0; i < getColumnCount(); i++) {
                least += getColumnModel().getColumn(i).getMinWidth();
            }
            return super.getScrollableTracksViewportWidth()
                    && (!(getParent() instanceof JViewport) || getParent().getWidth() >= least);
        }

        /** Only what puts a letter in begins to change a cell: a command's key that is held for something else doesn't. */
        @Override
        protected boolean processKeyBinding(KeyStroke stroke, KeyEvent e, int condition, boolean pressed) {
            putClientProperty("JTable.autoStartsEdit", types(e));
            return super.processKeyBinding(stroke, e, condition, pressed);
        }

        static boolean types(KeyEvent e) {
            int held = InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK | InputEvent.ALT_DOWN_MASK;
            char c = e.getKeyChar();
            return (e.getModifiersEx() & held) == 0 && c != KeyEvent.CHAR_UNDEFINED && !Character.isISOControl(c);
        }
    }

    static void look(JTable table, String name) {
        table.setName(name);
        table.setFillsViewportHeight(true);
        table.setRowHeight(Look.px(24));
        table.setShowVerticalLines(false);
        table.putClientProperty("terminateEditOnFocusLost", true);
        table.getTableHeader().setReorderingAllowed(false);
        // F8 goes to the next finding from everywhere; a table would take it for its own heads.
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("F8"), "none");
        table.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                table.repaint();
            }

            @Override
            public void focusGained(FocusEvent e) {
                if (table.getSelectedRow() < 0 && table.getRowCount() > 0) {
                    table.changeSelection(0, 0, false, false); // so that it shows where the keys are
                }
                table.repaint();
            }
        });
    }

    /** A key of the table. While a cell is typed in, it is a key of what is typed. */
    static void key(JTable table, String key, Runnable body) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key);
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(stroke, "orlop." + key);
        Action action = new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isEnabled() {
                return !table.isEditing();
            }

            @Override
            public void actionPerformed(ActionEvent e) {
                body.run();
            }
        };
        table.getActionMap().put("orlop." + key, action);
    }
}
