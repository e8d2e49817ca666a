package orlop.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Note;
import orlop.drawing.TerminalRef;

/** What belongs together with what is selected. */
public final class Selecting {
    private Selecting() {}

    /** Everything on this sheet of the kinds that are selected: all fuses, all cables, all notes. */
    public static Set<String> ofKind(Drawing d, String sheet, Set<String> ids) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        ids.forEach(id -> d.components().find(id).map(Component::kind).ifPresent(kinds::add));
        Set<String> all = new LinkedHashSet<>();
        d.components().stream()
                .filter(c -> kinds.contains(c.kind()) && c.place().sheet().equals(sheet))
                .forEach(c -> all.add(c.id()));
        if (ids.stream().anyMatch(d.cables()::contains)) {
            d.cables().stream().filter(w -> on(d, sheet, w.from())).forEach(w -> all.add(w.id()));
        }
        if (ids.stream().anyMatch(d.links()::contains)) {
            d.links().stream().filter(l -> on(d, sheet, l.from())).forEach(l -> all.add(l.id()));
        }
        if (ids.stream().anyMatch(d.notes()::contains)) {
            d.notes().stream()
                    .filter(n -> n.sheet().equals(sheet))
                    .map(Note::id)
                    .forEach(all::add);
        }
        return all;
    }

    private static boolean on(Drawing d, String sheet, TerminalRef end) {
        return d.components()
                .find(end.component())
                .filter(c -> c.place().sheet().equals(sheet))
                .isPresent();
    }

    /**
     * Everything on this sheet that is joined to what is selected within its electrical system: along cables, links and
     * devices, whatever the position of a switch. Converters and transformers belong to it and end it; paths over other
     * sheets count.
     */
    public static Set<String> connected(Drawing d, String sheet, Set<String> ids) {
        Joined j = new Joined(d);
        Set<String> reached = j.from(ids);
        Set<String> all = new LinkedHashSet<>();
        d.components().stream()
                .filter(c -> reached.contains(c.id()) && c.place().sheet().equals(sheet))
                .forEach(c -> all.add(c.id()));
        d.cables().stream()
                .filter(w -> reached.contains(w.id()) && on(d, sheet, w.from()))
                .forEach(w -> all.add(w.id()));
        d.links().stream()
                .filter(l -> reached.contains(l.id()) && on(d, sheet, l.from()))
                .forEach(l -> all.add(l.id()));
        return all;
    }

    /** A walk over the components of one system. A node is a component with one of its systems. */
    private static final class Joined {
        private record Node(String component, String system) {}

        private final Drawing d;
        private final Map<Node, Set<Node>> next = new HashMap<>();
        private final Map<Node, Set<String>> lines = new HashMap<>();
        private final Deque<Node> open = new ArrayDeque<>();
        private final Set<Node> seen = new HashSet<>();

        Joined(Drawing d) {
            this.d = d;
            each((id, ends) -> {
                Node a = node(ends.get(0));
                Node b = node(ends.get(1));
                next.computeIfAbsent(a, n -> new LinkedHashSet<>()).add(b);
                next.computeIfAbsent(b, n -> new LinkedHashSet<>()).add(a);
                lines.computeIfAbsent(a, n -> new LinkedHashSet<>()).add(id);
                lines.computeIfAbsent(b, n -> new LinkedHashSet<>()).add(id);
            });
        }

        private void each(BiConsumer<String, List<TerminalRef>> line) {
            for (Cable w : d.cables().values()) {
                line.accept(w.id(), List.of(w.from(), w.to()));
            }
            for (Link l : d.links().values()) {
                line.accept(l.id(), List.of(l.from(), l.to()));
            }
        }

        private Node node(TerminalRef t) {
            return new Node(t.component(), d.components().require(t.component()).systemOf(t.terminal()));
        }

        Set<String> from(Set<String> ids) {
            for (String id : ids) {
                d.components().find(id).ifPresent(c -> c.systems().forEach(s -> reach(new Node(id, s))));
            }
            each((id, ends) -> {
                if (ids.contains(id)) {
                    ends.forEach(e -> reach(node(e)));
                }
            });
            Set<String> reached = new HashSet<>();
            for (Node n = open.poll(); n != null; n = open.poll()) {
                reached.add(n.component());
                reached.addAll(lines.getOrDefault(n, Set.of()));
                next.getOrDefault(n, Set.of()).forEach(this::reach);
                mate(n);
            }
            return reached;
        }

        private void reach(Node n) {
            if (seen.add(n)) {
                open.add(n);
            }
        }

        private void mate(Node n) {
            d.components()
                    .find(n.component())
                    .map(Component::particulars)
                    .filter(p -> p instanceof orlop.drawing.Distribution.SheetLink)
                    .map(p -> ((orlop.drawing.Distribution.SheetLink) p).mate())
                    .filter(m -> !m.isEmpty())
                    .ifPresent(m -> reach(new Node(m, n.system())));
        }
    }
}
