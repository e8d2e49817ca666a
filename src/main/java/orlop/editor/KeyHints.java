package orlop.editor;

import java.util.Optional;
import orlop.desk.SessionState;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.SwitchPositions;

/** What the status line says while nothing is being done: what the mouse can do, or the keys, whichever was used last. */
final class KeyHints {
    private KeyHints() {}

    static String atRest(SessionState s, boolean keys) {
        Optional<String> id = s.soleSelection();
        if (!keys) {
            return id.filter(w -> lengthless(s.drawing(), w))
                    .map(w -> Texts.of("editor.hint.rest-length", w))
                    .orElseGet(() -> Texts.of("editor.hint.rest"));
        }
        if (id.isEmpty()) {
            return Texts.of(s.selection().isEmpty() ? "editor.hint.keys.rest" : "editor.hint.keys.several");
        }
        return Texts.of("editor.hint.keys." + kind(s.drawing(), id.get()), id.get());
    }

    /** Whether another selection says something else. */
    static boolean follow(SessionState s, boolean keys) {
        return keys
                || s.selection().isEmpty()
                || s.soleSelection().filter(w -> lengthless(s.drawing(), w)).isPresent();
    }

    /** What has just been drawn wants its length next. */
    private static boolean lengthless(Drawing d, String id) {
        Cable w = d.cables().get(id);
        return w != null && w.lengthM() == null;
    }

    private static String kind(Drawing d, String id) {
        if (d.cables().contains(id)) {
            return "cable";
        }
        if (d.notes().contains(id)) {
            return "note";
        }
        Component c = d.components().get(id);
        if (c == null) {
            return "link";
        }
        if (c.locked()) {
            return "locked";
        }
        if (c.particulars() instanceof Distribution.Bar) {
            return "bar";
        }
        if (c.particulars() instanceof Distribution.SheetLink) {
            return "sheet-link";
        }
        return SwitchPositions.of(c.particulars()).isEmpty() ? "component" : "switch";
    }
}
