package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Decides which ways of an earlier routing hold still. The ways are found in the same order again; at each, all places are
 * known in which the sheet differs from what it was at this moment the last time. If none of them lies where the earlier
 * decision looked, it would fall out the same.
 */
final class Replay {
    private final Map<String, Routing.Step> before;
    private final Map<String, Connection> connections = new HashMap<>();
    private final Changes changes = new Changes();

    private Replay(Map<String, Routing.Step> before) {
        this.before = before;
    }

    static Replay of(@Nullable Routing routing, Routing.Question now) {
        if (routing == null
                || !routing.question().area().equals(now.area())
                || !routing.question().blocked().equals(now.blocked())) {
            return new Replay(Map.of());
        }
        Replay r = new Replay(routing.steps());
        r.compareComponents(routing.question().placed(), now.placed());
        r.comparePlans(routing.question(), now);
        return r.compareConnections(routing.question(), now) ? r : new Replay(Map.of());
    }

    private void compareComponents(Map<String, Placed> was, Map<String, Placed> is) {
        was.forEach((id, p) -> {
            Placed q = is.get(id);
            if (q == null || !p.standsAs(q)) {
                covers(p);
            }
        });
        is.forEach((id, q) -> {
            Placed p = was.get(id);
            if (p == null || !p.standsAs(q)) {
                covers(q);
            }
        });
    }

    /** Where a bar keeps other spots than before, all that looked at it is decided anew. */
    private void comparePlans(Routing.Question was, Routing.Question is) {
        is.placed().forEach((id, p) -> {
            Rect bar = p.bar();
            if (bar != null && !was.plan().of(id).equals(is.plan().of(id))) {
                changes.add(bar);
            }
        });
    }

    private void covers(Placed p) {
        changes.add(p.ink());
        changes.add(LabelZone.of(p));
    }

    /** False if the connections stand in another order: then nothing can be kept. */
    private boolean compareConnections(Routing.Question was, Routing.Question is) {
        Map<String, Connection> old = new HashMap<>();
        was.connections().forEach(c -> old.put(c.id(), c));
        List<String> common = new ArrayList<>();
        for (Connection c : is.connections()) {
            Connection o = old.get(c.id());
            if (o != null) {
                common.add(c.id());
                if (o.equals(c) && sameEnds(was, is, c)) {
                    connections.put(c.id(), c);
                }
            }
        }
        int next = 0;
        for (Connection o : was.connections()) {
            if (!connections.containsKey(o.id())) {
                changes.add(Objects.requireNonNull(before.get(o.id())).way());
            }
            if (next < common.size() && common.get(next).equals(o.id())) {
                next++;
            }
        }
        return next == common.size();
    }

    private static boolean sameEnds(Routing.Question was, Routing.Question is, Connection c) {
        for (String id : List.of(c.from().component(), c.to().component())) {
            Placed p = was.placed().get(id);
            Placed q = is.placed().get(id);
            if (p == null || q == null || !p.standsAs(q)) {
                return false;
            }
        }
        return true;
    }

    /** The earlier decision on a connection, if it holds still. */
    Routing.@Nullable Step kept(Connection c) {
        Routing.Step step = connections.containsKey(c.id()) ? before.get(c.id()) : null;
        return step == null || changes.touch(step.seen()) ? null : step;
    }

    /** Is told of a connection that cannot run straight: if it did before, its line is missing from now on. */
    void notStraight(Connection c) {
        Routing.Step old = before.get(c.id());
        if (old != null && old.straight()) {
            changes.add(old.way());
        }
    }

    /** Is told each way that was found anew. */
    void found(String id, Way way) {
        if (before.isEmpty()) {
            return;
        }
        Routing.Step old = connections.containsKey(id) ? before.get(id) : null;
        if (old == null) {
            changes.add(way);
        } else if (!old.way().equals(way)) {
            changes.add(old.way());
            changes.add(way);
        }
    }
}
