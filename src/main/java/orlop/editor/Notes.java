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
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
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
    private List<FindingPlaces.Numbered> here = List.of();
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
        panel.removeAll();
    }

    /**
     * Shows the notes of a state. A note that says the same as before is the same, so that it may be pressed or read while
     * figures come.
     *
     * @param still each note keeps the place in which it stands, and what is new comes behind
     */
    void show(SessionState s, boolean still) {
        Finding pointed = pointing.finding();
        Component owner = keys();
        int worked = worked(owner);
        List<StillNotes.Part> before = StillNotes.parts(panel);
        Optional<NoteView> lit = views.stream().filter(v -> is(v, pointed)).findFirst();
        List<StillNotes.Part> now = StillNotes.arrange(still ? before : List.of(), parts(s, before));
        views.clear();
        now.forEach(p -> {
            if (p.component() instanceof NoteView v) {
                views.add(v);
            }
        });
        fill(now.stream().map(StillNotes.Part::component).toList());
        pointing.at(lit.filter(views::contains).map(v -> v.numbered().finding()).orElse(null));
        if (worked >= 0) { // the keys stay among the notes, or go back to the sheet with the last of them
            boolean stays = owner != null && SwingUtilities.isDescendingFrom(owner, panel);
            boolean last = s.fresh();
            pending = stays ? -1 : worked;
            if (!stays) {
                SwingUtilities.invokeLater(() -> focus(worked, last));
            }
        }
    }

    @SuppressWarnings("ReferenceEquality") // two findings may say the same of two places
    private static boolean is(NoteView v, @Nullable Finding f) {
        return v.numbered().finding() == f;
    }

    /** What stands there already isn't taken out: it has the keys, or the mouse is pressed on it. */
    private void fill(List<JComponent> wanted) {
        if (List.of(panel.getComponents()).equals(wanted)) {
            return;
        }
        Set<JComponent> all = Collections.newSetFromMap(new IdentityHashMap<>());
        all.addAll(wanted);
        for (Component c : panel.getComponents()) {
            if (c instanceof JComponent j && !all.contains(j)) {
                panel.remove(j);
            }
        }
        for (int i = 0; i < wanted.size(); i++) {
            JComponent c = wanted.get(i);
            if (c.getParent() != panel) {
                panel.add(c, i);
            } else if (panel.getComponent(i) != c) {
                panel.setComponentZOrder(c, i);
            }
        }
        panel.revalidate();
        panel.repaint();
    }

    private List<StillNotes.Part> parts(SessionState s, List<StillNotes.Part> before) {
        Map<Object, JComponent> there = new HashMap<>();
        before.forEach(p -> there.put(p.key(), p.component()));
        List<StillNotes.Part> all = new ArrayList<>();
        here = canvas.shown()
                .of(s)
                .map(scene -> FindingPlaces.ofSheet(s, scene))
                .orElseGet(() -> FindingPlaces.ofSheet(s));
        int elsewhere = FindingPlaces.all(s).size() - here.size();
        List<FindingPlaces.Numbered> accepted = canvas.shown()
                .of(s)
                .map(scene -> FindingPlaces.acceptedOfSheet(s, scene))
                .orElse(List.of());
        if (s.review() != null && here.isEmpty()) {
            all.add(words(there, NONE, Texts.of("editor.notes.none")));
        }
        List<FindingPlaces.Numbered> gravest = here.stream()
                .sorted(Comparator.comparingInt(FindingPlaces.Numbered::number))
                .limit(MOST)
                .sorted(Comparator.comparingInt(FindingPlaces.Numbered::label))
                .toList();
        gravest.forEach(n -> all.add(note(there, StillNotes.key(all, n.finding()), n)));
        if (here.size() > MOST) {
            all.add(words(there, MORE, Texts.of("editor.notes.more", here.size() - MOST)));
        }
        if (!accepted.isEmpty()) {
            all.add(words(there, ACCEPTED, Texts.of("editor.notes.accepted", accepted.size())));
        }
        accepted.stream().limit(MOST).forEach(n -> all.add(note(there, StillNotes.key(all, n.finding()), n)));
        if (elsewhere > 0) {
            all.add(words(there, ELSEWHERE, Texts.of("editor.notes.elsewhere", elsewhere)));
        }
        return all;
    }

    /** The notes that speak of an item, of those of the sheet that were shown last. */
    List<FindingPlaces.Numbered> of(String item) {
        return here.stream()
                .filter(n -> n.finding().place().item().equals(item))
                .toList();
    }

    private static StillNotes.Part words(Map<Object, JComponent> there, String key, String words) {
        if (there.get(key) instanceof WrapText t) {
            t.setText(words);
            return StillNotes.part(key, t);
        }
        return StillNotes.part(key, new WrapText(words, Look::quiet, Look::font));
    }

    private StillNotes.Part note(Map<Object, JComponent> there, Object key, FindingPlaces.Numbered n) {
        if (there.get(key) instanceof NoteView v && v.again(n)) {
            return StillNotes.part(key, v);
        }
        NoteView v = new NoteView(n, width, pointing, deeds);
        leaveTheKeys(v);
        return StillNotes.part(key, v);
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

    /** What has the keys of the window, or had them last. */
    private @Nullable Component keys() {
        Window window = SwingUtilities.getWindowAncestor(panel);
        return window == null ? null : window.getMostRecentFocusOwner();
    }

    /** The place of the note that has the keys, or is to have them once the figures are there; −1 for none. */
    private int worked(@Nullable Component owner) {
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

    /** The note of the finding that is pointed at is lit and in sight. */
    void light() {
        panel.repaint();
        Finding f = pointing.finding();
        for (NoteView v : views) {
            boolean lit = f != null && v.numbered().finding().equals(f);
            if (lit && !v.under()) { // nothing moves away from under the mouse; after what has been shown above it
                // has found its height
                SwingUtilities.invokeLater(() -> {
                    if (v.getParent() != null) {
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
