package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/** Two parts beside one another. What the second lacks, the first gives, down to its least width. */
final class GivingRow implements LayoutManager {
    private final int gap;

    /** @param gap between them, in pixels */
    GivingRow(int gap) {
        this.gap = gap;
    }

    @Override
    public void addLayoutComponent(String name, Component c) {}

    @Override
    public void removeLayoutComponent(Component c) {}

    @Override
    public Dimension preferredLayoutSize(Container row) {
        Dimension first = row.getComponent(0).getPreferredSize();
        Dimension second = row.getComponent(1).getPreferredSize();
        return new Dimension(first.width + gap + second.width, Math.max(first.height, second.height));
    }

    @Override
    public Dimension minimumLayoutSize(Container row) {
        return new Dimension(row.getComponent(0).getMinimumSize().width, preferredLayoutSize(row).height);
    }

    @Override
    public void layoutContainer(Container row) {
        Component first = row.getComponent(0);
        Component second = row.getComponent(1);
        int left = row.getWidth() - gap - second.getPreferredSize().width;
        int least = first.getMinimumSize().width;
        int width = Math.max(least, Math.min(first.getPreferredSize().width, left));
        first.setBounds(0, 0, width, row.getHeight());
        second.setBounds(width + gap, 0, Math.max(0, row.getWidth() - width - gap), row.getHeight());
    }
}
