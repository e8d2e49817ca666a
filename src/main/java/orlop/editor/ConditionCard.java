package orlop.editor;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import javax.swing.JToggleButton;
import orlop.findings.Severity;

/** One operating condition in the strip: its name, its balance, how many findings hold in it. */
final class ConditionCard extends JToggleButton {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 190;
    private static final int SLIM = 96;
    private static final int MARK = 21;
    private static final String GAP = "   ";
    private static final int HEIGHT = 46;
    private static final int LOW_HEIGHT = 27;

    private transient List<String> figures = List.of();
    private int dangers;
    private int defects;
    private boolean stale;
    private boolean low;

    ConditionCard(String id, String title) {
        super(title);
        setName("condition." + id);
        setContentAreaFilled(false);
        setBorderPainted(false);
        setFocusPainted(false);
        setRolloverEnabled(true);
    }

    /** @param on whether it is one line high, without its figures */
    void low(boolean on) {
        low = on;
        revalidate();
    }

    void show(List<String> newFigures, int dangerCount, int defectCount, boolean old) {
        figures = List.copyOf(newFigures);
        dangers = dangerCount;
        defects = defectCount;
        stale = old;
        String counts = Texts.of("editor.access.findings", dangers, defects);
        getAccessibleContext().setAccessibleDescription(String.join(", ", figures) + ", " + counts);
        setToolTipText(getText() + ": " + String.join(GAP, figures) + GAP + counts);
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        boolean slim = low || (figures.isEmpty() && dangers + defects == 0);
        int marks = (dangers > 0 ? Look.px(MARK) : 0) + (defects > 0 ? Look.px(MARK) : 0);
        int text = getFontMetrics(Look.bold()).stringWidth(getText()) + Look.px(26) + marks;
        int first =
                low || figures.isEmpty() ? 0 : getFontMetrics(Look.small()).stringWidth(figures.get(0)) + Look.px(24);
        return new Dimension(
                Math.max(Math.max(Look.px(slim ? SLIM : WIDTH), text), first), Look.px(low ? LOW_HEIGHT : HEIGHT));
    }

    @Override
    public Dimension getMaximumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        boolean on = isSelected();
        Flat.box(
                this,
                graphics,
                on || getModel().isRollover() ? Look.chosen() : Look.strip(),
                on ? Look.accent() : Look.line(),
                on ? 1.4f : 1f);
        Graphics2D g = (Graphics2D) graphics.create();
        StaticLayer.hints(g);
        int x = Look.px(12);
        int right = counts(g);
        g.setFont(on ? Look.bold() : Look.font());
        g.setColor(Look.text());
        FontMetrics m = g.getFontMetrics();
        boolean two = !low && !figures.isEmpty();
        int y = two ? Look.px(19) : (getHeight() + m.getAscent() - m.getDescent()) / 2;
        g.drawString(cut(getText(), m, right - x), x, y);
        if (two) {
            g.setFont(Look.small());
            g.setColor(stale ? Look.ink(orlop.scene.Ink.DEAD) : Look.quiet());
            g.drawString(whole(figures, g.getFontMetrics(), getWidth() - x - Look.px(8)), x, Look.px(36));
        }
        g.dispose();
        Ring.paint(this, graphics, Look.px(3));
    }

    /** As many figures as there is room for, each of them whole: the others are told by the tooltip. */
    static String whole(List<String> figures, FontMetrics m, int width) {
        String shown = figures.isEmpty() ? "" : cut(figures.get(0), m, width);
        for (int i = 1; i < figures.size(); i++) {
            String more = shown + GAP + figures.get(i);
            if (m.stringWidth(more) > width) {
                break;
            }
            shown = more;
        }
        return shown;
    }

    /** Paints the counts of findings in the upper right corner. */
    private int counts(Graphics2D g) {
        int x = getWidth() - Look.px(8);
        x = count(g, defects, Severity.DEFECT, x);
        return count(g, dangers, Severity.DANGER, x);
    }

    private int count(Graphics2D g, int n, Severity s, int right) {
        if (n == 0) {
            return right;
        }
        int size = Look.px(17);
        SeverityIcon icon = new SeverityIcon(s, Integer.toString(n), size);
        icon.paintIcon(this, g, right - size, low ? (getHeight() - size) / 2 : Look.px(6));
        return right - size - Look.px(4);
    }

    private static String cut(String text, FontMetrics m, int width) {
        if (m.stringWidth(text) <= width) {
            return text;
        }
        String s = text;
        while (!s.isEmpty() && m.stringWidth(s + "…") > width) {
            s = s.substring(0, s.length() - 1);
        }
        return s + "…";
    }
}
