package orlop.study;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Laying;
import orlop.drawing.Location;
import orlop.standards.SourceKind;
import orlop.study.BareNetwork.Edge;
import orlop.study.BareNetwork.Feed;

/**
 * Which cables of a drawing no device guards, by brute force: all simple paths from all sources are walked, with the
 * switch positions that each needs. Reads the drawing itself; of the program only the ampacities and the rule set's own
 * figures are used.
 */
@SuppressWarnings("NullAway") // a null fails the test
final class BareCables {
    private record Path(Feed feed, Map<String, String> needs) {}

    private final Drawing drawing;
    private final Results results;
    private final boolean ac;
    private final BareNetwork net;
    private final Map<String, List<Edge>> at;
    private final Map<String, List<Path>> unguarded = new LinkedHashMap<>(); // by cable and end
    private final Map<String, Boolean> verdicts = new HashMap<>();
    final Set<String> bare = new TreeSet<>();

    /** @param ac whether the alternating-current systems are looked at, not those of direct current */
    BareCables(Study study, boolean ac) {
        this.ac = ac;
        drawing = study.drawing();
        results = study.governing();
        net = new BareNetwork(study, ac);
        at = net.at;
        for (Feed f : net.feeds) {
            Set<String> seen = new HashSet<>();
            seen.add(f.pin());
            walk(f, f.pin(), seen, new ArrayDeque<>(), f.needs());
        }
        for (Edge e : net.edges) {
            if (e.kind() == 'c' && (isBare(e, e.a()) || isBare(e, e.b()))) {
                bare.add(e.cable().id());
            }
        }
    }

    private double ampacity(Edge e) {
        Double a = results.cables().get(e.cable().id()).ampacityA();
        return a == null ? 1e300 : a;
    }

    // ---- paths -------------------------------------------------------------------------------------------------

    private void walk(Feed f, String pin, Set<String> seen, Deque<Edge> path, Map<String, String> needs) {
        for (Edge e : at.getOrDefault(pin, List.of())) {
            if (path.contains(e)) {
                continue;
            }
            if (e.kind() == 'c') {
                boolean guarded = path.stream().anyMatch(d -> d.kind() == 'f' && net.guards(d.device(), ampacity(e)));
                if (!guarded) {
                    unguarded
                            .computeIfAbsent(e.n() + "@" + pin, k -> new ArrayList<>())
                            .add(new Path(f, needs));
                }
            }
            Map<String, String> more = BareNetwork.passing(e, pin, needs);
            if (more != null && seen.add(e.other(pin))) {
                path.addLast(e);
                walk(f, e.other(pin), seen, path, more);
                path.removeLast();
                seen.remove(e.other(pin));
            }
        }
    }

    // ---- verdict -----------------------------------------------------------------------------------------------

    private boolean isBare(Edge e, String end) {
        return verdicts.computeIfAbsent(e.n() + "@" + end, k -> exposed(e, end) && !soon(e, end));
    }

    private boolean exposed(Edge e, String end) {
        List<Path> paths = unguarded.getOrDefault(e.n() + "@" + end, List.of());
        if (jumper(e) || paths.isEmpty()) {
            return false;
        }
        boolean strong = paths.stream().anyMatch(p -> Double.isInfinite(p.feed().mostA()));
        return strong || together(paths, 0, new HashSet<>(), Map.of()) > ampacity(e) * (1 + 1e-9);
    }

    private static double together(List<Path> paths, int from, Set<Component> used, Map<String, String> needs) {
        if (from == paths.size()) {
            return 0;
        }
        double best = together(paths, from + 1, used, needs);
        Path p = paths.get(from);
        Map<String, String> both = new HashMap<>(needs);
        boolean fits = !used.contains(p.feed().source());
        for (Map.Entry<String, String> n : p.needs().entrySet()) {
            String before = both.put(n.getKey(), n.getValue());
            fits &= before == null || before.equals(n.getValue());
        }
        if (fits) {
            Set<Component> more = new HashSet<>(used);
            more.add(p.feed().source());
            best = Math.max(best, p.feed().mostA() + together(paths, from + 1, more, both));
        }
        return best;
    }

    /** Blocks joined within 0.2 m are one bank. */
    private boolean jumper(Edge e) {
        Component a = drawing.components().require(e.cable().from().component());
        Component b = drawing.components().require(e.cable().to().component());
        return a.kind() == Kind.BATTERY
                && b.kind() == Kind.BATTERY
                && e.cable().construction().laying() != Laying.BUNCHED
                && e.cable().lengthM() != null
                && e.lengthM() <= 0.2;
    }

