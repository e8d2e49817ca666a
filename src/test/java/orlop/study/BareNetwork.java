package orlop.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Link;
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
 * The ways and sources of a drawing's direct-current or alternating-current systems, read from the drawing itself with
 * the switch positions that each needs. Of the program only the rule set's own figures are used.
 */
@SuppressWarnings("NullAway") // a null fails the test
final class BareNetwork {
    record Edge(int n, String a, String b, char kind, double lengthM, Cable cable, Component device) {
        String other(String pin) {
            return pin.equals(a) ? b : a;
        }
    }

    record Feed(Component source, String pin, SourceKind kind, double mostA, Map<String, String> needs) {}

    private final Drawing drawing;
    private final boolean ac;
    private final Results results;
    final RuleSet rules;
    final List<Edge> edges = new ArrayList<>();
    final Map<String, List<Edge>> at = new HashMap<>();
    final List<Feed> feeds = new ArrayList<>();

    BareNetwork(Study study, boolean ac) {
        this.ac = ac;
        drawing = study.drawing();
        results = study.governing();
        rules = RuleSets.published()
                .find(drawing.vessel().ruleSet())
                .orElse(RuleSets.published().get("iec60364"));
        read();
    }

    // ---- reading -----------------------------------------------------------------------------------------------

    private boolean isOurs(Component c, String terminal) {
        return drawing.systems().require(c.systemOf(terminal)).nature().isDc() != ac;
    }

    private static boolean there(Component c) {
        return c != null && c.refit() != RefitStatus.TO_BE_REMOVED;
    }

    private String pin(Component c, String terminal) {
        return c.kind().terminals() == Kind.Terminals.ANY ? c.id() : c.id() + "." + terminal;
    }

    private boolean ok(TerminalRef t) {
        Component c = drawing.components().get(t.component());
        return there(c) && isOurs(c, t.terminal());
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
        if (!isOurs(c, "1") && !(c.particulars() instanceof Conversion)) {
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
        } else if (ac) {
            alternating(c);
        } else {
            feed(c);
        }
    }

    private void alternating(Component c) {
        Object p = c.particulars();
        double none = Double.POSITIVE_INFINITY;
        if (p instanceof Source.ShorePedestal s) { // its breaker is all that ever flows for long
            feed(c, "1", SourceKind.SHORE_INLET, s.ratingA() == null ? none : s.ratingA(), Map.of());
        } else if (p instanceof Source.ShoreInlet && hasLead(c)) { // the pedestal that is drawn feeds it
            edge(pin(c, "1"), pin(c, "2"), 's', 0, null, c);
        } else if (p instanceof Source.ShoreInlet) {
            feed(c, "1", SourceKind.SHORE_INLET, none, Map.of());
        } else if (p instanceof Source.Generator || p instanceof Source.Supply) {
            feed(c, "1", SourceKind.AC_SOURCE, none, Map.of());
        } else if (p instanceof Conversion.InverterCharger k) {
            String transfer = "transfer " + c.id();
            feed(c, "2", SourceKind.AC_SOURCE, limited(c, k.faultA(), k.ratedVa()), Map.of(transfer, "inverts"));
            edge(pin(c, "3"), pin(c, "2"), 't', 0, null, c);
        } else if (p instanceof Conversion.Inverter k) {
            feed(c, "2", SourceKind.AC_SOURCE, limited(c, k.faultA(), k.ratedVa()), Map.of());
        } else if (p instanceof Conversion.FrequencyConverter k) {
            feed(c, "2", SourceKind.AC_SOURCE, limited(c, null, k.ratedVa()), Map.of());
        } else if (p instanceof Conversion.Transformer) {
            feed(c, "2", SourceKind.AC_SOURCE, none, Map.of());
        }
    }

    private boolean hasLead(Component inlet) {
        TerminalRef outside = new TerminalRef(inlet.id(), "2");
        return drawing.cables().stream().anyMatch(w -> w.from().equals(outside) || w.to().equals(outside))
                || drawing.links().stream().anyMatch(l -> l.from().equals(outside) || l.to().equals(outside));
    }

    /** What an inverter ever gives: its fault current as stated, else twice its rating (engineering estimate). */
    private double limited(Component c, Double faultA, Double ratedVa) {
        ElectricalSystem out = drawing.systems().require(c.systemOf("2"));
        boolean three = out.nature().isThreePhase();
        double phaseVa = ratedVa == null ? Double.NaN : three ? ratedVa / 3 : ratedVa;
        double volts = three ? out.nominalV() / Math.sqrt(3) : out.nominalV();
        double amps = faultA != null ? faultA : 2 * phaseVa / volts;
        return amps > 0 ? amps : Double.POSITIVE_INFINITY;
    }

    private void feed(Component c, String terminal, SourceKind kind, double mostA, Map<String, String> needs) {
        if (isOurs(c, terminal)) {
            feeds.add(new Feed(c, pin(c, terminal), kind, mostA, needs));
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
        if (most != null) {
            feed(c, out, battery ? SourceKind.BATTERY : SourceKind.CHARGING_SOURCE, most, Map.of());
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

    boolean guards(Component device, double ampacityA) {
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
    double neededA(Component device) {
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

    /** The switch positions needed when this edge is passed too; null if it cannot be passed. */
    static Map<String, String> passing(Edge e, String from, Map<String, String> needs) {
        if (e.kind() == 'd' && !from.equals(e.a())) {
            return null;
        }
        Map<String, String> more = new HashMap<>(needs);
        String interlock = "";
        if (e.kind() == 't') {
            String before = more.put("transfer " + e.device().id(), "through");
            if (before != null && !before.equals("through")) {
                return null;
            }
        } else if (e.kind() == 'w') {
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
}
