package orlop.study.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
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

    private final Plan plan;
    private final Grid grid;
    private final Surroundings around;
    private final Proposer proposer;
    private final Ends ends;
    private final List<Gap> gaps = new ArrayList<>();
    private final int[] gapAt; // by end: number of its gap; −1 where there is none
    private final Map<Integer, Set<String>> also = new HashMap<>(); // by number of the gap, as the next
    private final Map<Integer, boolean[]> when = new HashMap<>(); // by condition
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
        gapAt = new int[2 * grid.count()];
        Arrays.fill(gapAt, -1);
        guards = new Guards(grid, around, entrances);
        look(new Occasions(grid, around, entrances, ends.bridges()));
        noteShortRuns();
        if (grid.hasDevices()) {
            devices(entrances);
            new SharedFeeds(grid, around, guards.zones()).note();
        }
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
        List<Ends.Bare> bare = bare();
        place(bare);
        attribute(bare);
        if (bare.size() <= MOST_DATED && occasions.conditions().size() > 1) {
            bare.forEach(b -> date(b, occasions));
        }
        Set<Integer> told = new HashSet<>(also.keySet());
        told.addAll(when.keySet());
        for (int n : told) {
            if (n < gaps.size()) {
                List<String> cables = List.copyOf(also.getOrDefault(n, Set.of()));
                gaps.set(n, gaps.get(n).withAlso(cables, conditions(n, occasions.conditions())));
            }
        }
    }

    /** Notes in which conditions it is bare, at the gap that it belongs to. */
    private void date(Ends.Bare b, Occasions occasions) {
        int own = gapAt[grid.end(b.edge(), b.pin())];
        boolean[] is = when.computeIfAbsent(
                own >= 0 ? own : gapBefore(b.arrival()),
                k -> new boolean[occasions.conditions().size()]);
        boolean[] here = occasions.of(b.edge(), b.pin(), ends.ampacityA(b.edge()));
        for (int i = 0; i < is.length; i++) {
            is[i] |= here[i];
        }
    }

    /** All of them where that is not known, or where its sources are never on. */
    private List<String> conditions(int gap, List<String> all) {
        boolean[] is = when.get(gap);
        if (is == null) {
            return all;
        }
        List<String> some = new ArrayList<>();
        for (int i = 0; i < is.length; i++) {
            if (is[i]) {
                some.add(all.get(i));
            }
        }
        return some.isEmpty() ? all : some;
    }

    /** Gaps until, with all proposed devices in place, nothing is bare any more. */
    private void place(List<Ends.Bare> first) {
        List<Ends.Bare> bare = first;
        for (int n = 0; n < ROUNDS && !bare.isEmpty(); n++) {
            markBehind(bare);
            boolean any = false;
            for (Ends.Bare b : bare) {
                Arrivals.Arrival a = b.arrival();
                if (a == null || !a.behindGap() || n == ROUNDS - 1) {
                    place(b);
                    any = true;
                }
            }
            if (!any) { // they stand behind each other in a ring
                place(bare.get(0));
            }
            ends.again();
            bare = bare();
            bare.removeIf(b -> gapAt[grid.end(b.edge(), b.pin())] >= 0);
        }
    }

    private List<Ends.Bare> bare() {
        List<Ends.Bare> found = new ArrayList<>();
        for (int e = 0; e < grid.count(); e++) {
            if (grid.cable(e) >= 0) {
                ends.bare(e, found);
            }
        }
        return found;
    }

    /** Marks the arrivals that have passed a bare cable. */
    private void markBehind(List<Ends.Bare> bare) {
        boolean[] isBare = new boolean[gapAt.length];
        bare.forEach(b -> isBare[grid.end(b.edge(), b.pin())] = true);
        ends.arrivals().markBehind(isBare);
    }

    private void place(Ends.Bare b) {
        int cable = grid.cable(b.edge());
        Rating weakest = weakest(b.edge(), b.pin());
        Gap gap = maker.of(b, weakest, ends.pointKind(b.pin()));
        gapAt[grid.end(b.edge(), b.pin())] = gaps.size();
        gaps.add(gap);
        ends.propose(b.edge(), proposer.guardsFromA(gap.proposed(), cable, weakest));
    }

    /** Rating of the thinnest cable of a row without branch and device: what one device has to guard. */
    private @Nullable Rating weakest(int edge, int pin) {
        Rating least = around.rating(grid.cable(edge));
        int at = grid.other(edge, pin);
        int via = edge;
        for (int n = 0; n < grid.count() && grid.degree(at) == 2 && at != pin; n++) {
            int next = grid.onward(at, via);
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
    private void attribute(List<Ends.Bare> bare) {
        for (Ends.Bare b : bare) {
            if (gapAt[2 * b.edge()] < 0 && gapAt[2 * b.edge() + 1] < 0) {
                also.computeIfAbsent(gapBefore(b.arrival()), k -> new LinkedHashSet<>())
                        .add(tag(b.edge()));
            }
        }
    }

    private String tag(int edge) {
        return grid.connection(edge).item();
    }

    private int gapBefore(Arrivals.@Nullable Arrival arrival) {
        for (Arrivals.Arrival a = arrival; a != null && !a.isStart(); a = a.before()) {
            int gap = gapAt[grid.end(a.via(), a.before().pin())];
            if (gap >= 0) {
                return gap;
            }
        }
        return 0;
    }

    private void noteShortRuns() {
        ends.shortRuns().forEach((edge, metres) -> {
            if (gapAt[2 * edge] < 0 && gapAt[2 * edge + 1] < 0) {
                plan.notes().assumed(tag(edge), "study.assumed.short-run", tag(edge), new Quantity(metres, Unit.METRE));
            }
        });
    }

    // ---- results -------------------------------------------------------------------------------------------------

    /** All gaps: cables without device in the order in which they were found, then devices that don't do. */
    public List<Gap> gaps() {
        List<Gap> all = new ArrayList<>(gaps);
        all.addAll(deviceGaps);
        return all;
    }

    /** Tags of the devices that guard a cable. */
    public List<String> protectedBy(int cable) {
        return guards.of(cable);
    }
}
