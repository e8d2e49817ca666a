package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * Which parts stand aside in a small window, so that the sheet stays in sight: in a narrow one the fold-out and the margin
 * take turns, the one that was asked for last is there; in a very narrow one the margin comes only when it is asked for,
 * and goes when the keys go back to the sheet. In a low one the strip of conditions is slim, in a very low one it goes
 * while a page is folded out.
 */
final class GivingWay {
    /** Below these the named thing happens, in pixels of a window of the usual resolution. */
    private static final int NARROW = 760;

    private static final int VERY_NARROW = 560;
    private static final int LOW = 480;
    private static final int VERY_LOW = 320;

    private final JComponent window;
    private final FoldOut foldOut;
    private final ConditionsStrip strip;
    private final JPanel marginPlace = Flat.clear(new BorderLayout());
    private final JPanel foldPlace = Flat.clear(new BorderLayout());
    private final JPanel stripPlace = Flat.clear(new BorderLayout());
    private boolean card;

    /** @param window all that lies in it */
    GivingWay(JComponent window, Margin margin, FoldOut foldOut, ConditionsStrip strip) {
        this.window = window;
        this.foldOut = foldOut;
        this.strip = strip;
        marginPlace.add(margin.panel(), BorderLayout.CENTER);
        foldPlace.add(foldOut.panel(), BorderLayout.CENTER);
        stripPlace.add(strip.panel(), BorderLayout.CENTER);
        window.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                fit();
            }
        });
    }

    JComponent marginPlace() {
        return marginPlace;
    }

    JComponent foldPlace() {
        return foldPlace;
    }

    JComponent stripPlace() {
        return stripPlace;
    }

    /** Card and notes are wanted now. */
    void card() {
        card = true;
        fit();
    }

    /** The page that is folded out is wanted now. */
    void page() {
        card = false;
        fit();
    }

    /** The keys are on the sheet: what was only called for goes. */
    void sheet() {
        card = false;
        fit();
    }

    /** Whether the margin stands aside now. */
    boolean marginAside() {
        return !marginPlace.isVisible();
    }

    private void fit() {
        Dimension size = window.getSize();
        if (size.width == 0) {
            return;
        }
        boolean open = foldOut.open();
        boolean turns = size.width < Look.px(NARROW) && open;
        boolean called = size.width < Look.px(VERY_NARROW);
        boolean changed = show(marginPlace, card || !(turns || called));
        changed |= show(foldPlace, !(turns && card));
        changed |= show(stripPlace, !(size.height < Look.px(VERY_LOW) && open));
        strip.slim(size.height < Look.px(LOW));
        if (changed) {
            window.revalidate();
            window.validate();
            window.repaint();
        }
    }

    private static boolean show(JComponent c, boolean on) {
        boolean changes = c.isVisible() != on;
        c.setVisible(on);
        return changes;
    }
}
