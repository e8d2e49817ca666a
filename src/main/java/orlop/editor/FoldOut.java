package orlop.editor;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Window;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.JTree;
import javax.swing.SwingUtilities;

/** What folds out below the sheet: the path to what is selected, findings, conditions, the register. One at a time. */
final class FoldOut {
    /** How much it has of what lies between the strips. */
    enum Share {
        /** Its tabs alone: a click on one brings the page. */
        TABS,
        /** As much as it was given by hand, but no more than half: the other half is the sheet's. */
        HALF,
        /** All of it. */
        WHOLE
    }

    private static final int HEIGHT = 210;
    private static final int LEAST = 110;
    private static final int WISHED_WIDTH = 400;

    private final Settings settings;
    private final CardLayout cards = new CardLayout();
    private final JPanel pages = Flat.clear(cards);
    private final JPanel panel = new JPanel(new BorderLayout()) {
        private static final long serialVersionUID = 1L;

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(WISHED_WIDTH, shareHeight());
        }
    };
    private final JPanel head = Flat.panel(new BorderLayout(), Look::strip);
    private final JToggleButton whole = Ring.toggle("▴", false, "toolBarButton");
    private final JPanel tabs = Flat.clear(new NarrowRow());
    private final ButtonGroup group = new ButtonGroup();
    private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
    private final Map<String, Supplier<JComponent>> unmade = new HashMap<>();
    private String open;
    private Share share = Share.HALF;
    private int height;
    private Runnable onWhole = () -> {};
    private Runnable onFold = () -> {};

    /**
     * @param all what makes each page when it is opened for the first time, by their words, in the order of their tabs
     */
    FoldOut(Settings settings, Map<String, Supplier<JComponent>> all) {
        this.settings = settings;
        this.unmade.putAll(all);
        all.keySet().forEach(word -> tabs.add(tab(word)));
        panel.setName("fold-out");
        head.add(handle(), BorderLayout.NORTH);
        head.add(tabs, BorderLayout.CENTER);
        JPanel ends = Flat.clear(new NarrowRow());
        ends.add(whole());
        ends.add(away());
        head.add(ends, BorderLayout.EAST);
        panel.add(head, BorderLayout.NORTH);
        panel.add(pages, BorderLayout.CENTER);
        panel.setBorder(Flat.lines(1, 0, 0, 0, new Insets(0, 0, 0, 0)));
        height = Look.px(settings.number("fold.height", HEIGHT));
        open = settings.word("fold", "");
        open = all.containsKey(open) ? open : "";
        show();
    }

    private JToggleButton tab(String word) {
        JToggleButton tab = Ring.toggle(Texts.of("editor.tab." + word), false, "tab");
        tab.setName("tab." + word);
        tab.setToolTipText(tab.getText()); // in a narrow window it is cut
        tab.setMargin(new Insets(3, 3, 3, 3)); // the look scales it
        tab.addActionListener(e -> {
            open(word);
            worked(pages).ifPresent(Component::requestFocusInWindow); // a page that was asked for is worked next
        });
        group.add(tab);
        buttons.put(word, tab);
        return tab;
    }

    private JToggleButton whole() {
        whole.setName("fold-whole");
        whole.setToolTipText(Texts.of("editor.fold.whole"));
        whole.getAccessibleContext().setAccessibleName(Texts.of("editor.fold.whole"));
        whole.addActionListener(e -> onWhole.run());
        return whole;
    }

    private JButton away() {
        JButton away = Ring.button("▾");
        away.setName("fold-away");
        away.setToolTipText(Texts.of("editor.fold.away"));
        away.getAccessibleContext().setAccessibleName(Texts.of("editor.fold.away"));
        away.addActionListener(e -> open(""));
        return away;
    }

    /** A strip at the upper edge by which it is made higher or lower. */
    private JComponent handle() {
        JPanel handle = Flat.panel(new BorderLayout(), Look::strip);
        handle.setName("fold-edge");
        handle.setPreferredSize(new Dimension(10, Look.px(5)));
        handle.setCursor(Cursor.getPredefinedCursor(Cursor.N_RESIZE_CURSOR));
        MouseAdapter drag = new MouseAdapter() {
            private int grip;

            @Override
            public void mousePressed(MouseEvent e) {
                grip = e.getYOnScreen() + panel.getHeight();
            }

            @Override
            public void mouseDragged(MouseEvent e) {
                Container around =
                        panel.getParent() == null ? null : panel.getParent().getParent();
                int most = around == null ? Integer.MAX_VALUE : around.getHeight() / 2;
                height = Math.max(Look.px(LEAST), Math.min(grip - e.getYOnScreen(), most));
                panel.revalidate();
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                if (share == Share.HALF) {
                    settings.rememberNumber("fold.height", (int) (panel.getHeight() / Look.scale()));
                }
            }

            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    onWhole.run();
                }
            }
        };
        handle.addMouseListener(drag);
        handle.addMouseMotionListener(drag);
        return handle;
    }

    JPanel panel() {
        return panel;
    }

    private int shareHeight() {
        // Its place is as high as itself: what it shares with the sheet is around that.
        Container around = panel.getParent() == null ? null : panel.getParent().getParent();
        int all = around == null ? 0 : around.getHeight();
        return switch (share) {
            case TABS -> head.getPreferredSize().height + 1;
            case WHOLE -> all == 0 ? height : all;
            case HALF -> all == 0 ? height : Math.min(height, Math.max(all / 2, Math.min(Look.px(LEAST), all)));
        };
    }

    /** Gives it more or less of the room. */
    void share(Share to) {
        if (share != to) {
            share = to;
            pages.setVisible(to != Share.TABS);
            whole.setSelected(to == Share.WHOLE);
            panel.revalidate();
        }
    }

    Share share() {
        return share;
    }

    /** @param listener told when the page is to have all the room, or to give it back */
    void onWhole(Runnable listener) {
        onWhole = listener;
    }

    /** @param listener told when another page is shown, or none */
    void onFold(Runnable listener) {
        onFold = listener;
    }

    /** What works the page that is open: its table or tree, else what can first have the keys. */
    Optional<Component> focus() {
        return open.isEmpty() ? Optional.empty() : worked(pages).or(() -> Optional.ofNullable(buttons.get(open)));
    }

    private static Optional<Component> worked(Container in) {
        for (Component c : in.getComponents()) {
            boolean works = c instanceof JTable || c instanceof JTree || c instanceof PathView;
            if (c.isVisible() && works && c.isFocusable()) {
                return Optional.of(c);
            }
            Optional<Component> deeper = c.isVisible() && c instanceof Container k ? worked(k) : Optional.empty();
            if (deeper.isPresent()) {
                return deeper;
            }
        }
        return Optional.empty();
    }

    /** What the keys do in the page that is open; while there is nothing in it, how to leave it. */
    String hint() {
        return Texts.of("editor.hint.fold." + (worked(pages).isPresent() ? open : "empty"));
    }

    /** Whether something in it has the keys of its window, or had them last. */
    boolean hasTheKeys() {
        Window window = SwingUtilities.getWindowAncestor(panel);
        Component owner = window == null ? null : window.getMostRecentFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, panel);
    }

    /** Whether any page is. */
    boolean open() {
        return !open.isEmpty();
    }

    boolean shows(String page) {
        return open.equals(page);
    }

    /** Opens a page, or folds it away if it is open. */
    void toggle(String page) {
        open(open.equals(page) ? "" : page);
    }

    /** Opens a page; "" folds away the one that is open. */
    void open(String page) {
        open = page;
        settings.rememberWord("fold", open);
        show();
        onFold.run();
    }

    private void show() {
        panel.setVisible(!open.isEmpty());
        if (!open.isEmpty()) {
            Supplier<JComponent> page = unmade.remove(open);
            if (page != null) {
                pages.add(page.get(), open);
            }
            cards.show(pages, open);
            JToggleButton tab = buttons.get(open);
            if (tab != null) {
                tab.setSelected(true);
            }
        }
        if (panel.getParent() instanceof JComponent place) {
            place.revalidate();
        }
    }
}
