package orlop;

import java.util.List;

/** The rooms of the house, in their order: a room may use only those before it. */
final class Rooms {
    static final List<String> ALL = List.of(
            "drawing",
            "standards",
            "network",
            "study",
            "findings",
            "symbols",
            "layout",
            "scene",
            "render",
            "store",
            "desk",
            "binder",
            "editor",
            "cli");

    /**
     * Rooms in which nothing stands yet. A rule that finds no class fails, so that a mistyped package can't pass for
     * ever; for these rooms alone it doesn't. Take a room off when its {@code package-info.java} is there: a test
     * insists on it.
     */
    static final List<String> STILL_EMPTY = List.of(
            "standards",
            "network",
            "study",
            "findings",
            "symbols",
            "layout",
            "scene",
            "render",
            "store",
            "desk",
            "binder",
            "editor");

    private Rooms() {}

    static List<String> before(String room) {
        return ALL.subList(0, position(room));
    }

    static List<String> after(String room) {
        return ALL.subList(position(room) + 1, ALL.size());
    }

    private static int position(String room) {
        int position = ALL.indexOf(room);
        if (position < 0) {
            throw new IllegalArgumentException("no such room: " + room);
        }
        return position;
    }

    /** The rooms with everything below them, as package patterns of ArchUnit. */
    static String[] packages(String root, List<String> rooms) {
        return rooms.stream().map(room -> packages(root, room)).toArray(String[]::new);
    }

    static String packages(String root, String room) {
        position(room);
        return root + "." + room + "..";
    }
}
