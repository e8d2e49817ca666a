package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.jspecify.annotations.Nullable;

/**
 * A card that opens over the sheet: a field, and below it what fits the words typed so far. Arrows choose, Enter does it,
 * Escape leaves all as it was.
 */
final class Lookup {
    private static final int WIDTH = 560;
    private static final int ROWS = 9;

    /**
     * Something that can be chosen.
     *
     * @param text what it is
     * @param detail where it is, its key, or why it can't be done now
     * @param possible whether it can be done now
     * @param body does it
     */
    record Entry(String text, String detail, boolean possible, Runnable body) {}

    private final Function<String, List<Entry>> source;
    private final JPanel panel;
    private final JTextField field = new JTextField();
    private final DefaultListModel<Entry> entries = new DefaultListModel<>();
    private final JList<Entry> list = new JList<>(entries) {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true; // what is too long ends in dots
        }
    };
    private final JLabel count = Flat.quiet("");
    private @Nullable Component cameFrom;

    /**
     * @param word of its name and of its title's key, {@code editor.lookup.WORD}
     * @param source what fits the words typed
     */
    Lookup(String word, Function<String, List<Entry>> source) {
        this.source = source;
        panel = card();
        panel.setName("lookup." + word);
        String title = Texts.of("editor.lookup." + word);
        field.setName("lookup." + word + ".field");
        field.getAccessibleContext().setAccessibleName(title);
        list.setName("lookup." + word + ".list");
        list.getAccessibleContext().setAccessibleName(title);
        JPanel head = Flat.clear(new BorderLayout(0, Look.px(6)));
        head.add(Flat.bold(title, Look::text), BorderLayout.WEST);
        head.add(count, BorderLayout.EAST);
        head.add(field, BorderLayout.SOUTH);
        panel.add(head, BorderLayout.NORTH);
        JScrollPane scroll =
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        panel.add(scroll, BorderLayout.CENTER);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(ROWS);
        list.setFixedCellHeight(Look.px(26));
        list.setFixedCellWidth(Look.px(WIDTH)); // else each row is measured; what is too long ends in dots
        list.setFocusable(false);
        list.setCellRenderer(new Row());
        work();
    }

    private static JPanel card() {
        JPanel card = new JPanel(new BorderLayout(0, Look.px(8))) {
            private static final long serialVersionUID = 1L;

            @Override
            protected void paintComponent(Graphics g) {
                Flat.box(this, g, Look.card(), Look.accent(), 1.6f);
            }
        };
        card.setOpaque(false);
        card.setBorder(Flat.rim(12, 14, 14, 14));
        card.setVisible(false);
        return card;
    }

    private void work() {
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                fill();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                fill();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                fill();
            }
        });
        key("ENTER", this::take);
        key("ESCAPE", this::close);
        key("UP", () -> step(-1));
        key("DOWN", () -> step(1));
        key("PAGE_UP", () -> step(1 - ROWS));
        key("PAGE_DOWN", () -> step(ROWS - 1));
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    hide();
                }
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                take();
            }
        });
    }

    private void key(String key, Runnable body) {
        field.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        field.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                body.run();
            }
        });
    }

    JPanel panel() {
        return panel;
    }

    /** What is offered now. */
    List<Entry> offered() {
        return java.util.Collections.list(entries.elements());
    }

    /** Opens the card over the upper part of a component. */
    void open(JComponent over) {
        if (panel.isShowing()) {
            field.selectAll();
            field.requestFocusInWindow();
            return;
        }
        JRootPane root = over.getRootPane();
        if (root != null) {
            cameFrom = java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager()
                    .getFocusOwner();
            javax.swing.SwingUtilities.updateComponentTreeUI(panel); // the look may have changed while it was away
            root.getLayeredPane().add(panel, JLayeredPane.POPUP_LAYER);
            java.awt.Point at = javax.swing.SwingUtilities.convertPoint(over, 0, 0, root.getLayeredPane());
            Dimension wanted = panel.getPreferredSize();
            int width = Math.min(Look.px(WIDTH), over.getWidth() - Look.px(16));
            int height = Math.min(wanted.height, root.getLayeredPane().getHeight() - at.y - Look.px(16));
            panel.setBounds(at.x + (over.getWidth() - width) / 2, at.y + Look.px(14), width, height);
        }
        panel.setVisible(true);
        panel.revalidate();
        type("");
        field.requestFocusInWindow();
    }

    /** Puts words into the field, as if they had been typed. */
    void type(String words) {
        field.setText(words);
        fill();
    }

    private void fill() {
        entries.clear();
        entries.addAll(source.apply(field.getText())); // at once: a list measures itself with every change
        list.setSelectedIndex(entries.isEmpty() ? -1 : 0);
        list.ensureIndexIsVisible(0);
        count.setText(
                field.getText().isBlank() && entries.isEmpty() ? "" : Texts.of("editor.lookup.count", entries.size()));
    }

    private void step(int by) {
        if (!entries.isEmpty()) {
            int at = Math.max(0, Math.min(entries.size() - 1, list.getSelectedIndex() + by));
            list.setSelectedIndex(at);
            list.ensureIndexIsVisible(at);
        }
    }

    /** Does what is chosen, if it is possible; else it stays open, and its reason stands there. */
    void take() {
        Entry e = list.getSelectedValue();
        if (e != null && e.possible()) {
            close();
            e.body().run();
        }
    }

    void close() {
        Component back = cameFrom;
        if (back != null) {
            back.requestFocusInWindow(); // before the field goes: what has the focus must not vanish with it
        }
        hide();
    }

    private void hide() {
        if (!panel.isVisible()) {
            return;
        }
        cameFrom = null;
        panel.setVisible(false);
        java.awt.Container parent = panel.getParent();
        if (parent != null) {
            parent.remove(panel);
            parent.repaint();
        }
    }

    /** What it is on the left; where, how or why not on the right. */
    private static final class Row extends JPanel implements ListCellRenderer<Entry> {
        private static final long serialVersionUID = 1L;
        private final transient JLabel text = Flat.label("", Look::text, false);
        private final transient JLabel off = Flat.label("", Look::quiet, false);
        private final transient JLabel detail = Flat.quiet("");

        Row() {
            super(new BorderLayout(Look.px(12), 0));
            setBorder(Flat.rim(2, 8, 2, 8));
        }

        /** What it is comes first: the right gives way, down to a third of the row. */
        @Override
        public void doLayout() {
            Insets in = getInsets();
            int gap = Look.px(12);
            int wide = Math.max(0, getWidth() - in.left - in.right - gap);
            int high = Math.max(0, getHeight() - in.top - in.bottom);
            JLabel left = text.getParent() == this ? text : off;
            int wanted = detail.getPreferredSize().width;
            int right = Math.min(wanted, Math.max(wide - left.getPreferredSize().width, wide / 3));
            left.setBounds(in.left, in.top, wide - right, high);
            detail.setBounds(in.left + wide - right + gap, in.top, right, high);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Entry> list, Entry e, int index, boolean selected, boolean focus) {
            removeAll();
            JLabel left = e.possible() ? text : off;
            left.setText(e.text());
            detail.setText(e.detail());
            add(left, BorderLayout.CENTER);
            add(detail, BorderLayout.EAST);
            setBackground(selected ? Look.chosen() : Look.card());
            setToolTipText(e.text());
            getAccessibleContext().setAccessibleName(e.text() + ", " + e.detail());
            return this;
        }
    }
}
