package orlop.layout;

import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The ways of a sheet, and what each of them hangs on. Immutable. */
public final class Routing {
    private final Question question;
    private final Map<String, Step> steps;
    private final Map<String, Way> ways;

    Routing(Question question, Map<String, Step> steps) {
        this.question = question;
        this.steps = steps;
        Map<String, Way> all = new LinkedHashMap<>();
        steps.forEach((id, s) -> all.put(id, s.way));
        ways = Collections.unmodifiableMap(all);
    }

    /** What was to be routed: the components by id, the connections that have both ends among them, the sheet. */
    record Question(
            Map<String, Placed> placed, List<Connection> connections, TapPlan plan, Rect area, List<Rect> blocked) {
        /** Whether this is asked: equal as far as lines hang on it, in the same order too. */
        boolean asks(Map<String, Placed> components, List<Connection> wanted, Rect within, List<Rect> around) {
            return connections.equals(wanted)
                    && sameStand(placed, components)
                    && area.equals(within)
                    && blocked.equals(around);
        }

        private static boolean sameStand(Map<String, Placed> a, Map<String, Placed> b) {
            if (a.size() != b.size()) {
                return false;
            }
            Iterator<Placed> others = b.values().iterator();
            for (Placed p : a.values()) {
                Placed q = others.next();
                if (!p.id().equals(q.id()) || !p.standsAs(q)) {
                    return false;
                }
            }
            return true;
        }
    }

    /**
     * One decision.
     *
     * @param way that was found
     * @param straight whether it was found before the search
     * @param seen where it was looked: nothing that changes elsewhere changes the decision
     */
    record Step(Way way, boolean straight, Rect seen) {}

    /** By id of the connection, in the order in which they were given. */
    public Map<String, Way> ways() {
        return ways;
    }

    Question question() {
        return question;
    }

    Map<String, Step> steps() {
        return steps;
    }
}
