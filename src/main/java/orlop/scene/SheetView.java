package orlop.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Conductors;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Words;
import orlop.findings.Finding;
import orlop.layout.Placed;
import orlop.layout.Rect;
import orlop.layout.Way;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.Results;

/** What all makers of items look things up in: the request, the placed components and the ways of one sheet. */
record SheetView(
        SceneRequest request,
        Map<String, Placed> placed,
        Map<String, Way> ways,
        Map<String, Ink> inks,
        Map<String, List<String>> drawnOver,
        Map<String, Line> cables) {

    /** A cable among the ways, and what is known of it. */
    private record Line(Cable cable, @Nullable CableResult result) {
        boolean protective() {
            return cable.conductors() == Conductors.PE
                    || (cable.conductors() == null && result != null && result.conductors() == Conductors.PE);
        }
    }

    /** @param room where the drawing may lie */
    static SheetView of(SceneRequest request, Stand stand, Rect room) {
        List<Placed> placed = stand.placed();
        Map<String, Way> ways = stand.routing().ways();
        Map<String, List<String>> drawnOver = stand.drawnOver();
        List<Finding> found = new ArrayList<>(request.findings());
        if (request.margin()) {
            found.addAll(DrawnOver.advice(placed, drawnOver, room));
        }
        Map<String, Placed> byId = new LinkedHashMap<>();
        placed.forEach(p -> byId.put(p.id(), p));
        Map<String, Ink> inks = new LinkedHashMap<>();
        int i = 0;
        for (ElectricalSystem s : request.drawing().systems().values()) {
            inks.put(s.id(), Ink.system(i++));
        }
        Map<String, Line> cables = new HashMap<>();
        for (String id : ways.keySet()) {
            Cable c = request.drawing().cables().get(id);
            if (c != null) {
                cables.put(id, new Line(c, request.results().cables().get(id)));
            }
        }
        return new SheetView(request.withFindings(found), byId, ways, inks, drawnOver, cables);
    }

    /** Whether a way is a cable and no link. */
    boolean isCable(Way way) {
        return cables.containsKey(way.connection().id());
    }

    /** The cable of a way; null if that is a link. */
    @Nullable
    Cable cable(Way way) {
        Line l = cables.get(way.connection().id());
        return l == null ? null : l.cable;
    }

    Drawing drawing() {
        return request.drawing();
    }

    Words words() {
        return request.words();
    }

    /** The ink of a system; that of symbols if it is not known. */
    Ink ink(String system) {
        return inks.getOrDefault(system, Ink.INK);
    }

    /** The system of a way, by the component at its start. */
    String system(Way way) {
        Placed p = placed.get(way.connection().from().component());
        return p == null ? "" : p.component().systemOf(way.connection().from().terminal());
    }

    /** Whether a cable of this sheet is a protective or bonding conductor. */
    boolean protective(String cable) {
        Line l = cables.get(cable);
        return l != null && l.protective();
    }

    /** Whether a component belongs to protective conductors alone: nothing feeds it, so it is never called dead. */
    boolean protectiveComponent(String component) {
        Placed p = placed.get(component);
        return p != null
                && switch (p.component().kind()) {
                    case PROTECTIVE_EARTH_BAR, HULL, HULL_BOND, GALVANIC_ISOLATOR -> true;
                    default -> false;
                };
    }

    /** The ink of a cable's line: that of its system, or of protective conductors, or of what is dead. */
    Ink lineInk(Way way) {
        String id = way.connection().id();
        return protective(id) ? Ink.PROTECTIVE : dead(id) ? Ink.DEAD : ink(system(way));
    }

    /** What is set in a cable's line. */
    String lineName(Way way) {
        return protective(way.connection().id()) ? words().text("scene.protective") : lineName(system(way));
    }

    /** What is set in a line: the system's id, marked where it has three phases. */
    String lineName(String system) {
        ElectricalSystem s = drawing().systems().get(system);
        boolean mark = s != null && s.nature().isThreePhase() && !system.contains("3");
        return mark ? system + " 3~" : system;
    }

    @Nullable
    CableResult result(String cable) {
        Line l = cables.get(cable);
        return l == null ? request.results().cables().get(cable) : l.result;
    }

    /** Whether a component is known to be dead in what is shown. */
    boolean deadComponent(String component) {
        ComponentResult r = request.results().components().get(component);
        return r != null && !r.live() && !protectiveComponent(component);
    }

    /** Says of something dead whether it is so in the condition that is shown, or in all. */
    String dead() {
        boolean governing = request.results().condition().equals(Results.GOVERNING);
        return words().text(governing ? "scene.dead.ever" : "scene.dead");
    }

    /** The condition that is shown; null for the governing one. */
    @Nullable
    OperatingCondition condition() {
        return drawing().conditions().get(request.results().condition());
    }

    /** Whether a cable is known to be dead in what is shown. A protective conductor is never called so. */
    boolean dead(String cable) {
        CableResult r = result(cable);
        return r != null && !r.live() && !protective(cable);
    }
}
