package orlop.study.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.network.Network;
import orlop.study.Gap;
import orlop.study.model.DeviceModel;
import orlop.study.model.Plan;
import orlop.study.model.Rating;

/**
 * Overcurrent protection of every cable against every source, in every position that switches can take.
 *
 * <p>A cable is guarded at an end if every way on which current can come in there passes a device that guards a conductor
 * of its ampacity; if the sources that come unguarded limit themselves to what it carries; or if every way on from there
 * meets a device within the permitted distance, the devices together letting pass no more than it carries. Where devices
 * are missing, the fewest are proposed: each time at the first bare cable of a way, until with all of them in place
 * nothing is bare any more.
 */
public final class Coverage {
    private static final int ROUNDS = 60;

    /** Of more bare ends than this it is not asked in which conditions they are: in all of them, to be safe. */
    private static final int MOST_DATED = 300;

    /** One end of one cable. */
    private record End(int edge, int pin) {}

    private final Plan plan;
    private final Grid grid;
    private final Surroundings around;
    private final Proposer proposer;
    private final Ends ends;
    private final List<Integer> cableEdges = new ArrayList<>();
    private final Map<End, Gap> gaps = new LinkedHashMap<>();
    private final Map<End, Set<String>> also = new HashMap<>();
    private final Map<End, boolean[]> when = new HashMap<>(); // by condition
    private final List<Gap> deviceGaps = new ArrayList<>();
    private final Guards guards;
    private final GapMaker maker;

    /** @param reach the network with every switch closed */
    public Coverage(Plan plan, Network reach, Surroundings around) {
        this.plan = plan;
        this.around = around;
        grid = new Grid(plan, reach);
        proposer = new Proposer(plan, around);
        maker = new GapMaker(grid, around, proposer);
        List<Entrance> entrances = new Entrances(grid).all();
        ends = new Ends(grid, around, new Distances(plan.drawing(), plan.rules()), entrances);
        for (int e = 0; e < grid.count(); e++) {
            if (grid.cable(e) >= 0) {
                cableEdges.add(e);
            }
        }
        guards = new Guards(grid, around, entrances);
        look(new Occasions(grid, around, entrances));
        noteShortRuns();
        devices(entrances);
        new SharedFeeds(grid, around, guards.zones()).note();
    }

    private void devices(List<Entrance> entrances) {
        OpeningCheck opening = new OpeningCheck(grid, around, proposer, guards.zones(), entrances);
        for (int e = 0; e < grid.count(); e++) {
            DeviceModel device = grid.device(e);
            if (device != null) {
                deviceGaps.addAll(new DeviceCheck(grid, around, proposer, e, device).gaps());
                Gap late = opening.of(e, device);
                if (late != null) {
                    deviceGaps.add(late);
                }
            }
        }
    }

    // ---- cables without device ---------------------------------------------------------------------------------

    private void look(Occasions occasions) {
        Map<End, Ends.Bare> bare = bare();
        place(bare);
        attribute(bare);
        if (bare.size() <= MOST_DATED && occasions.conditions().size() > 1) {
            bare.forEach((end, b) -> date(end, b, occasions));
        }
        gaps.replaceAll((end, gap) ->
                gap.withAlso(List.copyOf(also.getOrDefault(end, Set.of())), conditions(end, occasions.conditions())));
    }

    /** Notes in which conditions it is bare, at the gap that it belongs to. */
    private void date(End end, Ends.Bare b, Occasions occasions) {
        End gap = gaps.containsKey(end) ? end : gapBefore(b.arrival());
        boolean[] is = when.computeIfAbsent(
                gap, k -> new boolean[occasions.conditions().size()]);
        for (int i = 0; i < is.length; i++) {
            is[i] |= occasions.is(i, end.edge(), end.pin(), ends.ampacityA(end.edge()));
        }
    }

    /** All of them where that is not known, or where its sources are never on. */
    private List<String> conditions(End gap, List<String> all) {
        boolean[] is = when.getOrDefault(gap, new boolean[all.size()]);
        List<String> some = new ArrayList<>();
        for (int i = 0; i < is.length; i++) {
            if (is[i]) {
                some.add(all.get(i));
            }
        }
        return some.isEmpty() ? all : some;
    }

