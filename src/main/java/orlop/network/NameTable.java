package orlop.network;

/** Finds the number of a name among numbered ones: open addressing on the names' own hash codes. Immutable. */
final class NameTable {
    private final String[] names;
    private final int[] numbers; // by place: number of the name that stands there, plus one; 0 where there is none

    /** @param names all different; kept as they are */
    NameTable(String[] names) {
        this.names = names;
        numbers = new int[Math.max(4, Integer.highestOneBit(names.length) * 4)];
        for (int i = 0; i < names.length; i++) {
            int at = first(names[i]);
            while (numbers[at] != 0) {
                at = next(at);
            }
            numbers[at] = i + 1;
        }
    }

    private int first(String name) {
        int hash = name.hashCode() * 0x9E3779B9; // spreads names that differ in their last digits only
        return (hash ^ hash >>> 16) & (numbers.length - 1);
    }

    private int next(int at) {
        return (at + 1) & (numbers.length - 1);
    }

    /** The number of a name; −1 if it has none. */
    int of(String name) {
        for (int at = first(name); numbers[at] != 0; at = next(at)) {
            if (names[numbers[at] - 1].equals(name)) {
                return numbers[at] - 1;
            }
        }
        return -1;
    }
}
