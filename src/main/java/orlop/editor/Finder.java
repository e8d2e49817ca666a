package orlop.editor;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import orlop.desk.SessionState;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;

/** Finds components and cables by what a person types: a tag first, then the beginning of one, then any words. */
final class Finder {
    private Finder() {}

    static Optional<String> find(SessionState s, String typed) {
        String t = typed.strip().toLowerCase(Locale.ROOT);
        if (t.isEmpty()) {
            return Optional.empty();
        }
        Drawing d = s.drawing();
        return Stream.of(
                        ids(d).filter(id -> lower(id).equals(t)),
                        ids(d).filter(id -> lower(id).startsWith(t)),
                        ids(d).filter(id -> lower(words(d, id)).contains(t)))
                .flatMap(Stream::sequential)
                .findFirst();
    }

    private static Stream<String> ids(Drawing d) {
        return Stream.concat(
                d.components().stream().map(Component::id), d.cables().stream().map(Cable::id));
    }

    private static String words(Drawing d, String id) {
        Component c = d.components().get(id);
        if (c != null) {
            return id + " " + c.name() + " " + Texts.of(c.kind().term());
        }
        return id + " " + d.cables().find(id).map(Cable::name).orElse("");
    }

    private static String lower(String s) {
        return s.toLowerCase(Locale.ROOT);
    }

    /** The sheet of a component, or of the end at which a cable starts. */
    static String sheet(Drawing d, String id) {
        Cable w = d.cables().get(id);
        Component c = d.components().get(w == null ? id : w.from().component());
        return c == null ? "" : c.place().sheet();
    }
}
