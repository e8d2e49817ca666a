package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.LayoutManager;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import orlop.desk.CardEdits;
import orlop.desk.CardField;
import orlop.desk.CardFields;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.findings.Severity;
import orlop.study.working.Figure;

/** The card of one component, cable, link or note: its particulars to edit, and its results. */
final class Card {
    /** What the name of a result leaves free of its line, and with the button that shows its working; in pixels at 100 %. */
    private static final int BESIDE = 8;

    private static final int WITH_WORKING = 36;

    private final String item;
    private final int width;
    private final JPanel panel;
    private final JLabel what = Flat.quiet("");
    private final JLabel condition = Flat.quiet("");
    private final CardRows rows;
    private final JPanel results;
    private final JPanel more;
    private final Consumer<Figure> onWorking;

    /**
     * @param ownNotes what the checker says of it
     * @param onWorking shows how a figure came about
     */
    Card(
            Session session,
            String item,
            int width,
            Drafts drafts,
            boolean moreOpen,
            Runnable onMore,
            Consumer<Figure> onWorking,
            JComponent ownNotes) {
        this.item = item;
        this.onWorking = onWorking;
        this.panel = new Box(new Column(width, Look.px(4)));
        panel.setOpaque(false);
        panel.setBorder(Flat.rim(10, 14, 12, 14));
        panel.setName("card." + item);
        this.width = width - panel.getInsets().left - panel.getInsets().right;
        this.results = Flat.clear(new Column(this.width, Look.px(3)));
        this.more = Flat.clear(new Column(this.width, Look.px(4)));
        this.rows = new CardRows(
                fields(session.state()),
                this.width,
                item,
                drafts,
                new CardRows.Writer(
                        session,
                        (path, v) ->
                                CardEdits.set(item, path, v, session.state().condition())));
        build(session.state(), moreOpen, onMore, ownNotes);
    }

    /** Width within its rim, in pixels. */
    int inner() {
        return width;
    }

    /** A rounded ground. */
    private static final class Box extends JPanel {
        private static final long serialVersionUID = 1L;

        Box(LayoutManager layout) {
            super(layout);
        }

        @Override
        protected void paintComponent(Graphics g) {
            Flat.box(this, g, Look.card(), Look.line(), 1f);
        }
    }

    JPanel panel() {
        return panel;
    }

    String item() {
        return item;
    }

    private List<CardField> fields(SessionState s) {
        return CardFields.of(s.drawing(), item, s.condition());
    }

    private void build(SessionState s, boolean moreOpen, Runnable onMore, JComponent ownNotes) {
        JPanel head = Flat.clear(new BorderLayout(Look.px(8), 0));
        JLabel tag = Flat.bold(title(s), Look::text);
        tag.setFont(Look.bold().deriveFont(Look.font().getSize2D() * 1.2f));
        tag.setName("card.tag");
        head.add(tag, BorderLayout.WEST);
        head.add(what, BorderLayout.CENTER);
        panel.add(head);
        panel.add(ownNotes);
        rows.fill(CardField.Section.MAIN, panel);
        rows.fill(CardField.Section.PARTICULARS, panel);
        if (rows.has(CardField.Section.CONDITION)) {
            panel.add(rule());
            condition.setName("card.condition");
            panel.add(condition);
            rows.fill(CardField.Section.CONDITION, panel);
        }
        more(moreOpen, onMore);
        panel.add(results);
        fill(s);
    }

    private void more(boolean open, Runnable onMore) {
        rows.fill(CardField.Section.MORE, more);
        if (more.getComponentCount() == 0) {
            return;
        }
        JButton fold = fold(open, onMore);
        panel.add(Column.own(fold));
        more.setVisible(open);
        panel.add(more);
    }

    static JButton fold(boolean open, Runnable onMore) {
        JButton fold = Ring.button(Texts.of(open ? "editor.card.less" : "editor.card.more"));
        fold.setName("card.more");
        fold.setHorizontalAlignment(JButton.LEFT);
        fold.setMargin(new java.awt.Insets(2, 0, 2, 4)); // the look scales it
        fold.addActionListener(e -> onMore.run());
        return fold;
    }

    /** Over the particulars that belong to the condition that is shown. */
    static String inCondition(SessionState s) {
        return Texts.of(
                "editor.card.in-condition",
                s.shownCondition().map(c -> c.title()).orElse(""));
    }

    private static String title(SessionState s, String item) {
        return s.drawing().links().contains(item) || s.drawing().notes().contains(item) ? "" : item;
    }

    private String title(SessionState s) {
        return title(s, item);
    }

