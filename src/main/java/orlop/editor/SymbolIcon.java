package orlop.editor;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import javax.swing.Icon;
import orlop.desk.OwnSymbols;
import orlop.drawing.Kind;
import orlop.symbols.Bounds;
import orlop.symbols.Symbol;

/** The symbol of a kind, as small as a row of the locker. */
final class SymbolIcon implements Icon {
    private static final int SIZE = 34;

    private final Kind kind;

    SymbolIcon(Kind kind) {
        this.kind = kind;
    }

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            StaticLayer.hints(g);
            Optional<Symbol> symbol = OwnSymbols.library().find(kind.word());
            if (symbol.isEmpty()) {
                bar(g, c, x, y);
            }
            symbol.ifPresent(s -> {
                Bounds b = s.bounds();
                double k = Math.min(
                        2.4 * getIconWidth() / SIZE, (getIconWidth() - 2) / Math.max(b.widthMm(), b.heightMm()));
                g.translate(x + getIconWidth() / 2.0, y + getIconHeight() / 2.0);
                g.scale(k, k);
                Color ink = c.isEnabled() ? Look.text() : Look.quiet();
                Overlay.ghost(g, s, -(b.minXMm() + b.maxXMm()) / 2, -(b.minYMm() + b.maxYMm()) / 2, 0, ink);
            });
        } finally {
            g.dispose();
        }
    }

    /** A bar is drawn as long as it is needed and so has no symbol of its own. */
    private void bar(Graphics2D g, Component c, int x, int y) {
        int high = Look.px(4);
        g.setColor(c.isEnabled() ? Look.text() : Look.quiet());
        g.fillRect(x + Look.px(2), y + (getIconHeight() - high) / 2, getIconWidth() - Look.px(4), high);
    }

    @Override
    public int getIconWidth() {
        return Look.px(SIZE);
    }

    @Override
    public int getIconHeight() {
        return Look.px(SIZE);
    }
}
