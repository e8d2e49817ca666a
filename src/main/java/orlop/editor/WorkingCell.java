package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTree;
import javax.swing.tree.TreeCellRenderer;

/** A line of the workings: the sum, and beside it, quietly, what it is and where it is from. */
final class WorkingCell implements TreeCellRenderer {
    private static final String GAP = "   ";

    private final JPanel cell = Flat.clear(new BorderLayout(Look.px(8), 0));
    private final JLabel sum = new JLabel();
    private final JLabel says = new JLabel();

    WorkingCell() {
        cell.add(sum, BorderLayout.WEST);
        cell.add(says, BorderLayout.CENTER);
        cell.setBorder(Flat.rim(0, 4, 0, 8));
    }

    @Override
    public Component getTreeCellRendererComponent(
            JTree tree, Object node, boolean selected, boolean open, boolean leaf, int row, boolean focused) {
        String text = String.valueOf(node);
        int gap = text.indexOf(GAP);
        sum.setText(gap < 0 ? text : text.substring(0, gap));
        says.setText(gap < 0 ? "" : text.substring(gap + GAP.length()));
        sum.setFont(Look.font());
        says.setFont(Look.font());
        sum.setForeground(Look.text());
        says.setForeground(selected ? Look.text() : Look.quiet());
        cell.setToolTipText(text);
        cell.getAccessibleContext().setAccessibleName(text);
        return cell;
    }
}
