package orlop.editor;

import java.util.Comparator;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * What the checker says of the item whose card is shown, by mark and title at the head of its card: its notes may stand
 * far below among those of the sheet. A click brings the note into sight.
 */
final class OwnNotes {
    /** So many are named. */
    static final int MOST = 3;

    private static final int MARK = 18;

    private final Pointing pointing;
    private final JPanel panel = Flat.clear(new Column(0, 0));
    private List<FindingPlaces.Numbered> shown = List.of();
    private int width;

    OwnNotes(Pointing pointing) {
        this.pointing = pointing;
        panel.setName("card.notes");
        panel.setVisible(false);
    }

    JComponent panel() {
        return panel;
    }

    /**
     * @param own the notes of the item, as they stand in the margin
     * @param width of the card within its rim, in pixels
     */
    void show(List<FindingPlaces.Numbered> own, int width) {
        if (own.equals(shown) && this.width == width) {
            return;
        }
        shown = own;
        this.width = width;
        panel.removeAll();
        panel.setLayout(new Column(width, 0));
        List<FindingPlaces.Numbered> gravest = own.stream()
                .sorted(Comparator.comparingInt(FindingPlaces.Numbered::number))
                .toList();
        gravest.stream().limit(MOST).forEach(n -> panel.add(line(n)));
        if (own.size() > MOST) {
            String more = Texts.of("editor.card.notes.more", own.size() - MOST);
            panel.add(new WrapText(more, Look::quiet, Look::small));
        }
        panel.setVisible(!own.isEmpty());
        panel.revalidate();
        panel.repaint();
    }

    private JButton line(FindingPlaces.Numbered n) {
        String title = Texts.title(n.finding().title());
        JButton line = Ring.button(title);
        line.setName("card.note." + n.number());
        line.setIcon(new SeverityIcon(n.finding().severity(), Integer.toString(n.label()), Look.px(MARK), false));
        line.setIconTextGap(Look.px(6));
        line.setHorizontalAlignment(JButton.LEFT);
        line.setMargin(new java.awt.Insets(1, 0, 1, 0));
        line.setToolTipText(title);
        line.getAccessibleContext().setAccessibleName(Texts.of("editor.card.notes.line", n.label(), title));
        line.setRequestFocusEnabled(false);
        line.addActionListener(e -> {
            pointing.at(null);
            pointing.at(n.finding()); // lights it and brings it into sight
        });
        return line;
    }
}
