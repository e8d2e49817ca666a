package orlop.editor;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.plaf.basic.BasicGraphicsUtils;

/**
 * A line of text that goes on in further lines where it has no room in one. The room of the further lines is kept until it
 * is given another width: what lies above it doesn't move with each text.
 */
final class WrapLine extends JLabel {
    private static final long serialVersionUID = 1L;

    /** Lines at most while it stands in small letters, else one; what has no room in these is cut. */
    private static final int MOST = 2;

    private final transient Supplier<Color> color;
    private boolean small;
    private int kept = 1;
    private int keptWidth;

    WrapLine(Supplier<Color> color) {
        super(" ");
        this.color = color;
    }

    @Override
    public Color getForeground() {
        return color == null ? Look.quiet() : color.get();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(small ? Look.small() : Look.font());
        kept = 1;
        keptWidth = 0;
    }

    /** Whether it stands in small letters. */
    boolean small() {
        return small;
    }

    void small(boolean letters) {
        small = letters;
        updateUI();
    }

    @Override
    public void setText(String text) {
        super.setText(text);
        room();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        room();
    }

    private int most() {
        return small ? MOST : 1;
    }

    private void room() {
        if (color == null) {
            return; // the first call comes from the constructor above ours, before there is a font
        }
        int needed = Math.min(most(), lines().size());
        boolean anew = getWidth() != keptWidth;
        int now = anew ? needed : Math.max(kept, needed);
        keptWidth = getWidth();
        if (now != kept) {
            kept = now;
            revalidate();
        }
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, super.getMinimumSize().height);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension one = super.getPreferredSize();
        return new Dimension(
                one.width,
                one.height + (Math.max(1, kept) - 1) * getFontMetrics(getFont()).getHeight());
    }

    /** The text as it is broken at spaces into the width there is; in one line while there is no width yet. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        Insets in = getInsets();
        int width = getWidth() - in.left - in.right;
        FontMetrics m = getFontMetrics(getFont());
        String text = getText();
        if (width <= 0 || m.stringWidth(text) <= width) {
            return List.of(text);
        }
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || m.stringWidth(longer) <= width) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        return lines;
    }

    @Override
    protected void paintComponent(Graphics g) {
        List<String> lines = lines();
        if (lines.size() == 1 || most() == 1) {
            super.paintComponent(g);
            return;
        }
        FontMetrics m = getFontMetrics(getFont());
        int shown = Math.min(lines.size(), MOST);
        float y = (getHeight() - shown * m.getHeight()) / 2f + m.getAscent();
        g.setColor(getForeground());
        g.setFont(getFont());
        for (int i = 0; i < shown; i++) {
            String line = i == MOST - 1 && lines.size() > MOST ? lines.get(i) + "…" : lines.get(i);
            BasicGraphicsUtils.drawString(this, (Graphics2D) g, line, getInsets().left, y);
            y += m.getHeight();
        }
    }
}
