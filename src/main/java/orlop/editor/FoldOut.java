package orlop.editor;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import orlop.desk.Session;
import orlop.findings.Finding;

/** What folds out below the sheet: the path to what is selected, or the findings of all sheets. One at a time. */
final class FoldOut {
    private static final int HEIGHT = 210;
    private static final int LEAST = 110;

    private final Settings settings;
    private final CardLayout cards = new CardLayout();
    private final JPanel pages = Flat.clear(cards);
    private final JPanel panel = Flat.panel(new BorderLayout(), Look::card);
    private String open;
    private Runnable onFold = () -> {};

    FoldOut(Session session, Settings settings, Consumer<Finding> onPick) {
        this.settings = settings;
        pages.add(new PathView(session), "path");
        pages.add(new FindingsTable(session, onPick).panel(), "findings");
        panel.setName("fold-out");
        panel.add(handle(), BorderLayout.NORTH);
        panel.add(pages, BorderLayout.CENTER);
        panel.setBorder(Flat.lines(1, 0, 0, 0, new Insets(0, 0, 0, 0)));
        panel.setPreferredSize(new Dimension(400, Look.px(settings.number("fold.height", HEIGHT))));
        open = settings.word("fold", "");
        show();
    }

    /** A strip at the upper edge by which it is made higher or lower. */
    private JComponent handle() {
        JPanel handle = Flat.panel(new BorderLayout(), Look::strip);
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
                JComponent around = (JComponent) panel.getParent();
                int most = around == null ? Integer.MAX_VALUE : around.getHeight() - Look.px(200);
                int height = Math.max(Look.px(LEAST), Math.min(grip - e.getYOnScreen(), most));
                panel.setPreferredSize(new Dimension(400, height));
                panel.revalidate();
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                settings.rememberNumber("fold.height", (int) (panel.getHeight() / Look.scale()));
            }
        };
        handle.addMouseListener(drag);
        handle.addMouseMotionListener(drag);
        return handle;
    }

    JPanel panel() {
        return panel;
    }

    /** @param listener told when another page is shown, or none */
    void onFold(Runnable listener) {
        onFold = listener;
    }

    boolean shows(String page) {
        return open.equals(page);
    }

    /** Opens a page, or folds it away if it is open. */
    void toggle(String page) {
        open = open.equals(page) ? "" : page;
        settings.rememberWord("fold", open);
        show();
        onFold.run();
    }

    private void show() {
        panel.setVisible(!open.isEmpty());
        if (!open.isEmpty()) {
            cards.show(pages, open);
        }
        if (panel.getParent() != null) {
            panel.getParent().revalidate();
        }
    }
}
