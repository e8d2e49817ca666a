package orlop.editor;

import java.awt.Component;
import java.util.Optional;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import orlop.drawing.Message;

/**
 * A cell of a table that is typed in. What can't be taken stays in it as it was typed, with an outline; the reason stands
 * in the status line and at the pointer. Escape puts back what was there.
 */
final class TypedCell extends DefaultCellEditor {
    private static final long serialVersionUID = 1L;
    private static final String OUTLINE = "JComponent.outline";

    /** Gives the drawing what was typed, and says why that was refused. */
    @FunctionalInterface
    interface Taker {
        Optional<Message> take(Object typed, int row, int column);
    }

    private final transient Taker taker;
    private int row;
    private int column;

    TypedCell(Taker taker) {
        super(new JTextField());
        this.taker = taker;
        getComponent().setName("cell");
    }

    @Override
    public Component getTableCellEditorComponent(JTable table, Object value, boolean selected, int r, int c) {
        row = r;
        column = c;
        JTextField field = (JTextField) super.getTableCellEditorComponent(table, value, selected, r, c);
        field.putClientProperty(OUTLINE, null);
        field.setToolTipText(null);
        return field;
    }

    @Override
    public boolean stopCellEditing() {
        Optional<Message> refusal = taker.take(getCellEditorValue(), row, column);
        if (refusal.isPresent()) {
            JTextField field = (JTextField) getComponent();
            field.putClientProperty(OUTLINE, "error");
            field.setToolTipText(Texts.title(refusal.get()));
            return false;
        }
        cancelCellEditing(); // it has been taken
        return true;
    }
}