    static JComponent rule() {
        JComponent line = new JComponent() {
            private static final long serialVersionUID = 1L;

            @Override
            protected void paintComponent(Graphics g) {
                g.setColor(Look.line());
                g.fillRect(0, getHeight() / 2, getWidth(), 1);
            }
        };
        line.setPreferredSize(new Dimension(10, Look.px(9)));
        return line;
    }

    /**
     * Shows another state of the same item.
     *
     * @return false if its lines are others now, and a new card is needed
     */
    boolean refresh(SessionState s) {
        if (!rows.refresh(fields(s))) {
            return false;
        }
        fill(s);
        return true;
    }

    private void fill(SessionState s) {
        what.setText(what(s));
        condition.setText(inCondition(s));
        what.setToolTipText(what.getText());
        KeptFocus.through(results, () -> fillResults(s), this::first);
        panel.revalidate();
        panel.repaint();
    }

    private void fillResults(SessionState s) {
        results.removeAll();
        List<ResultRows.Row> shown = ResultRows.of(s, item);
        if (!shown.isEmpty()) {
            results.add(rule());
        }
        for (ResultRows.Row r : shown) {
            results.add(result(r, !s.fresh()));
        }
    }

    private String what(SessionState s) {
        Component c = s.drawing().components().get(item);
        if (c != null) {
            return Texts.of(c.kind().term());
        }
        Cable w = s.drawing().cables().get(item);
        if (w != null) {
            return Texts.of("editor.card.cable", w.from().component(), w.to().component());
        }
        return Texts.of(s.drawing().links().contains(item) ? "editor.card.link" : "editor.card.note");
    }

    private JComponent result(ResultRows.Row r, boolean stale) {
        JPanel line = Flat.clear(new BorderLayout(Look.px(6), 0));
        String name = r.label().startsWith("#")
                ? Texts.of("editor.result.terminal-n", r.label().substring(1))
                : Texts.of("editor.result." + r.label());
        JLabel label = Flat.label(name, Look::quiet, false);
        label.setPreferredSize(new Dimension(FieldRow.labelWidth(width), label.getPreferredSize().height));
        label.setToolTipText(name);
        label.setVerticalAlignment(SwingConstants.TOP);
        Severity severity = r.severity();
        JLabel value = severity == null
                ? Flat.label(r.value(), () -> stale ? Look.quiet() : Look.text(), false)
                : Flat.bold(r.value(), () -> stale ? Look.quiet() : Look.severity(severity));
        value.setName("result." + r.label());
        value.setToolTipText(r.value());
        label.setLabelFor(value);
        int room = width - FieldRow.labelWidth(width) - Look.px(r.figure().isPresent() ? WITH_WORKING : BESIDE);
        line.add(label, BorderLayout.WEST);
        line.add(value.getPreferredSize().width <= room ? value : lines(value, room), BorderLayout.CENTER);
        r.figure().ifPresent(f -> line.add(working(r, name, f), BorderLayout.EAST));
        return line;
    }

    /** A result that is too long for one line of a narrow card. */
    private static WrapText lines(JLabel value, int room) {
        WrapText lines = new WrapText(value.getText(), value::getForeground, value::getFont);
        lines.setName(value.getName());
        lines.setSize(room, Short.MAX_VALUE);
        return lines;
    }

    private JButton working(ResultRows.Row r, String name, Figure figure) {
        JButton b = Ring.button("›");
        b.setName("working." + r.label());
        b.setMargin(new java.awt.Insets(0, 4, 0, 4)); // the look scales it
        b.setToolTipText(Texts.of("editor.working.show", name));
        b.getAccessibleContext().setAccessibleName(b.getToolTipText());
        b.addActionListener(e -> onWorking.accept(figure));
        return b;
    }

    /** Puts the cursor into the field of a particular; opens what is folded away. */
    boolean focus(String name) {
        Optional<FieldRow> r = rows.row(name);
        r.ifPresent(Card::reach);
        return r.isPresent() && r.get().editor().isVisible();
    }

    private static void reach(FieldRow r) {
        r.editor().requestFocusInWindow();
        r.panel().scrollRectToVisible(new java.awt.Rectangle(0, 0, 10, r.panel().getHeight() + Look.px(40)));
    }

    /** Where typing begins: the length of a cable that has none yet, else the first field. */
    Optional<java.awt.Component> first() {
        return rows.row("lengthM")
                .filter(r -> r.field().value() == null)
                .<java.awt.Component>map(FieldRow::editor)
                .or(() -> CanvasKeys.firstField(panel));
    }

    boolean inMore(String name) {
        return rows.has(CardField.Section.MORE, name);
    }
}
