package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.findings.Finding;
import orlop.study.working.Figure;

/** The margin on the right: the card of what is selected, and below it the notes on this sheet. */
final class Margin implements SessionListener {
    static final int WIDTH = 360;
    static final int LEAST = 290;

    private final Session session;
    private final SheetCanvas canvas;
    private final Pointing pointing;
    private final NoteView.Deeds deeds;
    private final JPanel panel = Flat.panel(new BorderLayout(), Look::margin);
    private final Page page = new Page();
    private final JScrollPane scroll;
    private boolean fromHere;
    private boolean cardWanted;
    private final JPanel cardPlace = Flat.clear(new BorderLayout());
    private final Notes notes;
    private final OwnNotes own;
    private final StillPage still;
    private final Drafts drafts = new Drafts();
    private int inner;
    private @Nullable Card card;
    private @Nullable GroupCard group;
    private boolean moreOpen;
    private Consumer<Figure> onWorking = f -> {};
    private Runnable onWanted = () -> {};
    private Consumer<Finding> onShown = f -> {};

    Margin(Session session, SheetCanvas canvas, Pointing pointing, NoteView.Deeds deeds) {
        this.session = session;
        this.canvas = canvas;
        this.pointing = pointing;
        this.deeds = deeds;
        page.setBorder(Flat.rim(10, 14, 10, 0));
        page.setOpaque(false);
        notes = new Notes(canvas, pointing, new Here(), this::pressed);
        own = new OwnNotes(pointing);
        page.add(cardPlace);
        page.add(notes.panel());
        scroll =
                new JScrollPane(page, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder()); // null would be replaced with every new look
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(Look.px(18));
        still = new StillPage(scroll, page, cardPlace, notes.panel(), this::loosen);
        panel.add(scroll, BorderLayout.CENTER);
        panel.setBorder(Flat.lines(0, 1, 0, 0, new Insets(0, 0, 0, 0)));
        fit(Look.px(WIDTH));
        panel.setName("margin");
        showCard(session.state());
        showNotes(session.state());
        session.listen(this);
        canvas.blink().listen(() -> still.keep(() -> showNotes(session.state())));
    }

    /** The mouse has gone: the notes close up again, and who has selected something wants to see its card. */
    private void loosen() {
        showNotes(session.state());
        if (cardWanted) {
            cardWanted = false;
            SwingUtilities.invokeLater(() -> scroll.getVerticalScrollBar().setValue(0));
        }
    }

    /** Wide as its viewport, with the red line of a margin at its left edge. */
    private static final class Page extends JPanel implements Scrollable {
        private static final long serialVersionUID = 1L;

        @Override
        protected void paintComponent(Graphics g) {
            g.setColor(Look.ink(orlop.scene.Ink.MARGIN_LINE));
            g.fillRect(Look.px(5), 0, 1, getHeight());
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle r, int orientation, int direction) {
            return Look.px(18);
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle r, int orientation, int direction) {
            return Math.max(Look.px(40), r.height - Look.px(40));
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return getParent() != null && getParent().getHeight() > getPreferredSize().height;
        }
    }

    JPanel panel() {
        return panel;
    }

    /** Makes the margin another width, in pixels; what is being typed stays. */
    void width(int width) {
        if (width != panel.getPreferredSize().width) {
            fit(width);
            showCard(session.state());
            showNotes(session.state());
            panel.revalidate();
        }
    }

    private void fit(int width) {
        inner = width - Look.px(4 + 14 + 12 + 14);
        cardPlace.setLayout(new Column(inner, Look.px(6)));
        notes.width(inner);
        page.setLayout(new Column(inner + Look.px(14), Look.px(10)));
        panel.setPreferredSize(new Dimension(width, 200));
        panel.setMinimumSize(new Dimension(width, 100));
    }

    /** @param listener makes room for card and notes where they have had to stand aside */
    void onWanted(Runnable listener) {
        onWanted = listener;
    }

    /** Card and notes are to be in sight. */
    void wanted() {
        onWanted.run();
    }

    /** @param listener shows how a figure of the selected item came about */
    void onWorking(Consumer<Figure> listener) {
        onWorking = listener;
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        boolean sameItems = Same.object(before.drawing(), after.drawing())
                && Same.object(before.review(), after.review())
                && before.condition().equals(after.condition());
        boolean sameSelection = before.selection().equals(after.selection());
        boolean sameSheet = before.sheet().equals(after.sheet());
        if (sameItems && sameSelection && sameSheet) {
            return;
        }
        if (!sameSheet) {
            still.release();
        }
        still.keep(() -> show(before, after));
        if (!sameSelection && !after.selection().isEmpty() && !notes.haveTheKeys()) {
            // The card stands above the notes; who selects on the sheet wants to see it, unless by the mark of a note.
            Finding marked = pointing.finding();
            if (fromHere) {
                cardWanted = still.holds();
            } else if (marked != null
                    && after.selection().contains(marked.place().item())) {
                notes.light();
            } else {
                SwingUtilities.invokeLater(() -> scroll.getVerticalScrollBar().setValue(0));
            }
        }
    }

