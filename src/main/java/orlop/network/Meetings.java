package orlop.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.OperatingCondition;

/**
 * Alternating-current sources that can be joined to one another: in one of the conditions as it stands, or in any position
 * that switches without interlock can take.
 */
public final class Meetings {
    /**
     * Two sources that can be joined; or one whose output can reach its own input, an inverter with a transfer switch.
     *
     * @param one the source that comes first in the drawing
     * @param other the other; of a loop the same one
     * @param way tags of the components and cables from the one to the other, both included
     * @param conditions ids of the conditions in which they are joined as all stands
     */
    public record Meeting(Component one, Component other, List<String> way, List<String> conditions) {
        public Meeting {
            way = List.copyOf(way);
            conditions = List.copyOf(conditions);
        }

        /** Whether the output of a source reaches its own input. */
        public boolean isLoop() {
            return one.id().equals(other.id());
        }
    }

    private record Root(Component component, int pin) {
        boolean hasTransfer() {
            return Wiring.hasTransfer(component);
        }
    }

    /** More than this say nothing new. */
    private static final int MOST = 200;

    private final Drawing drawing;
    private final Numbering numbering;
    private final Map<String, Meeting> found = new LinkedHashMap<>();

    private Meetings(Drawing drawing) {
        this.drawing = drawing;
        numbering = new Numbering(drawing);
    }

    /** All meetings, in the order of the drawing. */
    public static List<Meeting> of(Drawing drawing) {
        boolean ac = drawing.systems().stream().anyMatch(s -> !s.nature().isDc());
        return ac ? new Meetings(drawing).search() : List.of();
    }

    private List<Meeting> search() {
        Network reach = Network.reach(numbering, List.of());
        pairs(reach, new Crossing(reach, false), null);
        List<OperatingCondition> conditions = drawing.conditions().isEmpty()
                ? List.of(OperatingCondition.asDrawn("as-drawn", ""))
                : drawing.conditions().stream().toList();
        for (OperatingCondition c : conditions) {
            Network network = Network.of(numbering, c, List.of());
            pairs(network, new Crossing(network, true), c.id());
        }
        return List.copyOf(found.values());
    }

    /** Pairs of sources between which there is a way; with a condition those that are on and as the switches stand. */
    private void pairs(Network network, Crossing crossing, @Nullable String condition) {
        List<Root> roots = roots(network, condition != null);
        for (int i = 0; i < roots.size(); i++) {
            Root one = roots.get(i);
            boolean free = condition == null;
            transfer(crossing, one, free, true);
            if (one.hasTransfer()) {
                join(crossing, one, new Root(one.component(), network.pin(one.component(), 3)), condition);
            }
            for (int j = i + 1; j < roots.size() && found.size() < MOST; j++) {
                Root other = roots.get(j);
                transfer(crossing, other, free, true);
                join(crossing, one, other, condition);
                transfer(crossing, other, free, false);
            }
            transfer(crossing, one, free, false);
        }
    }

    private static void transfer(Crossing crossing, Root root, boolean free, boolean forbidden) {
        if (free && root.hasTransfer()) {
            crossing.forbid(root.component(), forbidden);
        }
    }

    private void join(Crossing crossing, Root one, Root other, @Nullable String condition) {
        List<Integer> way = crossing.way(one.pin(), other.pin());
        if (way == null) {
            return;
        }
        String key = one.component().id() + " " + other.component().id();
        Meeting before = found.get(key);
        List<String> conditions = new ArrayList<>(before == null ? List.of() : before.conditions());
        if (condition != null) {
            conditions.add(condition);
        }
        List<String> tags = before == null ? crossing.tags(one.pin(), way) : before.way();
        found.put(key, new Meeting(one.component(), other.component(), tags, conditions));
    }

    private List<Root> roots(Network network, boolean onlyOn) {
        List<Root> roots = new ArrayList<>();
        for (Attachment t : network.attachments()) {
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            int pin = converter ? t.outputPin() : t.pin();
            boolean gives = t.isSource() || (converter && t.component().kind() != Kind.TRANSFORMER);
            if (gives && (t.on() || !onlyOn) && isAc(network, pin)) {
                roots.add(new Root(t.component(), pin));
            }
        }
        return roots;
    }

    private boolean isAc(Network network, int pin) {
        ElectricalSystem s = drawing.systems().get(network.systemOf(pin));
        return s != null && !s.nature().isDc();
    }
}
