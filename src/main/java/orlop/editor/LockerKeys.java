package orlop.editor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import orlop.drawing.Group;
import orlop.drawing.Kind;

/**
 * The keys of the locker: the letter of a group opens its drawer, a second letter takes a kind out of it. The second is
 * the first letter of the trade term that no kind before it has taken.
 */
final class LockerKeys {
    private static final Map<Group, List<Row>> ROWS = new EnumMap<>(Group.class);

    static {
        for (Group g : Group.values()) {
            ROWS.put(g, List.copyOf(made(g)));
        }
    }

    /** More than any drawer has. */
    static final int MOST = 100;

    private LockerKeys() {}

    /**
     * A row of a drawer.
     *
     * @param kind what lies there
     * @param letter the second key, lower case
     */
    record Row(Kind kind, char letter) {
        /** Both keys, as they are shown: {@code F B}. */
        String keys() {
            return (kind.group().letters().charAt(0) + " " + letter).toUpperCase(Locale.ROOT);
        }
    }

    static List<Row> rows(Group group) {
        return ROWS.getOrDefault(group, List.of());
    }

    /** The group that this letter opens. */
    static Optional<Group> group(char letter) {
        String l = String.valueOf(letter).toUpperCase(Locale.ROOT);
        return Arrays.stream(Group.values())
                .filter(g -> List.of(g.letters().split(" ")).contains(l))
                .findFirst();
    }

    static Optional<Kind> kind(Group group, char letter) {
        char l = Character.toLowerCase(letter);
        return rows(group).stream().filter(r -> r.letter() == l).map(Row::kind).findFirst();
    }

    private static List<Row> made(Group group) {
        List<Row> rows = new ArrayList<>();
        Set<Character> taken = new HashSet<>();
        for (Kind k : Kind.values()) {
            if (k.group() == group) {
                rows.add(new Row(k, letter(Texts.of(k.term()), taken)));
            }
        }
        return rows;
    }

    private static char letter(String term, Set<Character> taken) {
        for (char c : (term.toLowerCase(Locale.ROOT) + "abcdefghijklmnopqrstuvwxyz").toCharArray()) {
            if (c >= 'a' && c <= 'z' && taken.add(c)) {
                return c;
            }
        }
        throw new IllegalStateException("more kinds than letters");
    }
}
