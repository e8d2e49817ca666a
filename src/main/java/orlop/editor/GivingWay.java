package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * Which parts stand aside in a small window, so that the sheet stays in sight; what was asked for last is there.
 *
 * <ul>
 *   <li>A page that is folded out has at most half of the room between the strips, unless it is asked to have all of it.
 *   <li>In a narrow window fold-out and margin take turns; in a very narrow one the margin comes only when it is asked for,
 *       and goes when the keys go back to the sheet.
 *   <li>In a low window the strip of conditions is slim, and goes while a page is folded out.
 *   <li>In a very low one sheet and page take turns too: the page that is asked for has all the room, and when the keys go
 *       back to the sheet its tabs stay.
 *   <li>The sheet can be asked to stand alone: then all else goes, until any of it is asked for.
 * </ul>
 */
final class GivingWay {
    /** Below these the named thing happens, in pixels of a window of the usual resolution. */
    private static final int NARROW = 760;

    private static final int VERY_NARROW = 560;
    private static final int LOW = 480;
    private static final int VERY_LOW = 320;

    /** What was asked for last. */
    private enum Asked {
        SHEET,
        CARD,
        PAGE,
        STRIP
    }

    private final JComponent window;
    private final FoldOut foldOut;
    private final ConditionsStrip strip;
    private final JPanel marginPlace = Flat.clear(new BorderLayout());
    private final JPanel foldPlace = Flat.clear(new BorderLayout());
    private final JPanel stripPlace = Flat.clear(new BorderLayout());
    private final JPanel lockerPlace = Flat.clear(new BorderLayout());
    private Asked asked = Asked.SHEET;
    private boolean whole;
    private boolean alone;
    private Runnable onChange = () -> {};

    /** @param window all that lies in it */
    GivingWay(JComponent window, JComponent locker, Margin margin, FoldOut foldOut, ConditionsStrip strip) {
        this.window = window;
        this.foldOut = foldOut;
        this.strip = strip;
        lockerPlace.add(locker, BorderLayout.CENTER);
        marginPlace.add(margin.panel(), BorderLayout.CENTER);
        foldPlace.add(foldOut.panel(), BorderLayout.CENTER);
        stripPlace.add(strip.panel(), BorderLayout.CENTER);
        foldOut.onWhole(this::whole);
        window.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                fit();
            }
        });
    }

    JComponent lockerPlace() {
        return lockerPlace;
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

    /** @param listener told when parts have come or gone */
    void onChange(Runnable listener) {
        onChange = listener;
    }

    /** Card and notes are wanted now. */
    void card() {
        ask(Asked.CARD);
    }

    /** The page that is folded out is wanted now. */
    void page() {
        whole &= foldOut.open();
        ask(Asked.PAGE);
    }

    /** The strip of conditions is wanted now. */
    void strip() {
        ask(Asked.STRIP);
    }

    /** The locker is wanted now. */
    void locker() {
        alone = false;
        fit();
    }

    /** The keys are on the sheet: what was only called for goes. */
    void sheet() {
        asked = Asked.SHEET;
        whole = false;
        fit();
    }

    private void ask(Asked what) {
        asked = what;
        alone = false;
        fit();
    }

    /** The page has all the room between the strips, or gives back the sheet's half. */
    void whole() {
        whole = foldOut.open() && foldOut.share() != FoldOut.Share.WHOLE;
        ask(whole ? Asked.PAGE : Asked.SHEET);
    }

    /** Whether a page has all the room. */
    boolean isWhole() {
        return foldOut.open() && foldOut.share() == FoldOut.Share.WHOLE;
    }

    /** All but the sheet goes, or comes back as it was. */
    void alone() {
        alone = !alone;
        whole = false;
        asked = Asked.SHEET;
        fit();
    }

    boolean isAlone() {
        return alone;
    }

    /** Whether this part stands aside now, though it isn't folded away. */
    boolean aside(JComponent part) {
        return part.isVisible() && part.getParent() != null && !part.getParent().isVisible();
    }

    private void fit() {
        Dimension size = window.getSize();
        if (size.width == 0) {
            return;
        }
        boolean open = foldOut.open();
        boolean card = asked == Asked.CARD;
        boolean turns = size.width < Look.px(NARROW) && open;
        boolean called = size.width < Look.px(VERY_NARROW);
        boolean low = size.height < Look.px(LOW);
        boolean pageThere = !alone && !(turns && card);
        boolean changed = show(marginPlace, !alone && (card || !(turns || called)));
        changed |= show(foldPlace, pageThere);
        changed |= show(stripPlace, !alone && (asked == Asked.STRIP || !(low && open && pageThere)));
        changed |= show(lockerPlace, !alone);
        changed |= share(size.height < Look.px(VERY_LOW));
        strip.slim(low);
        if (changed) {
            window.revalidate();
            window.validate();
            window.repaint();
            onChange.run();
        }
    }

    private boolean share(boolean turns) {
        FoldOut.Share before = foldOut.share();
        FoldOut.Share inTurn = asked == Asked.PAGE ? FoldOut.Share.WHOLE : FoldOut.Share.TABS;
        FoldOut.Share roomy = whole ? FoldOut.Share.WHOLE : FoldOut.Share.HALF;
        foldOut.share(turns ? inTurn : roomy);
        return foldOut.share() != before;
    }

    private static boolean show(JComponent c, boolean on) {
        boolean changes = c.isVisible() != on;
        c.setVisible(on);
        return changes;
    }
}