    /** Whether every way on meets a device within the permitted distance, and they fit the cable together. */
    private boolean soon(Edge first, String end) {
        Map<String, Double> reached = new HashMap<>();
        Map<String, Edge> via = new HashMap<>();
        reached.put(first.other(end), first.lengthM());
        via.put(first.other(end), first);
        boolean sheathed = first.cable().construction().laying() == Laying.SHEATHED
                || first.cable().construction().laying() == Laying.CONDUIT;
        boolean engine = first.cable().construction().engineSpace();
        for (boolean more = true; more; ) { // Bellman and Ford: until no distance shrinks
            more = false;
            for (String pin : List.copyOf(reached.keySet())) {
                for (Edge e : ahead(pin, via.get(pin))) {
                    double there = reached.get(pin) + e.lengthM();
                    boolean nearer = there < reached.getOrDefault(e.other(pin), Double.POSITIVE_INFINITY);
                    if (e.kind() != 'f' && !e.other(pin).equals(end) && nearer) {
                        reached.put(e.other(pin), there);
                        via.put(e.other(pin), e);
                        more = true;
                    }
                }
            }
        }
        Map<Edge, Double> devices = new LinkedHashMap<>();
        for (String pin : reached.keySet()) {
            List<Edge> ahead = ahead(pin, via.get(pin));
            if (ahead.isEmpty()) {
                return false;
            }
            for (Edge e : ahead) {
                if (e.kind() == 'f') {
                    devices.merge(e, reached.get(pin), Math::min);
                } else if (e.kind() == 'c') {
                    Laying lies = e.cable().construction().laying();
                    sheathed &= lies == Laying.SHEATHED || lies == Laying.CONDUIT;
                    engine |= e.cable().construction().engineSpace();
                }
            }
        }
        double needed = devices.keySet().stream()
                .mapToDouble(e -> net.neededA(e.device()))
                .sum();
        if (devices.isEmpty() || needed > ampacity(first)) {
            return false;
        }
        double furthest = devices.values().stream().mapToDouble(d -> d).max().orElseThrow();
        return near(first, end, furthest, sheathed, engine, devices.size());
    }

    private List<Edge> ahead(String pin, Edge via) {
        return at.getOrDefault(pin, List.of()).stream()
                .filter(e -> e.n() != via.n() && !e.a().equals(e.b()))
                .filter(e -> BareNetwork.passing(e, pin, Map.of()) != null)
                .filter(e -> {
                    Map<String, String> before = BareNetwork.passing(via, via.other(pin), Map.of());
                    return before == null || BareNetwork.passing(e, pin, before) != null;
                })
                .toList();
    }

    private boolean near(Edge first, String end, double metres, boolean sheathed, boolean engine, int devices) {
        boolean strong = unguarded.get(first.n() + "@" + end).stream()
                .anyMatch(p -> Double.isInfinite(p.feed().mostA()));
        boolean any = false;
        boolean fine = true;
        for (Feed f : net.feeds) {
            Double away = strong == Double.isInfinite(f.mostA()) ? byLinks(f.pin(), end) : null;
            if (away != null) {
                any = true;
                fine &= away + metres <= permitted(f.kind(), f.source(), sheathed, engine, devices) + 1e-9;
            }
        }
        return any
                ? fine
                : metres
                        <= permitted(ac ? SourceKind.AC_SOURCE : SourceKind.DC_POINT, null, sheathed, engine, devices)
                                + 1e-9;
    }

    private double permitted(SourceKind kind, Component source, boolean sheathed, boolean engine, int devices) {
        double table = net.rules.firstDeviceWithinM(kind, sheathed).value();
        if (!net.rules.id().equals("iec60364") || table <= 0.2) {
            return table;
        }
        boolean battery = kind == SourceKind.BATTERY;
        Location place = source == null ? null : drawing.locations().get(source.location());
        boolean risky = place != null && (place.engineSpace() || place.vapour());
        return (battery && (!sheathed || engine || risky)) || devices > 1 ? 0.2 : table;
    }

    /** Distance by links and switches alone; null if there is no such way. */
    private Double byLinks(String from, String to) {
        Map<String, Double> seen = new LinkedHashMap<>();
        Deque<String> open = new ArrayDeque<>();
        seen.put(from, 0.0);
        open.add(from);
        while (!open.isEmpty()) {
            String pin = open.remove();
            for (Edge e : at.getOrDefault(pin, List.of())) {
                boolean leads = e.kind() != 'c' && e.kind() != 'f' && BareNetwork.passing(e, pin, Map.of()) != null;
                if (leads && !seen.containsKey(e.other(pin))) {
                    seen.put(e.other(pin), seen.get(pin) + e.lengthM());
                    open.add(e.other(pin));
                }
            }
        }
        return seen.get(to);
    }

    /** The cables of direct or alternating current that the program says are bare. */
    static Set<String> ofProgram(Study study, boolean ac) {
        Set<String> found = new TreeSet<>();
        for (Gap g : study.gaps()) {
            boolean bare = Set.of(Gap.Kind.NO_DEVICE, Gap.Kind.TOO_FAR, Gap.Kind.TOO_LARGE)
                    .contains(g.kind());
            if (bare) {
                found.add(g.cable());
                found.addAll(g.also());
            }
        }
        found.removeIf(w -> {
            Cable c = study.drawing().cables().require(w);
            Component from = study.drawing().components().require(c.from().component());
            return study.drawing()
                            .systems()
                            .require(from.systemOf(c.from().terminal()))
                            .nature()
                            .isDc()
                    == ac;
        });
        return found;
    }
}
