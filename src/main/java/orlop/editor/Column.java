package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import javax.swing.JComponent;

/**
 * Lays components out one below the other, all as wide as the column, each as high as it needs to be at that width: text
 * that wraps is asked at the width that it will have. A component that is marked {@link #OWN_WIDTH} keeps its own.
 */
final class Column implements LayoutManager {
    private static final String OWN_WIDTH = "orlop.own-width";

    private static final String LEAST = "orlop.least-height";

    private final int width;
    private final int gap;

    /**
     * @param width of the column with its insets, in pixels
     * @param gap between two components, in pixels
     */
    Column(int width, int gap) {
        this.width = width;
        this.gap = gap;
    }

    /** Marks a component as one that isn't stretched. */
    static <C extends JComponent> C own(C c) {
        c.putClientProperty(OWN_WIDTH, OWN_WIDTH);
        return c;
    }

    /** Makes a component at least so high, in pixels. */
    static void atLeast(JComponent c, int height) {
        c.putClientProperty(LEAST, height);
    }

    @Override
    public void addLayoutComponent(String name, Component c) {}

    @Override
    public void removeLayoutComponent(Component c) {}

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        Insets in = parent.getInsets();
        int inner = width - in.left - in.right;
        int y = in.top;
        for (Component c : parent.getComponents()) {
            if (c.isVisible()) {
                y += height(c, inner) + gap;
            }
        }
        return new Dimension(width, y - (parent.getComponentCount() > 0 ? gap : 0) + in.bottom);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    @Override
    public void layoutContainer(Container parent) {
        Insets in = parent.getInsets();
        int inner = width - in.left - in.right;
        int y = in.top;
        for (Component c : parent.getComponents()) {
            if (c.isVisible()) {
                int h = height(c, inner);
                int w = c instanceof JComponent j && j.getClientProperty(OWN_WIDTH) != null
                        ? Math.min(inner, c.getPreferredSize().width)
                        : inner;
                c.setBounds(in.left, y, w, h);
                y += h + gap;
            }
        }
    }

    private static int height(Component c, int width) {
        if (c instanceof WrapText) {
            c.setSize(width, Short.MAX_VALUE);
        }
        int least = c instanceof JComponent j && j.getClientProperty(LEAST) instanceof Integer i ? i : 0;
        return Math.max(least, c.getPreferredSize().height);
    }
}
