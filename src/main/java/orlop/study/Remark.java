package orlop.study;

import orlop.drawing.Message;

/**
 * Something that the study met or assumed: a value that was not known, a network that has no solution.
 *
 * @param kind what sort of thing
 * @param item tag of the component or cable, "" for the whole drawing
 * @param condition id of the condition, "" where it holds in all
 * @param message in words
 */
public record Remark(Kind kind, String item, String condition, Message message) {
    /** What sort of thing a remark is. */
    public enum Kind {
        /** A value was not known, and this one was taken. */
        ASSUMED,
        /** No operating point exists: the load asks for more than the network can carry. */
        COLLAPSE,
        /** Two sources contradict each other, or a loop of converters feeds itself. */
        CONTRADICTION,
        /** Something works beyond what it is rated or permitted for. */
        BEYOND_RATING,
        /** This part of the network is not calculated by this version. */
        NOT_CALCULATED
    }
}
