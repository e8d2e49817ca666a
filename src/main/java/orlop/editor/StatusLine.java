package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Insets;
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
    private final JPanel panel = Flat.panel(new BorderLayout(), Look::strip);
    private final JLabel left = Flat.label(" ", Look::quiet, false);
    private final JLabel right = Flat.label(" ", Look::quiet, false);
    private final Supplier<String> rest;
    private String hint = "";

    /** @param rest what can be done while nothing is being done */
    StatusLine(Session session, Supplier<String> rest) {
        this.rest = rest;
        left.setName("status");
        left.setText(rest.get());
        right.setText(Texts.of("editor.caution.short"));
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
        left.setText(shown());
    }

    private String shown() {
        return hint.isEmpty() ? rest.get() : hint;
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        Message notice = after.notice();
        if (notice != null && !Same.object(notice, before.notice())) { // said again, it is shown again
            left.setText(Texts.title(notice));
        } else if (notice == null && before.notice() != null) {
            left.setText(shown());
        }
    }
}
