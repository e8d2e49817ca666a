package orlop.findings;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Component;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.SwitchPositions;
import orlop.network.Meetings.Meeting;

/** Rules on alternating-current sources that can be joined to one another. */
final class MeetingRules {
    private MeetingRules() {}

    /** Two sources between which no changeover and no interlock stands. */
    static final class TwoSources implements Rule {
        @Override
        public String id() {
            return "sources-can-meet";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (Meeting m : c.meetings()) {
                if (!m.isLoop()) {
                    String place = place(c, m.way());
                    found.add(c.draft(id(), Severity.DANGER, Finding.Place.component(place))
                            .says(
                                    "findings.sources-can-meet.why",
                                    c.named(m.one().id()),
                                    c.named(m.other().id()),
                                    c.named(place),
                                    way(m),
                                    how(c, m))
                            .by("IEC 60364-5-55 551.6, 551.7; ISO 13297", "memory")
                            .done());
                }
            }
            return found;
        }

        /** The bar or board next to the middle of the way; without one, what stands in the middle. */
        private static String place(Case c, List<String> way) {
            String best = way.get(way.size() / 2);
            int least = Integer.MAX_VALUE;
            for (int i = 0; i < way.size(); i++) {
                Component k = c.component(way.get(i));
                boolean bar = k != null && (k.kind() == Kind.BUSBAR || k.kind() == Kind.DISTRIBUTION_BOARD);
                int off = Math.abs(2 * i - way.size() + 1);
                if (bar && off < least) {
                    least = off;
                    best = way.get(i);
                }
            }
            return c.component(best) == null ? way.get(0) : best;
        }

        private static Message how(Case c, Meeting m) {
            if (!m.conditions().isEmpty()) {
                return Message.of("findings.sources-can-meet.joined", c.titles(m.conditions()));
            }
            List<Object> switches = new ArrayList<>();
            for (String tag : m.way()) {
                Component k = c.component(tag);
                if (k != null && !SwitchPositions.of(k.particulars()).isEmpty()) {
                    switches.add(tag);
                }
            }
            return switches.isEmpty()
                    ? Message.of("findings.sources-can-meet.unparted")
                    : Message.of("findings.sources-can-meet.switched", switches);
        }
    }

    /** An inverter with a transfer switch whose output leads back to its own input. */
    static final class OwnInput implements Rule {
        @Override
        public String id() {
            return "feeds-itself";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (Meeting m : c.meetings()) {
                if (m.isLoop()) {
                    found.add(c.draft(
                                    id(),
                                    Severity.DANGER,
                                    Finding.Place.component(m.one().id()))
                            .says("findings.feeds-itself.why", c.named(m.one().id()), way(m))
                            .by("", "common practice")
                            .done());
                }
            }
            return found;
        }
    }

    private static String way(Meeting m) {
        return String.join(" - ", m.way());
    }
}
