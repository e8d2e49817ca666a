package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.beans.PropertyChangeListener;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.drawing.Message;

/**
 * The line at the foot: what the mouse or the keys can do where they are; or what has just been done or refused. What was
 * told gives way to what can be done when there has been time to read it, or when the keys go elsewhere.
 */
final class StatusLine implements SessionListener {
    /** Where there is room for what can be done and for all of the caution. */
    private static final int ROOMY = 1000;

    /** Where what can be done needs all of the width: the caution stands in a line of its own, both in small letters. */
    private static final int NARROW = 700;

    /** What holds for longer than it takes to read it. */
    private static final Set<String> LASTING = Set.of("editor.say.exporting", "editor.say.copy", "desk.no-journal");

    /** To look there, in milliseconds. */
    private static final int LOOK_MS = 4000;

    /** To read a letter, in milliseconds: an unhurried reader of twelve letters a second. */
    private static final int LETTER_MS = 80;

    private final JPanel panel = Flat.panel(new BorderLayout(Look.px(12), 0), Look::strip);
    private final WrapLine left = new WrapLine(Look::quiet);
    private final JLabel right = Flat.label(" ", Look::quiet, false);
    private final Session session;
    private final Supplier<String> rest;
    private final Timer reading = new Timer(LOOK_MS, e -> giveWay());
    private String hint = "";
    private boolean telling;
    private boolean seen;
    /** Where the keys were last. */
    private @Nullable Object lastPlace;

    /** @param rest what can be done while nothing is being done */
    StatusLine(Session session, Supplier<String> rest) {
        this.session = session;
        this.rest = rest;
        reading.setRepeats(false);
        left.setName("status");
        say(rest.get());
        right.setText(Texts.of("editor.caution.short"));
        right.setToolTipText(Texts.of("editor.caution.short"));
        panel.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                room(panel.getWidth());
            }
        });
        panel.add(left, BorderLayout.CENTER);
        panel.add(right, BorderLayout.EAST);
        rim(4);
        session.listen(this);
    }

    private void rim(int high) {
        panel.setBorder(Flat.lines(1, 0, 0, 0, new Insets(Look.px(high), Look.px(12), Look.px(high), Look.px(12))));
    }

    private void room(int width) {
        right.setText(Texts.of(width >= Look.px(ROOMY) ? "editor.caution.short" : "editor.caution.shortest"));
        boolean narrow = width < Look.px(NARROW);
        if (narrow != left.small()) {
            left.small(narrow);
            right.setFont(narrow ? Look.small() : Look.font());
            rim(narrow ? 1 : 4);
            panel.add(right, narrow ? BorderLayout.SOUTH : BorderLayout.EAST);
            panel.revalidate();
        }
    }

    JPanel panel() {
        return panel;
    }

    /** @param window all that lies in it: when the keys go from one place in it to another, the line follows */
    void follow(Component window) {
        PropertyChangeListener watch = e -> {
            boolean away = e.getOldValue() instanceof Component c && SwingUtilities.isDescendingFrom(c, window);
            boolean here = e.getNewValue() instanceof Component c && SwingUtilities.isDescendingFrom(c, window);
            if (away) {
                keysLeave(e.getOldValue());
            }
            if (here) {
                keysCame(e.getNewValue());
            }
        };
        window.addHierarchyListener(e -> {
            KeyboardFocusManager all = KeyboardFocusManager.getCurrentKeyboardFocusManager();
            all.removePropertyChangeListener(Parts.OWNER, watch);
            if (window.isDisplayable()) {
                all.addPropertyChangeListener(Parts.OWNER, watch);
            } else {
                reading.stop();
            }
        });
    }

    /** The keys are about to leave a place: what is told from now on, such as why a field can't be taken, is new. */
    void keysLeave(Object place) {
        lastPlace = place;
        seen = telling;
    }

    /**
     * The keys have come to a place: what was told before they left the last one gives way. Where they come back to where
     * they were, as after a menu, they have gone nowhere.
     */
    void keysCame(Object place) {
        if (seen && telling && !place.equals(lastPlace)) {
            giveWay();
        }
    }

    /** Gives what has just been told its time to be read. */
    Timer reading() {
        return reading;
    }

    /** @param text what can be done now; "" for what can be done at rest, which then stands in place of what was told */
    void hint(String text) {
        if (text.equals(rest.get())) {
            rest(); // the mouse came over the empty sheet, as after a choice in a menu: that displaces nothing
            return;
        }
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

    private void giveWay() {
        Message told = session.state().notice();
        if (telling && (told == null || !LASTING.contains(told.key()))) {
            session.say(null);
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
            String text = Texts.title(FieldRow.spoken(notice));
            say(text);
            telling = true;
            seen = false;
            reading.setInitialDelay(LOOK_MS + LETTER_MS * text.length());
            reading.restart();
        } else if (notice == null && before.notice() != null) {
            telling = false;
            reading.stop();
            say(shown());
        }
    }
}
