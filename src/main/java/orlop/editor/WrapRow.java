package orlop.editor;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;

/** A row from the left that goes on in a further line where it has no room: nothing in it is out of reach. */
final class WrapRow extends FlowLayout {
    private static final long serialVersionUID = 1L;

    WrapRow(int gapX, int gapY) {
        super(LEFT, gapX, gapY);
    }

    /** As high as it must be at the width that it has, or that what it lies in has. */
    @Override
    public Dimension preferredLayoutSize(Container row) {
        Dimension line = super.preferredLayoutSize(row);
        int width = row.getParent() == null ? row.getWidth() : row.getParent().getWidth();
        if (width == 0 || line.width <= width) {
            return line;
        }
        Insets in = row.getInsets();
        int most = width - in.left - in.right - 2 * getHgap();
        int x = 0;
        int high = 0;
        int y = in.top + getVgap();
        for (java.awt.Component c : row.getComponents()) {
            Dimension d = c.getPreferredSize();
            if (!c.isVisible()) {
                continue;
            }
            if (x > 0 && x + d.width > most) {
                y += high + getVgap();
                x = 0;
                high = 0;
            }
            x += d.width + getHgap();
            high = Math.max(high, d.height);
        }
        return new Dimension(width, y + high + getVgap() + in.bottom);
    }
}