    /** Gaps until, with all proposed devices in place, nothing is bare any more. */
    private void place(Map<End, Ends.Bare> first) {
        Map<End, Ends.Bare> bare = first;
        for (int n = 0; n < ROUNDS && !bare.isEmpty(); n++) {
            markBehind(bare);
            boolean any = false;
            for (Map.Entry<End, Ends.Bare> b : bare.entrySet()) {
                Arrivals.Arrival a = b.getValue().arrival();
                if (a == null || !a.behindGap() || n == ROUNDS - 1) {
                    place(b.getKey(), b.getValue());
                    any = true;
                }
            }
            if (!any) { // they stand behind each other in a ring
                Map.Entry<End, Ends.Bare> one = bare.entrySet().iterator().next();
                place(one.getKey(), one.getValue());
            }
            ends.again();
            bare = bare();
            bare.keySet().removeAll(gaps.keySet());
        }
    }

    private Map<End, Ends.Bare> bare() {
        Map<End, Ends.Bare> found = new LinkedHashMap<>();
        for (int e : cableEdges) {
            for (Ends.Bare b : ends.bare(e)) {
                found.put(new End(e, b.pin()), b);
            }
        }
        return found;
    }

    /** Marks the arrivals that have passed a bare cable. */
    private void markBehind(Map<End, Ends.Bare> bare) {
        for (Arrivals.Arrival a : ends.arrivals().all()) {
            a.setBehindGap(!a.isStart()
                    && (a.before().behindGap()
                            || bare.containsKey(new End(a.via(), a.before().pin()))));
        }
    }

    private void place(End end, Ends.Bare b) {
        int cable = grid.cable(b.edge());
        Rating weakest = weakest(b.edge(), b.pin());
        Gap gap = maker.of(b, weakest, ends.pointKind(b.pin()));
        gaps.put(end, gap);
        ends.propose(
                b.edge(), proposer.guardsFromA(gap.proposed(), plan.cables().get(cable), cable, weakest));
    }

    /** Rating of the thinnest cable of a row without branch and device: what one device has to guard. */
    private @Nullable Rating weakest(int edge, int pin) {
        Rating least = around.rating(grid.cable(edge));
        int at = grid.other(edge, pin);
        int via = edge;
        for (int n = 0; n < grid.count() && grid.at(at).length == 2 && at != pin; n++) {
            int next = grid.at(at)[0] == via ? grid.at(at)[1] : grid.at(at)[0];
            if (grid.device(next) != null) {
                break;
            }
            if (grid.cable(next) >= 0) {
                Rating r = around.rating(grid.cable(next));
                least = least == null || (r != null && r.amps() < least.amps()) ? r : least;
            }
            at = grid.other(next, at);
            via = next;
        }
        return least;
    }

    /** Every other bare cable belongs to the gap whose device would guard it too. */
    private void attribute(Map<End, Ends.Bare> bare) {
        Set<String> own = new LinkedHashSet<>();
        gaps.values().forEach(g -> own.add(g.cable()));
        for (Map.Entry<End, Ends.Bare> b : bare.entrySet()) {
            String cable = tag(b.getKey().edge());
            if (!own.contains(cable)) {
                End gap = gapBefore(b.getValue().arrival());
                also.computeIfAbsent(gap, k -> new LinkedHashSet<>()).add(cable);
            }
        }
    }

    private String tag(int edge) {
        return grid.connection(edge).item();
    }

    private End gapBefore(Arrivals.@Nullable Arrival arrival) {
        for (Arrivals.Arrival a = arrival; a != null && !a.isStart(); a = a.before()) {
            End end = new End(a.via(), a.before().pin());
            if (gaps.containsKey(end)) {
                return end;
            }
        }
        return gaps.keySet().iterator().next();
    }

    private void noteShortRuns() {
        ends.shortRuns().forEach((edge, metres) -> {
            if (gaps.keySet().stream().noneMatch(g -> g.edge() == edge)) {
                plan.notes().assumed(tag(edge), "study.assumed.short-run", tag(edge), new Quantity(metres, Unit.METRE));
            }
        });
    }

    // ---- results -------------------------------------------------------------------------------------------------

    /** All gaps: cables without device in the order in which they were found, then devices that don't do. */
    public List<Gap> gaps() {
        List<Gap> all = new ArrayList<>(gaps.values());
        all.addAll(deviceGaps);
        return all;
    }

    /** Tags of the devices that guard a cable. */
    public List<String> protectedBy(int cable) {
        return guards.of(cable);
    }
}
