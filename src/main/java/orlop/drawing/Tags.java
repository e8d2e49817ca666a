package orlop.drawing;

import java.util.HashMap;
import java.util.Map;

/** Fresh tags after IEC 81346-2: the letter code of a kind and the least number that is free. */
public final class Tags {
    private Tags() {}

    /** The next free tag of this kind: {@code FC3}. */
    public static String next(Drawing drawing, Kind kind) {
        return next(drawing, kind.letters());
    }

    /** The next free cable tag: {@code W12}. */
    public static String nextCable(Drawing drawing) {
        return next(drawing, "W");
    }

    /** The next free id of a note: {@code N3}. It is no item's tag either, so that one id never stands for two things. */
    public static String nextNote(Drawing drawing) {
        return next(drawing, "N");
    }

    private static String next(Drawing drawing, String letters) {
        return letters + free(drawing, letters, 1);
    }

    private static int free(Drawing drawing, String letters, int least) {
        int n = least;
        while (drawing.hasItem(letters + n) || drawing.notes().contains(letters + n)) {
            n++;
        }
        return n;
    }

    /**
     * The same tags for a drawing to which much is added and from which nothing is taken: what was found taken once isn't
     * asked for again.
     */
    public static final class Run {
        private final Map<String, Integer> least = new HashMap<>();

        /** The next free tag of this kind: {@code FC3}. */
        public String next(Drawing drawing, Kind kind) {
            return next(drawing, kind.letters());
        }

        /** The next free cable tag: {@code W12}. */
        public String nextCable(Drawing drawing) {
            return next(drawing, "W");
        }

        private String next(Drawing drawing, String letters) {
            int n = free(drawing, letters, least.getOrDefault(letters, 1));
            least.put(letters, n);
            return letters + n;
        }
    }

    /** A terminal name of a bar that no cable and no link uses yet: a, b, … z, a1, b1 … */
    public static String freeTap(Drawing drawing, String component) {
        for (int i = 0; ; i++) {
            String name = (char) ('a' + i % 26) + (i < 26 ? "" : Integer.toString(i / 26));
            TerminalRef t = new TerminalRef(component, name);
            if (!used(drawing, t)) {
                return name;
            }
        }
    }

    private static boolean used(Drawing drawing, TerminalRef t) {
        for (Cable w : drawing.cables().values()) {
            if (w.from().equals(t) || w.to().equals(t)) {
                return true;
            }
        }
        for (Link l : drawing.links().values()) {
            if (l.from().equals(t) || l.to().equals(t)) {
                return true;
            }
        }
        return false;
    }
}
