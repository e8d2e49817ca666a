package orlop.study.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Source;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.network.Zones;
import orlop.standards.SourceKind;
import orlop.study.Gap;
import orlop.study.model.AcSourceModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Plan;
import orlop.study.model.Rating;
import orlop.study.model.SourceModel;

/**
 * Overcurrent protection of every cable against every source, with every switch closed that can be.
 *
 * <p>Devices part the network into zones. Current enters a zone at the sources in it and at the devices that have
 * sources beyond them. From each such entrance the zone is walked: a cable that the entrance does not guard needs a
 * device of its own at its near end, unless every way on from there meets one within the permitted distance.
 */
public final class Coverage {
    private final Plan plan;
    private final Network network;
    private final Surroundings around;
    private final List<@Nullable DeviceModel> devices = new ArrayList<>();
    private final List<List<String>> guards = new ArrayList<>();
    private final int[][] at; // connections that end at each pin
    private final Zones zones;
    private final Map<String, Integer> company;
    private final Gaps gaps = new Gaps();
    private final Proposer proposer;

    /** @param reach the network with every switch closed */
    public Coverage(Plan plan, Network reach, Surroundings around) {
        this.plan = plan;
        this.network = reach;
        this.around = around;
        proposer = new Proposer(plan, around);
        company = sourcesOfSystems();
        at = adjacency(reach);
        boolean[] cut = new boolean[reach.connections().size()];
        for (int e = 0; e < cut.length; e++) {
            Connection c = reach.connections().get(e);
            ElectricalSystem system = plan.system(c.a());
            boolean counts = c.device() != null && plan.calculates(system);
            DeviceModel device =
                    counts ? DeviceModel.of(c.theDevice(), system.nature().isDc()) : null;
            devices.add(device);
            cut[e] = device != null;
        }
        for (int i = 0; i < plan.cables().size(); i++) {
            guards.add(new ArrayList<>(1));
        }
        int[] strong = new int[reach.pinCount()];
        double[] limited = new double[reach.pinCount()];
        List<Entrance> sources = sources(strong, limited);
        zones = new Zones(reach, cut, strong, limited);
        for (Entrance e : sources) {
            new Walk(this, e).run();
        }
        for (int e = 0; e < cut.length; e++) {
            DeviceModel device = devices.get(e);
            if (device != null) {
                enter(e, device, network.connections().get(e).a());
                enter(e, device, network.connections().get(e).b());
                new DeviceCheck(this, e, device).run();
            }
        }
    }

    private static int[][] adjacency(Network network) {
        int[] degree = new int[network.pinCount()];
        for (Connection c : network.connections()) {
            degree[c.a()]++;
            degree[c.b()]++;
        }
        int[][] at = new int[degree.length][];
        for (int v = 0; v < at.length; v++) {
            at[v] = new int[degree[v]];
        }
        for (int e = network.connections().size() - 1; e >= 0; e--) {
            Connection c = network.connections().get(e);
            at[c.a()][--degree[c.a()]] = e;
            at[c.b()][--degree[c.b()]] = e;
        }
        return at;
    }

    private boolean isDc(int pin) {
        return plan.isDc(pin);
    }

    /** The sources that are not harmless by themselves; counts all of them by pin. */
    private List<Entrance> sources(int[] strong, double[] limited) {
        List<Entrance> found = new ArrayList<>();
        for (Attachment t : network.attachments()) {
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            SourceModel m = converter ? plan.output(t.pin()) : plan.source(t.pin());
            int pin = converter ? t.outputPin() : t.pin();
            if (t.on() && plan.isAc(pin)) {
                alternating(t, pin, strong, limited, found);
            }
            if (m == null || !t.on() || !isDc(pin)) {
                continue;
            }
            boolean harmless = m.carriesItself() && Double.isFinite(m.limitA());
            if (harmless) {
                limited[pin] += m.limitA();
            } else {
                strong[pin]++;
            }
            SourceKind kind = m.battery() && !converter ? SourceKind.BATTERY : SourceKind.CHARGING_SOURCE;
            found.add(new Entrance(
                    pin, kind, null, true, t.component().id(), harmless ? m.limitA() : Double.POSITIVE_INFINITY));
        }
        return found;
    }

