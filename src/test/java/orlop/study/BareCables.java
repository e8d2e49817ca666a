package orlop.study;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Laying;
import orlop.drawing.Link;
import orlop.drawing.Location;
import orlop.drawing.Poles;
import orlop.drawing.Protection;
import orlop.drawing.RefitStatus;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.drawing.TerminalRef;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.ProtectiveFamily;
import orlop.standards.RuleSet;
import orlop.standards.RuleSets;
import orlop.standards.SourceKind;

/**
 * Which direct-current cables of a drawing no device guards, by brute force: all simple paths from all sources are
 * walked, with the switch positions that each needs. Reads the drawing itself; of the program only the ampacities and
 * the rule set's own figures are used.
 */
@SuppressWarnings("NullAway") // a null fails the test
final class BareCables {
    private record Edge(int n, String a, String b, char kind, double lengthM, Cable cable, Component device) {
        String other(String pin) {
            return pin.equals(a) ? b : a;
        }
    }

    private record Feed(Component source, String pin, SourceKind kind, double mostA, Map<String, String> needs) {}

    private record Path(Feed feed, Map<String, String> needs) {}

    private final Drawing drawing;
    private final Results results;
    private final RuleSet rules;
    private final List<Edge> edges = new ArrayList<>();
    private final Map<String, List<Edge>> at = new HashMap<>();
    private final List<Feed> feeds = new ArrayList<>();
    private final Map<String, List<Path>> unguarded = new LinkedHashMap<>(); // by cable and end
    private final Map<String, Boolean> verdicts = new HashMap<>();
    final Set<String> bare = new TreeSet<>();

    BareCables(Study study) {
        drawing = study.drawing();
        results = study.governing();
        rules = RuleSets.published()
                .find(drawing.vessel().ruleSet())
                .orElse(RuleSets.published().get("iec60364"));
        read();
        for (Feed f : feeds) {
            Set<String> seen = new HashSet<>();
            seen.add(f.pin());
            walk(f, f.pin(), seen, new ArrayDeque<>(), f.needs());
        }
        for (Edge e : edges) {
            if (e.kind() == 'c' && (isBare(e, e.a()) || isBare(e, e.b()))) {
                bare.add(e.cable().id());
            }
        }
    }

    // ---- reading -----------------------------------------------------------------------------------------------

    private boolean isDc(Component c, String terminal) {
        return drawing.systems().require(c.systemOf(terminal)).nature().isDc();
    }

    private static boolean there(Component c) {
        return c != null && c.refit() != RefitStatus.TO_BE_REMOVED;
    }

    private String pin(Component c, String terminal) {
        return c.kind().terminals() == Kind.Terminals.ANY ? c.id() : c.id() + "." + terminal;
    }

    private boolean ok(TerminalRef t) {
        Component c = drawing.components().get(t.component());
        return there(c) && isDc(c, t.terminal());
    }

    private void edge(String a, String b, char kind, double lengthM, Cable w, Component device) {
        Edge e = new Edge(edges.size(), a, b, kind, lengthM, w, device);
        edges.add(e);
        at.computeIfAbsent(a, k -> new ArrayList<>()).add(e);
        if (!a.equals(b)) {
            at.computeIfAbsent(b, k -> new ArrayList<>()).add(e);
        }
    }

    private String pin(TerminalRef t) {
        return pin(drawing.components().require(t.component()), t.terminal());
    }

    private void read() {
        for (Cable w : drawing.cables().values()) {
            if (w.refit() != RefitStatus.TO_BE_REMOVED && ok(w.from()) && ok(w.to())) {
                double metres = results.cables().get(w.id()).lengthM();
                edge(pin(w.from()), pin(w.to()), 'c', metres, w, null);
            }
        }
        for (Link l : drawing.links().values()) {
            if (ok(l.from()) && ok(l.to())) {
                edge(pin(l.from()), pin(l.to()), 'l', l.lengthM(), null, null);
            }
        }
        for (Component c : drawing.components().values()) {
            if (there(c)) {
                component(c);
            }
        }
    }

    private void component(Component c) {
        String one = pin(c, "1");
        String two = pin(c, "2");
        if (!isDc(c, "1") && !(c.particulars() instanceof Conversion)) {
            return;
        }
        if (c.particulars() instanceof Distribution.SheetLink s) {
            Component mate = drawing.components().get(s.mate());
            if (there(mate) && mate.kind() == Kind.SHEET_LINK && c.id().compareTo(mate.id()) < 0) {
                edge(one, pin(mate, "1"), 'l', 0, null, null);
            }
        } else if (c.particulars() instanceof Switching.Changeover s) {
            for (int way = 1; way <= s.ways(); way++) {
                edge(pin(c, "" + way), pin(c, "" + (s.ways() + 1)), 'w', 0, null, c);
            }
        } else if (c.particulars() instanceof Switching.DiodeIsolator d) {
            for (int out = 2; out <= d.outputs() + 1; out++) {
                edge(one, pin(c, "" + out), 'd', 0, null, c);
            }
        } else if (c.kind() == Kind.DIODE) {
            edge(one, two, 'd', 0, null, c);
        } else if (inline(c.kind())) {
            edge(one, two, rating(c).isPresent() || unrated(c) ? 'f' : 's', 0, null, c);
        } else {
            feed(c);
        }
    }

