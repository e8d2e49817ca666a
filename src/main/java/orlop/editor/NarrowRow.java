package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.function.Function;

/** A row from the left, each part as wide as it wants to be; where there is less room, each gets its share of it. */
final class NarrowRow implements LayoutManager {
    /** Between two parts where there is room for it. */
    private static final int GAP = 6;

    @Override
    public void addLayoutComponent(String name, Component c) {}

    @Override
    public void removeLayoutComponent(Component c) {}

    @Override
    public Dimension preferredLayoutSize(Container row) {
        return size(row, Component::getPreferredSize);
    }

    @Override
    public Dimension minimumLayoutSize(Container row) {
        return new Dimension(0, size(row, Component::getMinimumSize).height);
    }

    private static Dimension size(Container row, Function<Component, Dimension> of) {
        Dimension sum = new Dimension();
        for (Component c : row.getComponents()) {
            Dimension d = of.apply(c);
            sum.width += d.width;
            sum.height = Math.max(sum.height, d.height);
        }
        return sum;
    }

    @Override
    public void layoutContainer(Container row) {
        int wanted = preferredLayoutSize(row).width;
        double share = wanted == 0 ? 1 : Math.min(1, row.getWidth() / (double) wanted);
        double spare = (row.getWidth() - wanted) / (double) Math.max(1, row.getComponentCount());
        double gap = Math.max(0, Math.min(Look.px(GAP), spare));
        double x = 0;
        for (Component c : row.getComponents()) {
            double width = c.getPreferredSize().width * share;
            c.setBounds((int) x, 0, (int) (x + width) - (int) x, row.getHeight());
            x += width + gap;
        }
    }
}