    /** What lies behind the breaker of a pedestal gets no more, for long, than that lets through. */
    private void alternating(Attachment t, int pin, int[] strong, double[] limited, List<Entrance> found) {
        boolean converter = t.role() == Attachment.Role.CONVERTER;
        AcSourceModel m = converter ? null : plan.acSource(t.component());
        boolean inverts = converter && isDc(t.pin());
        if (m == null && !inverts) {
            return;
        }
        Double breaker = t.component().particulars() instanceof Source.ShorePedestal p ? p.ratingA() : null;
        if (breaker != null) {
            limited[pin] += breaker;
        } else {
            strong[pin]++;
        }
        SourceKind kind = m != null && m.shore() ? SourceKind.SHORE_INLET : SourceKind.AC_SOURCE;
        double most = breaker != null ? breaker : Double.POSITIVE_INFINITY;
        found.add(new Entrance(pin, kind, null, true, t.component().id(), most));
    }

    /** What counts for the distance to the next device at any place behind the first. */
    SourceKind pointKind(int pin) {
        return isDc(pin) ? SourceKind.DC_POINT : SourceKind.AC_SOURCE;
    }

    private void enter(int connection, DeviceModel device, int pin) {
        int strong = zones.strongBeyond(connection, pin);
        double limited = zones.limitedBeyond(connection, pin);
        if (strong > 0 || limited > 0) {
            double most = strong > 0 ? Double.POSITIVE_INFINITY : limited;
            new Walk(this, new Entrance(pin, pointKind(pin), device, true, sourceBeyond(pin), most)).run();
        }
    }

    /** The source that feeds the pin on the shortest way; good enough to name one. */
    private String sourceBeyond(int pin) {
        int root = network.feeding().root(pin);
        return root < 0 ? "" : network.attachments().get(root).component().id();
    }

    /**
     * Where current enters a zone.
     *
     * @param pin where
     * @param kind for the permitted distance
     * @param device null for a source
     * @param isThere false for a device that is only proposed
     * @param source tag of the source, or of one beyond the device
     * @param mostA what all sources there give together; infinite where nothing limits them
     */
    record Entrance(
            int pin, SourceKind kind, @Nullable DeviceModel device, boolean isThere, String source, double mostA) {
        /** Whether a conductor of this ampacity needs nothing more. */
        boolean guards(Plan plan, @Nullable Rating rating) {
            if (rating == null) {
                return device != null;
            }
            boolean carries = mostA <= rating.amps() * (1 + 1e-9);
            return carries || (device != null && device.guards(plan.rules(), rating.amps()));
        }
    }

    Plan plan() {
        return plan;
    }

    Network network() {
        return network;
    }

    Surroundings around() {
        return around;
    }

    Proposer proposer() {
        return proposer;
    }

    int[] at(int pin) {
        return at[pin];
    }

    @Nullable
    DeviceModel device(int connection) {
        return devices.get(connection);
    }

    void guarded(int cable, Entrance entrance) {
        DeviceModel by = entrance.device();
        if (by != null
                && entrance.isThere()
                && !guards.get(cable).contains(by.component().id())) {
            guards.get(cable).add(by.component().id());
        }
    }

    /** Whether several sources feed the system, so that what one gives at present says little of its duty. */
    boolean hasCompany(ElectricalSystem system) {
        return company.getOrDefault(system.id(), 0) > 1;
    }

    private Map<String, Integer> sourcesOfSystems() {
        Map<String, Integer> count = new HashMap<>();
        for (Attachment t : network.attachments()) {
            if (t.isSource() || t.role() == Attachment.Role.CONVERTER) {
                new HashSet<>(t.component().systems()).forEach(s -> count.merge(s, 1, Integer::sum));
            }
        }
        return count;
    }

    void add(Gap gap) {
        gaps.add(gap);
    }

    /** All gaps, in the order in which they were met. */
    public List<Gap> gaps() {
        return gaps.all();
    }

    /** Tags of the devices that guard a cable. */
    public List<String> protectedBy(int cable) {
        return guards.get(cable);
    }

    /** The greater of {@link #permittedM} with and without a sheath. */
    double greatestPermittedM(SourceKind kind) {
        return Math.max(permittedM(kind, true), permittedM(kind, false));
    }

    /** Greatest permitted distance from an entrance to the first device. */
    double permittedM(SourceKind kind, boolean sheathed) {
        return plan.rules().firstDeviceWithinM(kind, sheathed).value();
    }
}
