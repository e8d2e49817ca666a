package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import orlop.drawing.Message;
import orlop.findings.Finding;

/** A checker's note in the margin: its mark, what is wrong, why, by which clause, and the button that cures it. */
final class NoteView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int MOST_LETTERS = 360;
    private static final int GAP = 6;
    private static final int MARK = 20;

    /** What can be done from a note. */
    interface Deeds {
        void cure(Finding f);

        /** Asks why somebody lives with it. */
        void accept(Finding f);

        /** Takes back that somebody lives with it. */
        void reopen(Finding f);

        /** Shows what it speaks of. */
        void place(Finding f);
    }

    private final transient Pointing pointing;
    private final transient Deeds deeds;
    private final JLabel mark = new JLabel();
    private transient FindingPlaces.Numbered numbered;
    private boolean under;

    NoteView(FindingPlaces.Numbered numbered, int width, Pointing pointing, Deeds deeds) {
        this.numbered = numbered;
        this.pointing = pointing;
        this.deeds = deeds;
        setOpaque(false);
        setLayout(new BorderLayout(Look.px(8), 0));
        setBorder(Flat.rim(6, 6, 8, 6));
        mark.setVerticalAlignment(JLabel.TOP);
        add(mark, BorderLayout.WEST);
        int inner = width - Look.px(MARK) - Look.px(8 + 12);
        add(text(inner), BorderLayout.CENTER);
        number();
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mouseEntered(MouseEvent e) {
                under = true;
                pointing.at(finding());
            }

            @Override
            public void mouseExited(MouseEvent e) {
                if (!contains(e.getPoint())) {
                    under = false;
                    pointing.at(null);
                }
            }

            @Override
            public void mouseClicked(MouseEvent e) {
                if (SwingUtilities.isLeftMouseButton(e)) {
                    deeds.place(finding());
                }
            }

            @Override
            public void mousePressed(MouseEvent e) {
                if (e.isPopupTrigger()) {
                    menu(finding(), deeds).show(NoteView.this, e.getX(), e.getY());
                }
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                mousePressed(e);
            }
        };
        listen(this, mouse);
        keys();
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
    }

    /** The number by which it goes. */
    private void number() {
        Finding f = finding();
        setName("note." + numbered.number());
        mark.setIcon(new SeverityIcon(f.severity(), Integer.toString(numbered.label()), Look.px(MARK), f.accepted()));
        String kind = Texts.of("editor.severity." + f.severity().word());
        getAccessibleContext()
                .setAccessibleName(numbered.label() + ". " + kind + ": " + Texts.title(f.title()) + ". "
                        + Texts.title(f.message()));
    }

    /**
     * Takes the same finding of a fresh review, maybe by another number.
     *
     * @return false, and nothing is done, if it says something else
     */
    boolean again(FindingPlaces.Numbered now) {
        if (!now.finding().equals(finding())) {
            return false;
        }
        boolean same = now.number() == numbered.number() && now.label() == numbered.label();
        numbered = now;
        if (!same) {
            number();
        }
        return true;
    }

    private Finding finding() {
        return numbered.finding();
    }

    /** With the keys on it, it is lit as under the mouse; Enter shows its place, arrows go to its neighbours. */
    private void keys() {
        setFocusable(true);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                pointing.at(finding());
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        key("ENTER", () -> deeds.place(finding()));
        key("SPACE", () -> deeds.place(finding()));
        key("shift F10", () -> menuByKey());
        key("CONTEXT_MENU", () -> menuByKey());
        key("DOWN", () -> neighbour(1));
        key("UP", () -> neighbour(-1));
    }

    private void menuByKey() {
        JPopupMenu menu = menu(finding(), deeds);
        MenuLetters.give(menu);
        menu.show(this, Look.px(30), Look.px(20));
    }

    private void key(String key, Runnable body) {
        getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                body.run();
            }
        });
    }

    private void neighbour(int by) {
        int to = getParent().getComponentZOrder(this) + by;
        while (to >= 0 && to < getParent().getComponentCount()) {
            if (getParent().getComponent(to) instanceof NoteView v) {
                v.requestFocusInWindow();
                return;
            }
            to += by;
        }
    }

    /** The mouse is over the note when it is over any part of it. */
    private void listen(java.awt.Container c, MouseAdapter mouse) {
        c.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseEntered(MouseEvent e) {
                mouse.mouseEntered(e);
            }

            @Override
            public void mouseExited(MouseEvent e) {
                mouse.mouseExited(javax.swing.SwingUtilities.convertMouseEvent(e.getComponent(), e, NoteView.this));
            }

            @Override
            public void mousePressed(MouseEvent e) {
                mouse.mousePressed(javax.swing.SwingUtilities.convertMouseEvent(e.getComponent(), e, NoteView.this));
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                mouse.mouseReleased(javax.swing.SwingUtilities.convertMouseEvent(e.getComponent(), e, NoteView.this));
            }

            @Override
            public void mouseClicked(MouseEvent e) {
                if (!(e.getComponent() instanceof JButton)) {
                    mouse.mouseClicked(e);
                }
            }
        });
        for (java.awt.Component child : c.getComponents()) {
            if (child instanceof java.awt.Container k) {
                listen(k, mouse);
            }
        }
    }

    /** What can be done with a finding, in a menu at the mouse. */
    JPopupMenu menu(Finding f, Deeds deeds) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("menu.note");
        if (f.cure() != null && !f.accepted()) {
            item(menu, "cure", Texts.title(f.cure().label()), () -> deeds.cure(f));
        }
        if (f.accepted()) {
            item(menu, "reopen", Texts.title(Message.of("editor.note.reopen")), () -> deeds.reopen(f));
        } else {
            item(menu, "accept", CommandId.ACCEPT.text(), () -> deeds.accept(f));
        }
        item(menu, "place", Texts.of("editor.note.place"), () -> deeds.place(f));
        return menu;
    }

    private static void item(JPopupMenu menu, String name, String text, Runnable body) {
        JMenuItem item = new JMenuItem(text);
        item.setName("context." + name);
        item.addActionListener(e -> body.run());
        menu.add(item);
    }

    private JPanel text(int width) {
        Finding f = finding();
        JPanel text = Flat.clear(new Column(width, Look.px(3)));
        text.add(new WrapText(
                Texts.title(f.title()), () -> f.accepted() ? Look.quiet() : Look.severity(f.severity()), Look::bold));
        message(text, Texts.title(f.message()));
        String basis = basis(f);
        if (!basis.isEmpty()) {
            text.add(new WrapText(basis, Look::quiet, Look::small));
        }
        String place = "." + f.rule() + "." + f.place().item();
        if (f.acceptedReason() != null) {
            text.add(new WrapText(Texts.of("editor.note.accepted", f.acceptedReason()), Look::text, Look::font));
            text.add(Column.own(quiet("reopen" + place, "editor.note.reopen", () -> deeds.reopen(finding()))));
            return text;
        }
        JButton live = quiet("accept" + place, "editor.note.accept", () -> deeds.accept(finding()));
        if (f.cure() == null) {
            text.add(Column.own(live));
            return text;
        }
        JButton cure = cure(Texts.of(f.cure().label()), width, f);
        cure.setName("cure" + place);
        cure.addActionListener(e -> deeds.cure(finding()));
        text.add(Flat.gap(1));
        if (cure.getPreferredSize().width + live.getPreferredSize().width + Look.px(GAP) <= width) {
            JPanel both = Flat.clear(new FlowLayout(FlowLayout.LEFT, 0, 0));
            both.add(cure);
            both.add(Box.createHorizontalStrut(Look.px(GAP)));
            both.add(live);
            text.add(both);
        } else {
            text.add(Column.own(cure));
            text.add(Column.own(live));
        }
        return text;
    }

    /** What isn't the first thing to do: in small quiet letters. */
    private static JButton quiet(String name, String key, Runnable body) {
        JButton b = Ring.quiet(Texts.of(key));
        b.setName(name);
        b.addActionListener(e -> body.run());
        return b;
    }

    /** What would fill the margin is cut, until somebody wants to read all of it. */
    private static void message(JPanel text, String message) {
        if (message.length() <= MOST_LETTERS) {
            text.add(new WrapText(message, Look::text, Look::font));
            return;
        }
        int end = message.lastIndexOf(' ', MOST_LETTERS);
        String start = message.substring(0, end < 0 ? MOST_LETTERS : end) + " …";
        WrapText words = new WrapText(start, Look::text, Look::font);
        JButton all = Ring.button(Texts.of("editor.card.more"));
        all.setName("note.all");
        all.addActionListener(e -> {
            words.setText(message);
            all.setVisible(false);
            text.revalidate();
        });
        text.add(words);
        text.add(Column.own(all));
    }

    private static String basis(Finding f) {
        StringBuilder s = new StringBuilder(f.clause());
        if (!f.provenance().isEmpty() && !f.provenance().equals("seen")) {
            s.append(s.length() == 0 ? "" : " · ").append(f.provenance());
        }
        String said = Texts.of(f.message());
        f.assumptions().stream()
                .filter(a -> !said.contains(Texts.of(a)))
                .forEach(a -> s.append(s.length() == 0 ? "" : "\n").append(Texts.title(a)));
        return s.toString();
    }

    /** A button whose words are never cut: what is too wide takes two lines. */
    private static JButton cure(String words, int width, Finding f) {
        JButton b = Flat.outlined(words, () -> Look.severity(f.severity()));
        if (b.getPreferredSize().width > width) {
            int inner = width - Look.px(28);
            b.setText("<html><div width='" + inner + "'>" + Texts.html(words) + "</div></html>");
            b.setHorizontalAlignment(JButton.LEFT);
        }
        b.getAccessibleContext().setAccessibleName(words);
        return b;
    }

    /** Whether the mouse is over it. */
    boolean under() {
        return under;
    }

    FindingPlaces.Numbered numbered() {
        return numbered;
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // two findings may say the same of two places
    protected void paintComponent(Graphics g) {
        if (pointing.finding() == finding()) {
            Flat.box(this, g, Look.chosen(), Look.chosen(), 1f);
        }
        Ring.paint(this, g);
    }
}
