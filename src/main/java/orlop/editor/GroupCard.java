package orlop.editor;

import java.awt.Graphics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import orlop.desk.CardEdits;
import orlop.desk.CardField;
import orlop.desk.CardFields;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Component;
import orlop.drawing.Drawing;

/** The card of several items: the particulars that all of them have. What is set here is set for all, as one step. */
final class GroupCard {
    private final Session session;
    private final Set<String> items;
    private final CardRows rows;
    private final JLabel condition = Flat.quiet("");
    private final JPanel panel;

    GroupCard(Session session, Set<String> items, int width, Drafts drafts, boolean moreOpen, Runnable onMore) {
        this.session = session;
        this.items = items;
        this.panel = new Box(width);
        int inner = width - panel.getInsets().left - panel.getInsets().right;
        this.rows = new CardRows(
                fields(session.state()),
                inner,
                String.join(" ", items),
                drafts,
                new CardRows.Writer(
                        session,
                        (path, v) ->
                                CardEdits.setAll(items, path, v, session.state().condition())));
        build(inner, moreOpen, onMore);
    }

    /** A rounded ground. */
    private static final class Box extends JPanel {
        private static final long serialVersionUID = 1L;

        Box(int width) {
            super(new Column(width, Look.px(4)));
            setOpaque(false);
            setBorder(Flat.rim(10, 14, 12, 14));
            setName("card.several");
        }

        @Override
        protected void paintComponent(Graphics g) {
            Flat.box(this, g, Look.card(), Look.line(), 1f);
        }
    }

    JPanel panel() {
        return panel;
    }

    private List<CardField> fields(SessionState s) {
        return CardFields.common(s.drawing(), items, s.condition());
    }

    private void build(int width, boolean moreOpen, Runnable onMore) {
        JLabel head = Flat.bold(Texts.of("editor.card.several", items.size()), Look::text);
        head.setName("card.several.count");
        panel.add(head);
        panel.add(new WrapText(what(session.state().drawing()), Look::quiet, Look::small));
        panel.add(Card.rule());
        if (rows.isEmpty()) {
            panel.add(new WrapText(Texts.of("editor.card.several.nothing"), Look::quiet, Look::small));
        }
        rows.fill(CardField.Section.MAIN, panel);
        rows.fill(CardField.Section.PARTICULARS, panel);
        if (rows.has(CardField.Section.CONDITION)) {
            panel.add(Card.rule());
            condition.setText(Card.inCondition(session.state()));
            panel.add(condition);
            rows.fill(CardField.Section.CONDITION, panel);
        }
        if (rows.has(CardField.Section.MORE)) {
            JButton fold = Card.fold(moreOpen, onMore);
            panel.add(Column.own(fold));
            JPanel more = Flat.clear(new Column(width, Look.px(4)));
            rows.fill(CardField.Section.MORE, more);
            more.setVisible(moreOpen);
            panel.add(more);
        }
    }

    /** "fuse 3 · cable 2". */
    private String what(Drawing d) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String id : items) {
            counts.merge(kind(d, id), 1, Integer::sum);
        }
        return counts.entrySet().stream()
                .map(e -> Texts.of("editor.card.several.kind", e.getKey(), e.getValue()))
                .collect(Collectors.joining(" · "));
    }

    private static String kind(Drawing d, String id) {
        Component c = d.components().get(id);
        if (c != null) {
            return Texts.of(c.kind().term());
        }
        if (d.cables().contains(id)) {
            return Texts.of("editor.card.cable-word");
        }
        return Texts.of(d.links().contains(id) ? "editor.card.link" : "editor.card.note");
    }

    /**
     * Shows another state of the same items.
     *
     * @return false if a new card is needed
     */
    boolean refresh(SessionState s) {
        condition.setText(Card.inCondition(s));
        return s.selection().equals(items) && rows.refresh(fields(s));
    }
}