    private void show(SessionState before, SessionState after) {
        boolean sameItems = Same.object(before.drawing(), after.drawing())
                && Same.object(before.review(), after.review())
                && before.condition().equals(after.condition());
        if (!sameItems || !before.selection().equals(after.selection())) {
            Card shown = card;
            GroupCard several = group;
            boolean kept =
                    shown != null && after.soleSelection().equals(Optional.of(shown.item())) && shown.refresh(after);
            if (!kept && !(several != null && several.refresh(after))) {
                showCard(after);
            }
        }
        // During a blink the notes are those of the sheet as it stands.
        if (!canvas.blink().waits() && (!sameItems || !before.sheet().equals(after.sheet()))) {
            showNotes(after);
        } else {
            showOwn();
        }
    }

    /** The keys go to the sheet. */
    private void pressed() {
        if (!still.gone()) {
            canvas.byKeys(false);
            canvas.requestFocusInWindow();
        }
    }

    /**
     * What a click among the notes does leaves them where they are, under the mouse. Where they had to go from under it,
     * another click without a move of the mouse was for what stood there before, and does nothing.
     */
    private void fromHere(Runnable work) {
        if (EventQueue.getCurrentEvent() instanceof MouseEvent && still.gone()) {
            return;
        }
        fromHere = true;
        try {
            work.run();
        } finally {
            fromHere = false;
        }
    }

    private void showCard(SessionState s) {
        boolean same = card != null && s.soleSelection().equals(Optional.of(card.item()));
        boolean several = group != null && s.selection().size() > 1;
        KeptFocus.through(cardPlace, () -> fillCard(s), () -> same || several ? cardFocus() : Optional.of(canvas));
    }

    private void fillCard(SessionState s) {
        cardPlace.removeAll();
        card = null;
        group = null;
        Optional<String> id = s.soleSelection();
        if (id.isPresent()) {
            Card c = new Card(
                    session,
                    id.get(),
                    inner,
                    drafts,
                    moreOpen,
                    this::toggleMore,
                    f -> onWorking.accept(f),
                    own.panel());
            card = c;
            cardPlace.add(c.panel());
        } else if (s.selection().isEmpty()) {
            boolean empty = s.drawing().components().isEmpty();
            String word = empty ? "editor.card.begin" : "editor.card.nothing";
            cardPlace.add(new WrapText(Texts.of(word), Look::quiet, Look::font));
        } else {
            GroupCard several = new GroupCard(session, s.selection(), inner, drafts, moreOpen, this::toggleMore);
            group = several;
            cardPlace.add(several.panel());
        }
        page.revalidate();
        page.repaint();
    }

    private void toggleMore() {
        moreOpen = !moreOpen;
        showCard(session.state());
    }

    private void showOwn() {
        Card c = card;
        own.show(c == null ? List.of() : notes.of(c.item()), c == null ? inner : c.inner());
    }

    private void showNotes(SessionState s) {
        notes.show(s, still.holds());
        showOwn();
    }

    /** What is done from a note leaves the notes where they are. */
    private final class Here implements NoteView.Deeds {
        @Override
        public void cure(Finding f) {
            fromHere(() -> deeds.cure(f));
        }

        @Override
        public void accept(Finding f) {
            fromHere(() -> deeds.accept(f));
        }

        @Override
        public void reopen(Finding f) {
            fromHere(() -> deeds.reopen(f));
        }

        @Override
        public void place(Finding f) {
            fromHere(() -> pick(f));
        }
    }

    /** Selects what a note speaks of, and brings it into sight. */
    private void pick(Finding f) {
        SessionState s = session.state();
        String sheet = FindingPlaces.sheet(s.drawing(), f);
        if (!sheet.isEmpty()) {
            session.showSheet(sheet);
        }
        session.select(Set.of(f.place().item()));
        canvas.scene()
                .flatMap(scene -> FindingPlaces.bounds(session.state(), scene, f))
                .ifPresent(canvas.view()::reveal);
        pointing.at(f);
    }

    /** Shows what a finding speaks of; whoever listens sees to it that it is told. */
    void show(Finding f) {
        pick(f);
        onShown.accept(f);
    }

    /** @param listener told of a finding whose place is shown, which may have no note here */
    void onShown(Consumer<Finding> listener) {
        onShown = listener;
    }

    /** The first field of the card; empty if there is none. */
    Optional<Component> cardFocus() {
        Card c = card;
        return c != null ? c.first() : CanvasKeys.firstField(cardPlace);
    }

    /** The note of the finding that is pointed at, else the first; empty if there is none. */
    Optional<Component> notesFocus() {
        return notes.first();
    }

    JPanel cardPlace() {
        return cardPlace;
    }

    JPanel notes() {
        return notes.panel();
    }

    /** Shows the card of an item with the cursor in the field of this particular. */
    void ask(String item, String field) {
        wanted();
        session.select(Set.of(item));
        still.go();
        Card c = card;
        if (c != null && !moreOpen && c.inMore(field)) {
            toggleMore();
        }
        SwingUtilities.invokeLater(() -> {
            Card now = card;
            if (now != null) {
                panel.validate();
                scroll.getVerticalScrollBar().setValue(0);
                now.focus(field);
            }
        });
    }

    void forgetDrafts() {
        drafts.clear();
    }
}
