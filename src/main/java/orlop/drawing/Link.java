package orlop.drawing;

import org.jspecify.annotations.Nullable;

/**
 * A direct connection without impedance: bolted, a strap of at most 0.3 m, or inside one enclosure.
 *
 * @param id given in the file, or {@code FROM~TO}
 * @param from one terminal
 * @param to the other
 * @param lengthM counted along the run to the first device, 0 or more
 * @param ratingA continuous rating, not known if null
 * @param extras keys that this version does not know
 */
public record Link(
        String id,
        TerminalRef from,
        TerminalRef to,
        double lengthM,
        @Nullable Double ratingA,
        Extras extras) {
    /** Two terminals of the longest, the dots in them, and what stands between. */
    private static final int LONGEST_ID = 2 * (64 + 1 + 64) + 1;

    public Link {
        Checks.id(id, LONGEST_ID, "id");
        Checks.notNegative(lengthM, "lengthM");
        Checks.positiveOrUnknown(ratingA, "ratingA");
        if (from.equals(to)) {
            throw new Checks.OutOfRange(
                    "to",
                    Message.of("drawing.range.both-ends", "to", to.toString()),
                    "link starts and ends at " + from);
        }
    }

    /** A link of no length between two terminals. */
    public static Link of(TerminalRef from, TerminalRef to) {
        return new Link(idOf(from, to), from, to, 0, null, Extras.NONE);
    }

    /** The id of a link that was given none. */
    public static String idOf(TerminalRef from, TerminalRef to) {
        return from + "~" + to;
    }

    /** This link between other terminals. An id that was given stays; one that was made of the terminals follows. */
    public Link withEnds(TerminalRef f, TerminalRef t) {
        return new Link(id.equals(idOf(from, to)) ? idOf(f, t) : id, f, t, lengthM, ratingA, extras);
    }
}
