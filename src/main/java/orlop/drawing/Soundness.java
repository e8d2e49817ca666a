package orlop.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Whether the parts of a drawing hold together: what is pointed to is there, tags are unique, systems do not meet.
 *
 * <p>This is no electrical judgement. The store refuses a file with flaws; an edit never makes one.
 */
public final class Soundness {
    /**
     * Something that does not hold together.
     *
     * @param item id of the part at fault
     * @param list the list of the file in which it stands: {@code components}, {@code cables} …
     * @param field the key at fault
     * @param message what is wrong and what to do
     */
    public record Flaw(String list, String item, String field, Message message) {}

    private final Drawing drawing;
    private final List<Flaw> flaws = new ArrayList<>();

    private Soundness(Drawing drawing) {
        this.drawing = drawing;
    }

    /** Every flaw, in the order of the drawing. Empty for a sound drawing. */
    public static List<Flaw> flaws(Drawing drawing) {
        Soundness s = new Soundness(drawing);
        s.conditions();
        s.components();
        s.sheetLinks();
        s.cables();
        s.links();
        s.rest();
        return List.copyOf(s.flaws);
    }

    private void conditions() {
        for (OperatingCondition c : drawing.conditions().values()) {
            for (Map.Entry<String, LoadState> e : c.loads()) {
                named("conditions", c.id(), "loads", e.getKey());
            }
            for (Map.Entry<String, String> e : c.sources()) {
                named("conditions", c.id(), "sources", e.getKey());
                if (!e.getValue().equals("on") && !e.getValue().equals("off")) {
                    flaw(
                            "conditions",
                            c.id(),
                            "sources",
                            "drawing.flaw.on-off",
                            e.getKey(),
                            Message.quote(e.getValue()));
                }
            }
            for (Map.Entry<String, String> e : c.switches()) {
                switchPosition(c, e.getKey(), e.getValue());
            }
        }
        for (DayPlan p : drawing.dayPlans().values()) {
            for (DayPlan.Step s : p.steps()) {
                if (!drawing.conditions().contains(s.condition())) {
                    flaw("dayPlans", p.id(), "condition", "drawing.flaw.no-condition", s.condition());
                }
            }
        }
    }

    private void switchPosition(OperatingCondition c, String id, String position) {
        named("conditions", c.id(), "switches", id);
        Component k = drawing.components().get(id);
        if (k != null && !SwitchPositions.of(k.particulars()).contains(position)) {
            flaw(
                    "conditions",
                    c.id(),
                    "switches",
                    "drawing.flaw.position",
                    id,
                    Message.quote(position),
                    List.copyOf(SwitchPositions.of(k.particulars())));
        }
    }

    private void named(String list, String item, String field, String component) {
        if (!drawing.components().contains(component)) {
            flaw(list, item, field, "drawing.flaw.no-component", component);
        }
    }

    private void components() {
        for (Component c : drawing.components().values()) {
            if (drawing.cables().contains(c.id())) {
                flaw("cables", c.id(), "id", "drawing.flaw.twice", c.id());
            }
            if (!drawing.sheets().contains(c.place().sheet())) {
                flaw(
                        "components",
                        c.id(),
                        "sheet",
                        "drawing.flaw.no-sheet",
                        c.place().sheet());
            }
            for (String s : c.systems()) {
                if (!drawing.systems().contains(s)) {
                    flaw("components", c.id(), "system", "drawing.flaw.no-system", s);
                }
            }
            if (!c.location().isEmpty() && !drawing.locations().contains(c.location())) {
                flaw("components", c.id(), "location", "drawing.flaw.no-location", c.location());
            }
            if (c.particulars() instanceof Earth.NeutralEarthLink n
                    && !n.source().isEmpty()
                    && !drawing.components().contains(n.source())) {
                flaw("components", c.id(), "source", "drawing.flaw.no-component", n.source());
            }
        }
    }

    private void sheetLinks() {
        Map<String, String> mates = new HashMap<>();
        for (Component c : drawing.components().values()) {
            if (c.particulars() instanceof Distribution.SheetLink l && !l.mate().isEmpty()) {
                Component mate = drawing.components().get(l.mate());
                boolean mutual = mate != null
                        && mate.particulars() instanceof Distribution.SheetLink m
                        && m.mate().equals(c.id())
                        && !mate.id().equals(c.id());
                if (!mutual || mates.put(l.mate(), c.id()) != null) {
                    flaw("components", c.id(), "mate", "drawing.flaw.mate", l.mate());
                } else if (mate != null
                        && !mate.systems().get(0).equals(c.systems().get(0))) {
                    flaw("components", c.id(), "mate", "drawing.flaw.mate-system", l.mate());
                }
            }
        }
    }

    private void cables() {
        for (Cable w : drawing.cables().values()) {
            ends("cables", w.id(), w.from(), w.to());
            for (String way : w.cableways()) {
                if (!drawing.cableways().contains(way)) {
                    flaw("cables", w.id(), "cableways", "drawing.flaw.no-cableway", way);
                }
            }
        }
    }

    private void links() {
        for (Link l : drawing.links().values()) {
            if (drawing.components().contains(l.id()) || drawing.cables().contains(l.id())) {
                flaw("links", l.id(), "id", "drawing.flaw.twice-link", l.id());
            }
            ends("links", l.id(), l.from(), l.to());
        }
    }

    private void ends(String list, String id, TerminalRef from, TerminalRef to) {
        String a = end(list, id, "from", from);
        String b = end(list, id, "to", to);
        if (a != null && b != null && !a.equals(b)) {
            flaw(list, id, "to", "drawing.flaw.systems-meet", from.toString(), a, to.toString(), b);
        }
    }

    private @Nullable String end(String list, String id, String field, TerminalRef t) {
        Component c = drawing.components().get(t.component());
        if (c == null) {
            flaw(list, id, field, "drawing.flaw.no-component", t.component());
            return null;
        }
        if (!c.particulars().hasTerminal(t.terminal())) {
            flaw(
                    list,
                    id,
                    field,
                    "drawing.flaw.no-terminal",
                    c.id(),
                    t.terminal(),
                    List.copyOf(c.particulars().terminals()));
            return null;
        }
        return c.systemOf(t.terminal());
    }

    private void rest() {
        for (Note n : drawing.notes().values()) {
            if (!drawing.sheets().contains(n.sheet())) {
                flaw("notes", n.id(), "sheet", "drawing.flaw.no-sheet", n.sheet());
            }
        }
        for (Measurement m : drawing.measurements().values()) {
            if (!drawing.hasItem(m.item())) {
                flaw("measurements", m.id(), "item", "drawing.flaw.no-item", m.item());
            }
        }
    }

    private void flaw(String list, String item, String field, String key, Object... arguments) {
        flaws.add(new Flaw(list, item, field, Message.of(key, arguments)));
    }
}