    private static boolean inline(Kind k) {
        return Set.of(
                        Kind.FUSE,
                        Kind.CIRCUIT_BREAKER,
                        Kind.RESIDUAL_CURRENT_DEVICE,
                        Kind.TERMINAL,
                        Kind.IMPEDANCE,
                        Kind.ISOLATOR,
                        Kind.CONTACTOR,
                        Kind.COMBINING_RELAY,
                        Kind.SHUNT)
                .contains(k);
    }

    private void feed(Component c) {
        Double most = null; // infinite: wants a device
        boolean battery = false;
        Object p = c.particulars();
        if (p instanceof Source.Battery || p instanceof Source.Supply) {
            most = Double.POSITIVE_INFINITY;
            battery = true;
        } else if (p instanceof Source.LimitedSupply s) {
            most = s.limitA() == null ? Double.POSITIVE_INFINITY : s.limitA();
        } else if (p instanceof Source.CurrentSupply s) {
            most = Math.abs(s.currentA());
        } else if (p instanceof Source.Alternator s) {
            most = zero(s.hotOutputA());
        } else if (p instanceof Source.Turbine s) {
            most = zero(s.ratedA());
        } else if (p instanceof Source.PvArray s) {
            most = zero(s.powerPointA() != null ? s.powerPointA() : s.shortCircuitA()) * s.inParallel();
        } else if (p instanceof Conversion.PlainConverter) {
            most = Double.POSITIVE_INFINITY;
        } else if (p instanceof Conversion.DcDcConverter s) {
            double set = s.setV() != null
                    ? s.setV()
                    : drawing.systems().require(c.systemOf("2")).nominalV();
            double limit = s.ratedW() == null ? 0 : s.ratedW() / set;
            most = s.selfLimiting() ? Math.max(limit, zero(s.faultA())) : Double.POSITIVE_INFINITY;
        } else if (p instanceof Conversion.Charger s) {
            most = s.selfLimiting() ? zero(s.ratedA()) : Double.POSITIVE_INFINITY;
        } else if (p instanceof Conversion.InverterCharger s) {
            most = zero(s.chargeA());
        } else if (p instanceof Conversion.ChargeController s) {
            most = zero(s.ratedA());
        }
        boolean converter = p instanceof Conversion;
        String out = p instanceof Conversion.InverterCharger || !converter ? "1" : "2";
        if (most != null && isDc(c, out)) {
            SourceKind kind = battery ? SourceKind.BATTERY : SourceKind.CHARGING_SOURCE;
            feeds.add(new Feed(c, pin(c, out), kind, most, Map.of()));
        }
    }

    private static double zero(Double value) {
        return value == null ? 0 : value;
    }

    // ---- devices -----------------------------------------------------------------------------------------------

    private static Optional<Double> rating(Component c) {
        if (c.particulars() instanceof Protection.Fuse f && f.poles() != Poles.NEGATIVE) {
            return Optional.ofNullable(f.ratingA());
        }
        if (c.particulars() instanceof Protection.CircuitBreaker b && b.poles() != Poles.NEGATIVE) {
            return Optional.ofNullable(b.settingA() != null ? b.settingA() : b.ratingA());
        }
        return c.particulars() instanceof Protection.ResidualCurrentDevice r && r.overcurrent()
                ? Optional.ofNullable(r.ratingA())
                : Optional.empty();
    }

    private static boolean unrated(Component c) {
        boolean fuse = c.particulars() instanceof Protection.Fuse f && f.poles() != Poles.NEGATIVE;
        boolean breaker = c.particulars() instanceof Protection.CircuitBreaker b && b.poles() != Poles.NEGATIVE;
        return fuse || breaker || (c.particulars() instanceof Protection.ResidualCurrentDevice r && r.overcurrent());
    }

    private static String family(Component c) {
        return c.particulars() instanceof Protection.Fuse f
                ? f.family()
                : c.particulars() instanceof Protection.CircuitBreaker b
                        ? b.family()
                        : ((Protection.ResidualCurrentDevice) c.particulars()).family();
    }

