package orlop.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Kind;
import orlop.drawing.OperatingCondition;
import orlop.network.Network;
import orlop.network.Reaches.FedFrom;
import orlop.study.model.Plan;

/**
 * What hangs on what in a study: the components that a cable alone feeds, the sources that feed a point or a component,
 * the islands and their loops.
 *
 * <p>Made when somebody asks for it, in time in proportion to the size of the drawing; a study doesn't carry it. Of the
 * governing condition it is the worst: what depends on a cable where most does, the greatest length from each source, the
 * most loops.
 * Not safe for several threads.
 */
public final class Topology {
    private static final int ALL_LISTS_UP_TO = 100_000;
    private static final int SHORT_LIST = 100;

    private final List<ConditionTopology> conditions = new ArrayList<>();
    private final List<String> cables;
    private long total = -1;

    private Topology(Study study, List<String> conditionIds) {
        cables = study.drawing().cables().stream().map(Cable::id).toList();
        for (String id : conditionIds) {
            OperatingCondition c = study.drawing().conditions().get(id);
            OperatingCondition held = settled(study, c == null ? OperatingCondition.asDrawn(id, id) : c);
            conditions.add(new ConditionTopology(study.drawing(), Network.of(study.drawing(), held)));
        }
    }

    /** With relays that work by themselves where the study found them. */
    private static OperatingCondition settled(Study study, OperatingCondition c) {
        boolean relays = study.drawing().components().stream().anyMatch(k -> k.kind() == Kind.COMBINING_RELAY);
        return relays ? Relays.settled(new Plan(study.drawing()), c, () -> false) : c;
    }

    /** Of the condition with this id, of all of them for {@link Results#GOVERNING} or an unknown name. */
    public static Topology of(Study study, String condition) {
        List<String> all = List.copyOf(study.byCondition().keySet());
        return new Topology(study, all.contains(condition) ? List.of(condition) : all);
    }

    /**
     * How many components this cable alone feeds; 0 for one that is dead, null for one that lies in a drawn return, whose
     * dependents are not worked out, and for one that the drawing doesn't have.
     */
    public @Nullable Integer dependentCount(String cable) {
        return conditions.stream().noneMatch(c -> c.feeds(cable))
                ? null
                : (Integer) worst(cable).dependentCount(cable);
    }

    /** The condition in which most depends on a cable. */
    private ConditionTopology worst(String cable) {
        ConditionTopology worst = conditions.get(0);
        for (ConditionTopology c : conditions) {
            worst = c.dependentCount(cable) > worst.dependentCount(cable) ? c : worst;
        }
        return worst;
    }

    /**
     * Tags of the components that this cable alone feeds, in the order of the drawing; empty for a dead cable and for one
     * in a drawn return. While the lists of all cables together have more than {@value #ALL_LISTS_UP_TO} tags, which can
     * grow with the square of the drawing's size, each is cut off after {@value #SHORT_LIST}.
     */
    public List<String> dependents(String cable) {
        if (total < 0) {
            total = 0;
            for (String w : cables) {
                total += worst(w).dependentCount(w);
            }
        }
        return worst(cable).dependents(cable, total <= ALL_LISTS_UP_TO ? Integer.MAX_VALUE : SHORT_LIST);
    }

    /** The sources that feed a point, nearest first, with the greatest length over the conditions. */
    public List<FedFrom> fedFromPoint(String point) {
        return merged(conditions.stream().map(c -> c.fedFromPoint(point)).toList());
    }

    /** The sources that feed a component, nearest first, with the greatest length over the conditions. */
    public List<FedFrom> fedFromComponent(String component) {
        return merged(
                conditions.stream().map(c -> c.fedFromComponent(component)).toList());
    }

    private static List<FedFrom> merged(List<List<FedFrom>> lists) {
        if (lists.size() == 1) {
            return lists.get(0);
        }
        Map<String, Double> longest = new LinkedHashMap<>();
        lists.forEach(l -> l.forEach(f -> longest.merge(f.source(), f.lengthM(), Math::max)));
        return longest.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(e -> new FedFrom(e.getKey(), e.getValue()))
                .toList();
    }

    /**
     * The islands that a source feeds, in the order of the drawing; of several conditions, those with the same sources
     * once, at their most loops.
     */
    public List<IslandResult> islands() {
        if (conditions.size() == 1) {
            return conditions.get(0).islands();
        }
        Map<Set<String>, IslandResult> all = new LinkedHashMap<>();
        for (ConditionTopology c : conditions) {
            for (IslandResult island : c.islands()) {
                all.merge(new HashSet<>(island.sources()), island, Topology::larger);
            }
        }
        return List.copyOf(all.values());
    }

    private static IslandResult larger(IslandResult a, IslandResult b) {
        boolean loops = b.loopCount() > a.loopCount();
        boolean points = b.loopCount() == a.loopCount() && b.pointCount() > a.pointCount();
        return loops || points ? b : a;
    }
}
