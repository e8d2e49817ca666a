package orlop.findings;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;

/**
 * Something that a checker would write in the margin.
 *
 * @param rule id of the rule: {@code missing-fuse}
 * @param severity how grave it is
 * @param place where it is
 * @param title a few words
 * @param message why, with the numbers
 * @param cure what would cure it; null if nobody but a person can
 * @param proposed the device to be drawn in dashes at the place; null if none
 * @param clause of the rule set or standard, "" if none
 * @param provenance {@code seen}, {@code memory}, {@code common practice} … of what it rests on
 * @param assumptions what was assumed on the way
 * @param conditions ids of the conditions in which it holds
 * @param acceptedReason why somebody lives with it; null while nobody does
 */
public record Finding(
        String rule,
        Severity severity,
        Place place,
        Message title,
        Message message,
        @Nullable Cure cure,
        @Nullable Proposed proposed,
        String clause,
        String provenance,
        List<Message> assumptions,
        List<String> conditions,
        @Nullable String acceptedReason) {
    /** Two sentences one behind the other. */
    static final String TOGETHER = "findings.one-then-other";

    public Finding {
        assumptions = List.copyOf(assumptions);
        conditions = List.copyOf(conditions);
    }

    /** The keys of the sentences that it says: an acceptance is of these. */
    public List<String> messageKeys() {
        return keys(message);
    }

    /** The key of a sentence; of several sentences one behind the other, the keys of each. */
    static List<String> keys(Message m) {
        if (!m.key().equals(TOGETHER)) {
            return List.of(m.key());
        }
        return m.arguments().stream()
                .flatMap(a -> a instanceof Message part ? keys(part).stream() : Stream.empty())
                .distinct()
                .toList();
    }

    /** Whether somebody lives with it. */
    public boolean accepted() {
        return acceptedReason != null;
    }

    /**
     * Where a finding is: at a component, or on a cable.
     *
     * @param item tag of the component or cable
     * @param isCable which of the two
     * @param atFrom for a cable: the end from which the distance counts; false is {@code to}
     * @param distanceM for a cable: from that end; null for the cable as a whole
     */
    public record Place(
            String item,
            boolean isCable,
            boolean atFrom,
            @Nullable Double distanceM) {
        public static Place component(String tag) {
            return new Place(tag, false, false, null);
        }

        public static Place cable(String tag) {
            return new Place(tag, true, true, null);
        }

        public static Place on(String cable, boolean atFrom, double distanceM) {
            return new Place(cable, true, atFrom, distanceM);
        }
    }

    /**
     * A device that is not there and ought to be.
     *
     * @param family id of a family of the standards room
     * @param ratingA rated current
     * @param breakingKa breaking capacity
     */
    public record Proposed(String family, double ratingA, double breakingKa) {}
}
