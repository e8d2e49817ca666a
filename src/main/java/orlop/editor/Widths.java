package orlop.editor;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;

/** How wide the columns of a table are: no heading is cut, and short things in the cells aren't either. */
final class Widths {
    /** What is no wider than a date is never cut. */
    private static final int SHORT = 90;

    /** Wider than that no column is made for its cells. */
    private static final int MOST = 150;

    private static final int RIM = 4;
    private static final int ARROW = 14;

    private Widths() {}

    /** No column becomes narrower than its heading. */
    static void headings(JTable table) {
        for (int i = 0; i < table.getColumnCount(); i++) {
            table.getColumnModel().getColumn(i).setMinWidth(heading(table, i));
        }
    }

    /**
     * Each column gets what its heading and its cells need.
     *
     * @param giving the column that takes what is left, and gives way to the others
     */
    static void fit(JTable table, int giving) {
        for (int i = 0; i < table.getColumnCount(); i++) {
            int heading = heading(table, i);
            int cells = i == giving ? Look.px(MOST) : cells(table, i);
            TableColumn column = table.getColumnModel().getColumn(i);
            column.setMinWidth(Math.max(heading, Math.min(cells, Look.px(SHORT))));
            column.setPreferredWidth(Math.max(heading, Math.min(cells, Look.px(MOST))));
        }
        TableColumn rest = table.getColumnModel().getColumn(giving);
        rest.setPreferredWidth(2 * rest.getPreferredWidth());
    }

    private static int heading(JTable table, int column) {
        TableColumn c = table.getColumnModel().getColumn(column);
        TableCellRenderer own = c.getHeaderRenderer();
        TableCellRenderer drawn = own != null ? own : table.getTableHeader().getDefaultRenderer();
        Component heading = drawn.getTableCellRendererComponent(table, c.getHeaderValue(), false, false, -1, column);
        int arrow = table.getRowSorter() == null ? 0 : Look.px(ARROW); // of the column by which it is sorted
        return heading.getPreferredSize().width + Look.px(RIM) + arrow;
    }

    private static int cells(JTable table, int column) {
        int most = 0;
        for (int row = 0; row < table.getRowCount(); row++) {
            Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
            most = Math.max(most, cell.getPreferredSize().width + Look.px(RIM));
        }
        return most;
    }
}
