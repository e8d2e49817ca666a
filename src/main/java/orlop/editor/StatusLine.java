package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JPanel;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.drawing.Message;

/** The line at the foot: what the mouse or the keys can do where they are; or what has just been done or refused. */
final class StatusLine implements SessionListener {
    /** Where there is room for what can be done and for all of the caution. */
    private static final int ROOMY = 1000;

    private final JPanel panel = Flat.panel(new BorderLayout(Look.px(12), 0), Look::strip);
    private final JLabel left = Flat.label(" ", Look::quiet, false);
    private final JLabel right = Flat.label(" ", Look::quiet, false);
    private final Supplier<String> rest;
    private String hint = "";
    private boolean telling;

    /** @param rest what can be done while nothing is being done */
    StatusLine(Session session, Supplier<String> rest) {
        this.rest = rest;
        left.setName("status");
        say(rest.get());
        right.setText(Texts.of("editor.caution.short"));
        right.setToolTipText(Texts.of("editor.caution.short"));
        panel.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                boolean roomy = panel.getWidth() >= Look.px(ROOMY);
                right.setText(Texts.of(roomy ? "editor.caution.short" : "editor.caution.shortest"));
            }
        });
        left.setMinimumSize(new java.awt.Dimension(0, 0));
        panel.add(left, BorderLayout.CENTER);
        panel.add(right, BorderLayout.EAST);
        panel.setBorder(Flat.lines(1, 0, 0, 0, new Insets(Look.px(4), Look.px(12), Look.px(4), Look.px(12))));
        session.listen(this);
    }

    JPanel panel() {
        return panel;
    }

    void hint(String text) {
        hint = text;
        telling = false;
        say(shown());
    }

    /** Nothing is being done any more; what has just been said, such as of a file that was written, stays readable. */
    void rest() {
        hint = "";
        if (!telling) {
            say(shown());
        }
    }

    private void say(String text) {
        left.setText(text);
        left.setToolTipText(text); // in a narrow window it is cut
    }

    private String shown() {
        return hint.isEmpty() ? rest.get() : hint;
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        Message notice = after.notice();
        if (notice != null && !Same.object(notice, before.notice())) { // said again, it is shown again
            say(Texts.title(notice));
            telling = true;
        } else if (notice == null && before.notice() != null) {
            telling = false;
            say(shown());
        }
    }
}
