package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JToggleButton;
import javax.swing.border.Border;

/** The ring around what has the keys, for parts to which the look gives none. */
final class Ring {
    private Ring() {}

    /** Paints it just within the edges of a component, if that has the focus. */
    static void paint(JComponent c, Graphics graphics) {
        paint(c, graphics, 0);
    }

    /** @param in how far within the edges, in pixels, for what has an edge of its own */
    static void paint(JComponent c, Graphics graphics, int in) {
        if (!c.isFocusOwner()) {
            return;
        }
        int width = Look.px(2);
        int arc = Look.px(6);
        int corner = arc + width;
        int w = c.getWidth();
        int h = c.getHeight();
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Look.accent());
        // The straight sides by themselves: a whole outline takes time by the room in it, which may be all of a screen.
        int wide = Math.max(0, w - 2 * in - 2 * corner);
        int high = Math.max(0, h - 2 * in - 2 * corner);
        g.fillRect(in + corner, in, wide, width);
        g.fillRect(in + corner, h - in - width, wide, width);
        g.fillRect(in, in + corner, width, high);
        g.fillRect(w - in - width, in + corner, width, high);
        StaticLayer.hints(g);
        g.setStroke(new BasicStroke(width));
        double at = in + width / 2.0;
        RoundRectangle2D outline = new RoundRectangle2D.Double(at, at, w - 2 * at, h - 2 * at, arc, arc);
        for (int x : new int[] {in, in + corner + wide}) {
            for (int y : new int[] {in, in + corner + high}) {
                Graphics2D part = (Graphics2D) g.create();
                part.clipRect(x, y, corner, corner);
                part.draw(outline);
                part.dispose();
            }
        }
        g.dispose();
    }

    /**
     * The ring around the cell of a table.
     *
     * @param left how far the words stand from the left edge
     */
    static Border cell(int left) {
        int width = Look.px(2);
        return BorderFactory.createCompoundBorder(
                BorderFactory.createLineBorder(Look.accent(), width),
                BorderFactory.createEmptyBorder(0, Look.px(left) - width, 0, Look.px(4)));
    }

    /** Has a component painted anew when the keys come to it or leave it. */
    static void follow(JComponent c) {
        c.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                c.repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                c.repaint();
            }
        });
    }

    private static class Edgeless extends JButton {
        private static final long serialVersionUID = 1L;

        Edgeless(String text) {
            super(text);
            putClientProperty("JButton.buttonType", "toolBarButton");
        }

        @Override
        protected void paintComponent(Graphics g) {
            super.paintComponent(g);
            Ring.paint(this, g);
        }
    }

    /** A button without an edge; the ring shows where the keys are. */
    static JButton button(String text) {
        return new Edgeless(text);
    }

    /** The same in small quiet letters, light or dark. */
    static JButton quiet(String text) {
        return new Edgeless(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getForeground() {
                return Look.quiet();
            }

            @Override
            public Font getFont() {
                return Look.small();
            }
        };
    }

    /** The same for an action. */
    static JButton button(Action action) {
        JButton b = button("");
        b.setAction(action);
        return b;
    }

    /**
     * A button that is on or off.
     *
     * @param type how the look paints it: {@code toolBarButton} or {@code tab}
     */
    static JToggleButton toggle(String text, boolean on, String type) {
        JToggleButton b = new JToggleButton(text, on) {
            private static final long serialVersionUID = 1L;

            @Override
            protected void paintComponent(Graphics g) {
                super.paintComponent(g);
                Ring.paint(this, g);
            }
        };
        b.putClientProperty("JButton.buttonType", type);
        return b;
    }
}
