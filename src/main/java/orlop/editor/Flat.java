package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.awt.geom.RoundRectangle2D;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.border.Border;

/** The few plain parts from which the window is built. Their colours follow the look by themselves. */
final class Flat {
    private Flat() {}

    /** A panel whose ground is asked for at every painting. */
    static JPanel panel(LayoutManager layout, Supplier<Color> ground) {
        JPanel p = new JPanel(layout) {
            private static final long serialVersionUID = 1L;

            @Override
            protected void paintComponent(Graphics g) {
                g.setColor(ground.get());
                g.fillRect(0, 0, getWidth(), getHeight());
            }
        };
        p.setOpaque(true);
        return p;
    }

    static JPanel clear(LayoutManager layout) {
        JPanel p = new JPanel(layout);
        p.setOpaque(false);
        return p;
    }

    /** A label in the quiet colour and the small size. */
    static JLabel quiet(String text) {
        return label(text, Look::quiet, true);
    }

    static JLabel label(String text, Supplier<Color> color, boolean small) {
        return new JLabel(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getForeground() {
                return color.get();
            }

            @Override
            public void updateUI() {
                super.updateUI();
                setFont(small ? Look.small() : Look.font());
            }
        };
    }

    static JLabel bold(String text, Supplier<Color> color) {
        return new JLabel(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getForeground() {
                return color.get();
            }

            @Override
            public void updateUI() {
                super.updateUI();
                setFont(Look.bold());
            }
        };
    }

    /** A thin line on some sides, in the colour of the look, around an empty rim. */
    static Border lines(int top, int left, int bottom, int right, Insets rim) {
        return BorderFactory.createCompoundBorder(
                new Lines(top, left, bottom, right),
                BorderFactory.createEmptyBorder(rim.top, rim.left, rim.bottom, rim.right));
    }

    static Border rim(int top, int left, int bottom, int right) {
        return BorderFactory.createEmptyBorder(Look.px(top), Look.px(left), Look.px(bottom), Look.px(right));
    }

    private record Lines(int top, int left, int bottom, int right) implements Border {
        @Override
        public void paintBorder(Component c, Graphics g, int x, int y, int w, int h) {
            g.setColor(Look.line());
            g.fillRect(x, y, w, top);
            g.fillRect(x, y, left, h);
            g.fillRect(x, y + h - bottom, w, bottom);
            g.fillRect(x + w - right, y, right, h);
        }

        @Override
        public Insets getBorderInsets(Component c) {
            return new Insets(top, left, bottom, right);
        }

        @Override
        public boolean isBorderOpaque() {
            return true;
        }
    }

    /** Paints a rounded box over the whole component. */
    static void box(JComponent c, Graphics graphics, Color ground, Color edge, float width) {
        Graphics2D g = (Graphics2D) graphics.create();
        StaticLayer.hints(g);
        double arc = Look.px(12);
        double in = width / 2;
        RoundRectangle2D r = new RoundRectangle2D.Double(in, in, c.getWidth() - width, c.getHeight() - width, arc, arc);
        g.setColor(ground);
        g.fill(r);
        g.setColor(edge);
        g.setStroke(new BasicStroke(width));
        g.draw(r);
        g.dispose();
    }

    /** A button that is no more than its text, in the given colour, within a thin edge of that colour. */
    static JButton outlined(String text, Supplier<Color> color) {
        JButton b = new JButton(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getForeground() {
                return isEnabled() ? color.get() : Look.quiet();
            }

            @Override
            public void updateUI() {
                super.updateUI();
                setFont(Look.bold());
            }

            @Override
            protected void paintComponent(Graphics g) {
                boolean down = getModel().isArmed() || getModel().isRollover();
                Color ground = down ? Look.chosen() : Look.card();
                box(this, g, ground, getForeground(), 1.2f);
                super.paintComponent(g);
                Ring.paint(this, g);
            }
        };
        b.setContentAreaFilled(false);
        b.setBorderPainted(false);
        b.setFocusPainted(false);
        b.setRolloverEnabled(true);
        b.setMargin(new Insets(3, 10, 3, 10)); // the look scales it
        return b;
    }

    /** Makes a button keep to its own width in a column. */
    static void fix(AbstractButton b) {
        b.setMaximumSize(b.getPreferredSize());
    }

    static Component gap(int height) {
        return javax.swing.Box.createRigidArea(new Dimension(0, Look.px(height)));
    }
}
