package orlop.editor;

import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JMenu;
import javax.swing.JScrollBar;
import javax.swing.JTable;
import javax.swing.JTree;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;

/** Finds what a screen reader would meet without knowing what it is. */
final class Unnamed {
    private final List<String> found = new ArrayList<>();
    private int met;

    private Unnamed() {}

    /**
     * The parts that lack a role, and those that a person works with (buttons, fields, choices, tables, the sheet and what
     * is drawn on it) that lack a name.
     */
    static Unnamed in(Container root) {
        Unnamed u = new Unnamed();
        u.walk(root, false);
        return u;
    }

    List<String> found() {
        return List.copyOf(found);
    }

    /** How many parts were looked at. */
    int met() {
        return met;
    }

    private void walk(java.awt.Component c, boolean partOfAnother) {
        if (c instanceof Accessible a && c.isVisible()) {
            check(c, a.getAccessibleContext(), partOfAnother);
        }
        if (c instanceof JMenu m) {
            for (java.awt.Component item : m.getMenuComponents()) {
                walk(item, false);
            }
        }
        if (c instanceof Container k) {
            boolean whole = c instanceof JComboBox || c instanceof JScrollBar;
            for (java.awt.Component child : k.getComponents()) {
                walk(child, whole);
            }
        }
    }

    private void check(java.awt.Component c, @Nullable AccessibleContext context, boolean partOfAnother) {
        met++;
        if (context == null || role(context) == null) {
            found.add("no role: " + c.getClass().getName());
            return;
        }
        boolean worked = c instanceof AbstractButton
                || (c instanceof JTextComponent t && t.isEditable())
                || c instanceof JComboBox
                || c instanceof JTable
                || c instanceof JTree
                || c instanceof NoteView
                || c instanceof PathView
                || c instanceof SheetCanvas;
        if (worked && !partOfAnother && blank(context)) {
            found.add("no name: " + c.getClass().getName() + " " + c.getName());
        }
        if (c instanceof JTable table) {
            cells(table, context);
        }
        if (c instanceof JTree) {
            children(context, "in the tree " + c.getName());
        }
        if (c instanceof SheetCanvas) {
            for (int i = 0; i < context.getAccessibleChildrenCount(); i++) {
                Accessible child = context.getAccessibleChild(i);
                met++;
                if (child == null
                        || blank(child.getAccessibleContext())
                        || role(child.getAccessibleContext()) == null) {
                    found.add("no name or role on the sheet: " + i);
                }
            }
        }
    }

    /** Each column has a head, and each cell is spoken as what stands in it. */
    private void cells(JTable table, AccessibleContext context) {
        for (int column = 0; column < table.getColumnCount(); column++) {
            met++;
            if (table.getColumnName(column).isBlank()) {
                found.add("no head: column " + column + " of " + table.getName());
            }
        }
        for (int i = 0; i < context.getAccessibleChildrenCount(); i++) {
            met++;
            Accessible cell = context.getAccessibleChild(i);
            Object value = table.getValueAt(i / table.getColumnCount(), i % table.getColumnCount());
            boolean empty = value == null || value.toString().isBlank();
            AccessibleContext c = cell == null ? null : cell.getAccessibleContext();
            if (c == null || role(c) == null || (!empty && blank(c))) {
                found.add("no name or role: cell " + i + " of " + table.getName());
            }
        }
    }

    private void children(AccessibleContext context, String where) {
        for (int i = 0; i < context.getAccessibleChildrenCount(); i++) {
            met++;
            Accessible child = context.getAccessibleChild(i);
            if (child == null || blank(child.getAccessibleContext()) || role(child.getAccessibleContext()) == null) {
                found.add("no name or role " + where + ": " + i);
            }
        }
    }

    private static @Nullable AccessibleRole role(AccessibleContext c) {
        return c.getAccessibleRole();
    }

    private static boolean blank(AccessibleContext c) {
        return c.getAccessibleName() == null || c.getAccessibleName().isBlank();
    }
}
