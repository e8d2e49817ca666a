package orlop.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.TerminalRef;

/**
 * What hangs on what: a tree over each joined part of some components, rooted at the bar nearest to a source, else at a
 * source. What closes a ring is no part of it.
 */
final class FeedTree {
    /**
     * A branch of the tree.
     *
     * @param terminal of the component nearer to the root
     * @param end terminal of the component further out
     * @param cable false for a link
     */
    record Branch(TerminalRef terminal, TerminalRef end, boolean cable) {
        String id() {
            return end.component();
        }
    }

    private final Drawing drawing;
    private final Map<String, List<Branch>> joined = new LinkedHashMap<>();
    private final Map<String, List<Branch>> children = new HashMap<>();
    private final Set<String> sources = new HashSet<>();
    private final Set<String> withBar = new HashSet<>();
    private final Set<String> withSource = new HashSet<>();
    private final Set<String> withLoad = new HashSet<>();
    private final List<String> roots = new ArrayList<>();

    /** @param ids components of one sheet; others are passed over, and so is what runs to them */
    FeedTree(Drawing drawing, Set<String> ids) {
        this.drawing = drawing;
        for (Component c : drawing.components().values()) {
            if (ids.contains(c.id())) {
                joined.put(c.id(), new ArrayList<>());
            }
        }
        for (Cable w : drawing.cables().values()) {
            join(w.from(), w.to(), true);
        }
        for (Link l : drawing.links().values()) {
            join(l.from(), l.to(), false);
        }
        Map<String, Integer> away = distances();
        Set<String> seen = new HashSet<>();
        for (String id : joined.keySet()) {
            if (!seen.contains(id)) {
                grow(root(part(id), away), seen);
            }
        }
    }

    private void join(TerminalRef a, TerminalRef b, boolean cable) {
        List<Branch> atA = joined.get(a.component());
        List<Branch> atB = joined.get(b.component());
        if (atA != null && atB != null && atA != atB) {
            atA.add(new Branch(a, b, cable));
            atB.add(new Branch(b, a, cable));
        }
    }

    /** Steps to the nearest source, by component; a sheet link is one where there is nothing better. */
    private Map<String, Integer> distances() {
        Map<String, Integer> away = spread(id -> kind(id).group() == Group.SOURCES);
        spread(id -> kind(id) == Kind.SHEET_LINK).forEach((id, n) -> away.merge(id, n, (own, links) -> own));
        for (String id : joined.keySet()) {
            if (away.getOrDefault(id, 1) == 0) {
                sources.add(id);
            }
        }
        return away;
    }

    private Map<String, Integer> spread(Predicate<String> start) {
        Map<String, Integer> away = new HashMap<>();
        Deque<String> open = new ArrayDeque<>();
        for (String id : joined.keySet()) {
            if (start.test(id)) {
                away.put(id, 0);
                open.add(id);
            }
        }
        while (!open.isEmpty()) {
            String id = open.remove();
            for (Branch b : branches(id)) {
                if (away.putIfAbsent(b.id(), away.getOrDefault(id, 0) + 1) == null) {
                    open.add(b.id());
                }
            }
        }
        return away;
    }

    private List<String> part(String start) {
        List<String> part = new ArrayList<>(List.of(start));
        Set<String> seen = new HashSet<>(part);
        for (int i = 0; i < part.size(); i++) {
            for (Branch b : branches(part.get(i))) {
                if (seen.add(b.id())) {
                    part.add(b.id());
                }
            }
        }
        return part;
    }

    private String root(List<String> part, Map<String, Integer> away) {
        String best = part.get(0);
        for (String id : part) {
            if (worth(id, away) > worth(best, away)) {
                best = id;
            }
        }
        return best;
    }

    /** Bars come first, the nearest to a source before those with the most on them; else a source. */
    private double worth(String id, Map<String, Integer> away) {
        int distance = away.getOrDefault(id, 10_000);
        return (isBar(id) ? 1e9 : 0) - distance * 1e4 + branches(id).size();
    }

    private void grow(String root, Set<String> seen) {
        roots.add(root);
        seen.add(root);
        List<String> order = new ArrayList<>(List.of(root));
        for (int i = 0; i < order.size(); i++) {
            List<Branch> out = new ArrayList<>();
            for (Branch b : branches(order.get(i))) {
                if (seen.add(b.id())) {
                    out.add(b);
                    order.add(b.id());
                }
            }
            children.put(order.get(i), out);
        }
        for (int i = order.size() - 1; i >= 0; i--) {
            String id = order.get(i);
            gather(id, isBar(id), withBar);
            gather(id, sources.contains(id), withSource);
            gather(id, kind(id).group() == Group.LOADS, withLoad);
        }
    }

    private void gather(String id, boolean itself, Set<String> with) {
        if (itself || children(id).stream().anyMatch(b -> with.contains(b.id()))) {
            with.add(id);
        }
    }

    private Kind kind(String id) {
        return component(id).kind();
    }

    Component component(String id) {
        return drawing.components().require(id);
    }

    boolean isBar(String id) {
        return component(id).particulars() instanceof Distribution.Bar;
    }

    private List<Branch> branches(String id) {
        return joined.getOrDefault(id, List.of());
    }

    /** The root of each joined part, in the order of the drawing. */
    List<String> roots() {
        return roots;
    }

    /** What hangs on a component, away from the root. */
    List<Branch> children(String id) {
        return children.getOrDefault(id, List.of());
    }

    /** Whether a bar is at or behind a component. */
    boolean bears(String id) {
        return withBar.contains(id);
    }

    /** Whether power only comes from there: a source, and no load. */
    boolean feeds(String id) {
        return withSource.contains(id) && !withLoad.contains(id);
    }

    /** Steps from a root to the end of the longest branch. */
    int depth() {
        int deepest = 0;
        Map<String, Integer> depth = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(roots);
        while (!open.isEmpty()) {
            String id = open.remove();
            int d = depth.getOrDefault(id, 0);
            deepest = Math.max(deepest, d);
            for (Branch b : children(id)) {
                depth.put(b.id(), d + 1);
                open.add(b.id());
            }
        }
        return deepest;
    }
}
