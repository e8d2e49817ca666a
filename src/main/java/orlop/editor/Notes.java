package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import orlop.desk.SessionState;
import orlop.findings.Finding;

/** The checker's notes on the sheet that is shown, one below the other. */
final class Notes {
    private static final String NONE = "none";
    private static final String ACCEPTED = "accepted";
    private static final String ELSEWHERE = "elsewhere";
    private static final String MORE = "more";

    /** So many notes stand in the margin at most: nobody reads more of them there, and each takes its time to be made. */
    static final int MOST = 40;

    private final SheetCanvas canvas;
    private final Pointing pointing;
    private final NoteView.Deeds deeds;
    private final Runnable onPressed;
    private final JPanel panel = Flat.clear(new BorderLayout());
    private final List<NoteView> views = new ArrayList<>();
    private int width;
    private int pending = -1;

    /** @param onPressed told when the mouse is pressed on a note */
    Notes(SheetCanvas canvas, Pointing pointing, NoteView.Deeds deeds, Runnable onPressed) {
        this.onPressed = onPressed;
        this.canvas = canvas;
        this.pointing = pointing;
        this.deeds = deeds;
        panel.setName("notes");
        pointing.listen(this::light);
    }

    JPanel panel() {
        return panel;
    }

    /** @param width of a note, in pixels */
    void width(int width) {
        this.width = width;
        panel.setLayout(new Column(width, Look.px(4)));
    }

    /**
     * Shows the notes of a state.
     *
     * @param still each note keeps the place in which it stands, and what is new comes behind
     */
    void show(SessionState s, boolean still) {
        int worked = worked();
        List<StillNotes.Part> before = still ? StillNotes.parts(panel) : List.of();
        panel.removeAll();
        views.clear();
        pointing.at(null);
        for (StillNotes.Part p : StillNotes.arrange(before, parts(s))) {
            if (p.component() instanceof NoteView v) {
                views.add(v);
            }
            panel.add(p.component());
        }
        panel.revalidate();
        panel.repaint();
        if (worked >= 0) { // the keys stay among the notes, or go back to the sheet with the last of them
            pending = worked;
            boolean last = s.fresh();
            SwingUtilities.invokeLater(() -> focus(worked, last));
        }
    }

    private List<StillNotes.Part> parts(SessionState s) {
        List<StillNotes.Part> all = new ArrayList<>();
        List<FindingPlaces.Numbered> here = canvas.shown()
                .of(s)
                .map(scene -> FindingPlaces.ofSheet(s, scene))
                .orElseGet(() -> FindingPlaces.ofSheet(s));
        int elsewhere = FindingPlaces.all(s).size() - here.size();
        List<FindingPlaces.Numbered> accepted = canvas.shown()
                .of(s)
                .map(scene -> FindingPlaces.acceptedOfSheet(s, scene))
                .orElse(List.of());
        if (s.review() != null && here.isEmpty()) {
            all.add(StillNotes.part(NONE, words(Texts.of("editor.notes.none"))));
        }
        List<FindingPlaces.Numbered> gravest = here.stream()
                .sorted(Comparator.comparingInt(FindingPlaces.Numbered::number))
                .limit(MOST)
                .sorted(Comparator.comparingInt(FindingPlaces.Numbered::label))
                .toList();
        gravest.forEach(n -> all.add(StillNotes.part(all, view(n))));
        if (here.size() > MOST) {
            all.add(StillNotes.part(MORE, words(Texts.of("editor.notes.more", here.size() - MOST))));
        }
        if (!accepted.isEmpty()) {
            all.add(StillNotes.part(ACCEPTED, words(Texts.of("editor.notes.accepted", accepted.size()))));
        }
        accepted.stream().limit(MOST).forEach(n -> all.add(StillNotes.part(all, view(n))));
        if (elsewhere > 0) {
            all.add(StillNotes.part(ELSEWHERE, words(Texts.of("editor.notes.elsewhere", elsewhere))));
        }
        return all;
    }

    private static WrapText words(String words) {
        return new WrapText(words, Look::quiet, Look::font);
    }

    private NoteView view(FindingPlaces.Numbered n) {
        NoteView v = new NoteView(n, width, pointing, deeds);
        leaveTheKeys(v);
        return v;
    }

    /** Who works with the mouse goes on with the mouse; what is typed elsewhere is taken first. */
    private void leaveTheKeys(Component c) {
        c.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                onPressed.run();
            }
        });
        if (c instanceof AbstractButton b) {
            b.setRequestFocusEnabled(false);
        } else if (c instanceof Container inner) {
            for (Component child : inner.getComponents()) {
                leaveTheKeys(child);
            }
        }
    }

    /** Whether the keys are at a note. */
    boolean haveTheKeys() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, panel);
    }

    /** The place of the note that has the keys, or is to have them once the figures are there; −1 for none. */
    private int worked() {
        Window window = SwingUtilities.getWindowAncestor(panel);
        Component owner = window == null ? null : window.getMostRecentFocusOwner();
        int at = owner == null ? -1 : indexOf(owner);
        return at >= 0 ? at : pending;
    }

    private void focus(int index, boolean last) {
        if (views.isEmpty()) {
            canvas.requestFocusInWindow();
        } else {
            views.get(Math.min(index, views.size() - 1)).requestFocusInWindow();
        }
        if (last) {
            pending = -1;
        }
    }

    private int indexOf(Component inNote) {
        for (int i = 0; i < views.size(); i++) {
            if (SwingUtilities.isDescendingFrom(inNote, views.get(i))) {
                return i;
            }
        }
        return -1;
    }

    /** The note of the finding that is pointed at, else the first; empty if there is none. */
    Optional<Component> first() {
        Finding f = pointing.finding();
        return views.stream()
                .filter(v -> v.numbered().finding().equals(f))
                .findFirst()
                .or(() -> views.stream().findFirst())
                .map(v -> v);
    }

    private void light() {
        panel.repaint();
        Finding f = pointing.finding();
        for (NoteView v : views) {
            boolean lit = f != null && v.numbered().finding().equals(f);
            if (lit && !v.under()) { // nothing moves away from under the mouse; after what has been shown above it
                // has found its height
                SwingUtilities.invokeLater(() -> {
                    if (v.getParent() != null && !v.getVisibleRect().equals(new Rectangle(v.getSize()))) {
                        validateAll();
                        v.scrollRectToVisible(new Rectangle(v.getSize()));
                    }
                });
            }
        }
    }

    private void validateAll() {
        Component root = panel;
        while (root.getParent() instanceof javax.swing.JComponent up) {
            root = up;
        }
        root.validate();
    }
}