    private boolean guards(Component device, double ampacityA) {
        Double rating = rating(device).orElse(null);
        Optional<ProtectiveFamily> known = ProtectiveFamilies.published().find(family(device));
        if (rating == null) {
            return true;
        }
        Double most = known.isEmpty()
                ? (Double) ampacityA
                : rules.maxDeviceA(ampacityA, known.get()).maxDeviceA().orElse(null);
        return most == null || rating <= most * (1 + 1e-9);
    }

    /** The ampacity of a conductor that the device just guards. */
    private double neededA(Component device) {
        double low = 0;
        double high = 1e5;
        for (int n = 0; n < 80; n++) {
            double mid = (low + high) / 2;
            if (guards(device, mid)) {
                high = mid;
            } else {
                low = mid;
            }
        }
        return rating(device).isEmpty() ? 0 : high;
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
                boolean guarded = path.stream().anyMatch(d -> d.kind() == 'f' && guards(d.device(), ampacity(e)));
                if (!guarded) {
                    unguarded
                            .computeIfAbsent(e.n() + "@" + pin, k -> new ArrayList<>())
                            .add(new Path(f, needs));
                }
            }
            Map<String, String> more = passing(e, pin, needs);
            if (more != null && seen.add(e.other(pin))) {
                path.addLast(e);
                walk(f, e.other(pin), seen, path, more);
                path.removeLast();
                seen.remove(e.other(pin));
            }
        }
    }

    /** The switch positions needed when this edge is passed too; null if it cannot be passed. */
    private static Map<String, String> passing(Edge e, String from, Map<String, String> needs) {
        if (e.kind() == 'd' && !from.equals(e.a())) {
            return null;
        }
        Map<String, String> more = new HashMap<>(needs);
        String interlock = "";
        if (e.kind() == 'w') {
            interlock = ((Switching.Changeover) e.device().particulars()).interlock();
            String before = more.put("way " + e.device().id(), e.a());
            if (before != null && !before.equals(e.a())) {
                return null;
            }
        } else if (e.device() != null && e.device().particulars() instanceof Switching.Contactor k) {
            interlock = k.interlock();
        }
        if (!interlock.isEmpty()) {
            String before = more.put("interlock " + interlock, e.device().id());
            if (before != null && !before.equals(e.device().id())) {
                return null;
            }
        }
        return more;
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
        double needed =
                devices.keySet().stream().mapToDouble(e -> neededA(e.device())).sum();
        if (devices.isEmpty() || needed > ampacity(first)) {
            return false;
        }
        double furthest = devices.values().stream().mapToDouble(d -> d).max().orElseThrow();
        return near(first, end, furthest, sheathed, engine, devices.size());
    }

    private List<Edge> ahead(String pin, Edge via) {
        return at.getOrDefault(pin, List.of()).stream()
                .filter(e -> e.n() != via.n() && !e.a().equals(e.b()))
                .filter(e -> passing(e, pin, Map.of()) != null)
                .filter(e -> {
                    Map<String, String> before = passing(via, via.other(pin), Map.of());
                    return before == null || passing(e, pin, before) != null;
                })
                .toList();
    }

    private boolean near(Edge first, String end, double metres, boolean sheathed, boolean engine, int devices) {
        boolean strong = unguarded.get(first.n() + "@" + end).stream()
                .anyMatch(p -> Double.isInfinite(p.feed().mostA()));
        boolean any = false;
        boolean fine = true;
        for (Feed f : feeds) {
            Double away = strong == Double.isInfinite(f.mostA()) ? byLinks(f.pin(), end) : null;
            if (away != null) {
                any = true;
                fine &= away + metres <= permitted(f.kind(), f.source(), sheathed, engine, devices) + 1e-9;
            }
        }
        return any ? fine : metres <= permitted(SourceKind.DC_POINT, null, sheathed, engine, devices) + 1e-9;
    }

    private double permitted(SourceKind kind, Component source, boolean sheathed, boolean engine, int devices) {
        double table = rules.firstDeviceWithinM(kind, sheathed).value();
        if (!rules.id().equals("iec60364") || table <= 0.2) {
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
                boolean leads = e.kind() != 'c' && e.kind() != 'f' && passing(e, pin, Map.of()) != null;
                if (leads && !seen.containsKey(e.other(pin))) {
                    seen.put(e.other(pin), seen.get(pin) + e.lengthM());
                    open.add(e.other(pin));
                }
            }
        }
        return seen.get(to);
    }

    /** The direct-current cables that the program says are bare. */
    static Set<String> ofProgram(Study study) {
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
            return !study.drawing()
                    .systems()
                    .require(from.systemOf(c.from().terminal()))
                    .nature()
                    .isDc();
        });
        return found;
    }
}
