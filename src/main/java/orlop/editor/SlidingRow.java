package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.ContainerAdapter;
import java.awt.event.ContainerEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/** A row that slides sideways where there isn't room for all of it: by a button at each end, the wheel, or the focus. */
final class SlidingRow {
    private final JPanel row;
    private final JViewport view = new JViewport();
    private final JPanel panel = Flat.clear(new BorderLayout(Look.px(4), 0));
    private final JButton back = end("‹", "back", -1);
    private final JButton on = end("›", "on", 1);
    private final FocusListener follow = new FocusAdapter() {
        @Override
        public void focusGained(FocusEvent e) {
            show(e.getComponent());
        }
    };

    SlidingRow(JPanel row) {
        this.row = row;
        view.setOpaque(false);
        view.setView(row);
        panel.add(back, BorderLayout.WEST);
        panel.add(view, BorderLayout.CENTER);
        panel.add(on, BorderLayout.EAST);
        ComponentAdapter resized = new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                ends();
                SwingUtilities.invokeLater(SlidingRow.this::showChosen);
            }
        };
        panel.addComponentListener(resized);
        row.addComponentListener(resized);
        view.addChangeListener(e -> ends());
        panel.addMouseWheelListener(e -> slide(e.getWheelRotation() * Look.px(60)));
        row.addContainerListener(new ContainerAdapter() {
            @Override
            public void componentAdded(ContainerEvent e) {
                watch(e.getChild());
            }
        });
        for (Component c : row.getComponents()) {
            watch(c);
        }
        ends();
    }

    JPanel panel() {
        return panel;
    }

    private void watch(Component c) {
        c.addFocusListener(follow);
        if (c instanceof AbstractButton b) {
            b.addItemListener(e -> {
                if (b.isSelected()) {
                    SwingUtilities.invokeLater(() -> show(b));
                }
            });
        }
    }

    private JButton end(String text, String word, int way) {
        JButton b = new JButton(text);
        b.setName("conditions." + word);
        b.putClientProperty("JButton.buttonType", "toolBarButton");
        b.setToolTipText(Texts.of("editor.slide." + word));
        b.getAccessibleContext().setAccessibleName(b.getToolTipText());
        b.setFocusable(false); // the focus moves from card to card, and the row follows it
        b.addActionListener(e -> slide(way * Math.max(Look.px(60), view.getWidth() * 3 / 4)));
        return b;
    }

    private void showChosen() {
        for (Component c : row.getComponents()) {
            if (c instanceof AbstractButton b && b.isSelected()) {
                show(b);
            }
        }
    }

    private void show(Component c) {
        if (c.getParent() == row) {
            Rectangle seen = view.getViewRect();
            int right = c.getX() + c.getWidth();
            if (c.getX() < seen.x) {
                slide(c.getX() - seen.x);
            } else if (right > seen.x + seen.width) {
                slide(right - seen.x - seen.width);
            }
        }
    }

    private void slide(int by) {
        int most = Math.max(0, row.getWidth() - view.getWidth());
        int x = Math.max(0, Math.min(view.getViewPosition().x + by, most));
        view.setViewPosition(new Point(x, 0));
    }

    /** Shows the buttons where there is something beyond them. */
    private void ends() {
        boolean tooWide = row.getPreferredSize().width > panel.getWidth() && panel.getWidth() > 0;
        back.setVisible(tooWide);
        on.setVisible(tooWide);
        back.setEnabled(view.getViewPosition().x > 0);
        on.setEnabled(view.getViewPosition().x + view.getWidth() < row.getWidth());
    }
}
