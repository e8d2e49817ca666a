package orlop.layout;

import java.util.Collections;
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
        /** Equal, in the same order too. */
        boolean sameAs(Question o) {
            return connections.equals(o.connections)
                    && List.copyOf(placed.values()).equals(List.copyOf(o.placed.values()))
                    && area.equals(o.area)
                    && blocked.equals(o.blocked);
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
