package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * How wide locker and margin are: as wide as they like in a roomy window, narrower in a narrow one, so that the sheet
 * keeps the most of it. The edge of the margin can be dragged, which is remembered; a double click on it forgets that.
 */
final class Sides {
    private static final String KEY = "margin.width";
    /** A window narrower than this has a locker of letters alone. */
    private static final int NARROW = 900;

    private static final int WIDEST = 640;

    private final JPanel around;
    private final Locker locker;
    private final Margin margin;
    private final Settings settings;
    private int dragged;

    /** @param around what both lie in */
    Sides(JPanel around, Locker locker, Margin margin, Settings settings) {
        this.around = around;
        this.locker = locker;
        this.margin = margin;
        this.settings = settings;
        margin.panel().add(handle(), BorderLayout.WEST);
        around.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                fit();
            }
        });
    }

    /** Gives both the width that this window has for them. */
    void fit() {
        int window = around.getWidth();
        locker.narrow(window < Look.px(NARROW));
        int set = dragged > 0 ? dragged : settings.number(KEY, 0);
        int wished = Look.px(set > 0 ? set : Margin.WIDTH);
        int share = set > 0 ? window / 2 : window * 3 / 8;
        margin.width(Math.max(Look.px(Margin.LEAST), Math.min(wished, share)));
    }

    private JComponent handle() {
        JPanel handle = Flat.clear(new BorderLayout());
        handle.setName("margin.edge");
        handle.setPreferredSize(new Dimension(Look.px(4), 10));
        handle.setCursor(Cursor.getPredefinedCursor(Cursor.E_RESIZE_CURSOR));
        handle.setToolTipText(Texts.of("editor.margin.edge"));
        MouseAdapter drag = new MouseAdapter() {
            private int grip;

            @Override
            public void mousePressed(MouseEvent e) {
                grip = e.getXOnScreen() + margin.panel().getWidth();
            }

            @Override
            public void mouseDragged(MouseEvent e) {
                int width = (int) ((grip - e.getXOnScreen()) / Look.scale());
                dragged = Math.max(Margin.LEAST, Math.min(width, WIDEST));
                fit();
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                if (dragged > 0) {
                    settings.rememberNumber(KEY, dragged);
                    dragged = 0;
                }
            }

            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    settings.forget(KEY);
                    fit();
                }
            }
        };
        handle.addMouseListener(drag);
        handle.addMouseMotionListener(drag);
        return handle;
    }
}
