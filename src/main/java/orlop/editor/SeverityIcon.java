package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import javax.swing.Icon;
import orlop.findings.Severity;
import orlop.scene.Ink;

/**
 * The mark of a finding, told apart by shape as well as by colour: triangle, diamond, disc; with its number in it.
 * Hollow while somebody lives with it.
 */
record SeverityIcon(Severity severity, String number, int size, boolean hollow) implements Icon {
    /** Height of a figure in parts of the size of its font. */
    private static final double CAP = 0.73;

    SeverityIcon(Severity severity, String number, int size) {
        this(severity, number, size, false);
    }

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        StaticLayer.hints(g);
        g.translate(x, y);
        g.setColor(Look.severity(severity));
        if (hollow) {
            g.setStroke(new BasicStroke(Math.max(1f, size / 12f)));
            g.draw(shape());
        } else {
            g.fill(shape());
        }
        g.setFont(font(g));
        FontMetrics m = g.getFontMetrics();
        Color onIt = Look.dark() ? new Color(0x15171A) : Look.ink(Ink.PAPER);
        g.setColor(hollow ? Look.severity(severity) : onIt);
        float low = severity == Severity.DANGER ? 0.90f : 0.5f;
        float base = severity == Severity.DANGER ? size * low : size * low + (m.getAscent() - m.getDescent()) / 2f;
        g.drawString(number, (size - m.stringWidth(number)) / 2f, base);
        g.dispose();
    }

    /** As big as can be read, and no bigger than there is room for the number. */
    private Font font(Graphics2D g) {
        Font font = Look.font().deriveFont(Font.BOLD, size * (number.length() > 1 ? 0.42f : 0.52f));
        double wide = g.getFontMetrics(font).stringWidth(number) / font.getSize2D();
        double most = 0.94 * size / (wide + CAP); // a diamond and a triangle have the less room the higher the figures
        return number.length() > 2 && font.getSize2D() > most ? font.deriveFont((float) most) : font;
    }

    private Shape shape() {
        double s = size;
        if (severity == Severity.ADVICE) {
            return new Ellipse2D.Double(0.5, 0.5, s - 1, s - 1);
        }
        Path2D p = new Path2D.Double();
        if (severity == Severity.DANGER) {
            p.moveTo(s / 2, 0);
            p.lineTo(s, s);
            p.lineTo(0, s);
        } else {
            p.moveTo(s / 2, 0);
            p.lineTo(s, s / 2);
            p.lineTo(s / 2, s);
            p.lineTo(0, s / 2);
        }
        p.closePath();
        return p;
    }

    @Override
    public int getIconWidth() {
        return size;
    }

    @Override
    public int getIconHeight() {
        return size;
    }
}
