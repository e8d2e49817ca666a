package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPanel;
import orlop.findings.Finding;

/**
 * Notes that keep their places while the mouse is among them. A cure takes its note away and may change those below; if
 * they moved up, the next click would press the cure of another.
 */
final class StillNotes {
    private static final String KEY = "orlop.part-of-notes";

    private StillNotes() {}

    /**
     * One thing among the notes.
     *
     * @param key what it is, whatever it says
     */
    record Part(Object key, JComponent component) {}

    /**
     * What a finding is about, so that it is known again after an edit.
     *
     * @param nth place among those that are alike otherwise
     */
    record Key(String rule, String item, boolean atFrom, boolean accepted, int nth) {}

    static Part part(Object key, JComponent c) {
        c.putClientProperty(KEY, key);
        return new Part(key, c);
    }

    /** @param above those that stand above */
    static Key key(List<Part> above, Finding f) {
        int nth = 0;
        while (true) {
            Key key = new Key(f.rule(), f.place().item(), f.place().atFrom(), f.accepted(), nth++);
            if (above.stream().noneMatch(p -> p.key().equals(key))) {
                return key;
            }
        }
    }

    /** What stands in a column now. */
    static List<Part> parts(JPanel column) {
        List<Part> all = new ArrayList<>();
        for (Component c : column.getComponents()) {
            if (c instanceof JComponent j && j.getClientProperty(KEY) != null) {
                all.add(new Part(j.getClientProperty(KEY), j));
            }
        }
        return all;
    }

    /**
     * Puts what is to be shown where it stood before, at least as high as it was; what is gone leaves its place empty, and
     * what is new comes at the end.
     *
     * @param before what stands there, laid out; empty if nothing needs to keep its place
     */
    static List<Part> arrange(List<Part> before, List<Part> now) {
        Map<Object, Part> left = new LinkedHashMap<>();
        now.forEach(p -> {
            left.put(p.key(), p);
            Column.atLeast(p.component(), 0);
        });
        List<Part> all = new ArrayList<>();
        for (Part old : before) {
            Part same = left.remove(old.key());
            Part here = same != null ? same : part(old.key(), gone(old, words(old.key(), before, now)));
            Column.atLeast(here.component(), old.component().getHeight());
            all.add(here);
        }
        all.addAll(left.values());
        return all;
    }

    /** The key of what is said of a note that has left its place: it may have become one of the other sort. */
    private static String words(Object key, List<Part> before, List<Part> now) {
        if (key instanceof Key k) {
            Key other = new Key(k.rule(), k.item(), k.atFrom(), !k.accepted(), k.nth());
            if (among(now, other) && !among(before, other)) {
                return k.accepted() ? "editor.notes.opened-again" : "editor.notes.now-accepted";
            }
        }
        return "editor.notes.gone";
    }

    private static boolean among(List<Part> parts, Object key) {
        return parts.stream().anyMatch(p -> p.key().equals(key));
    }

    /** The place of what is there no longer. */
    private static final class Gone extends JPanel {
        private static final long serialVersionUID = 1L;

        Gone(String words) {
            super(new BorderLayout());
            setOpaque(false);
            setBorder(Flat.rim(6, 34, 0, 6));
            add(new WrapText(words, Look::quiet, Look::font), BorderLayout.NORTH);
        }
    }

    private static JComponent gone(Part old, String words) {
        if (old.component() instanceof Gone g) {
            return g;
        }
        return new Gone(
                old.component() instanceof NoteView v
                        ? Texts.of(words, Texts.title(v.numbered().finding().title()))
                        : "");
    }
}
