package orlop.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Group;
import orlop.drawing.Link;
import orlop.drawing.LoadState;
import orlop.drawing.Note;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Poles;
import orlop.drawing.SwitchPositions;

/** The lines of the card of a component, cable, link or note, made from its record. */
public final class CardFields {
    private static final List<String> CABLE_MAIN = List.of("areaMm2", "lengthM", "conductors");
    /** Lines that several items can't have in common. */
    private static final Set<String> OF_ONE = Set.of("mate", "from", "to");

    private static final Set<String> CABLE_FIRST = Set.of("insulationC", "laying");

    private final Drawing drawing;
    private final Predicate<String> wanted;
    private final FieldChoices choices;
    private final List<CardField> fields = new ArrayList<>();

    /** @param wanted whether a line of this path is to be made */
    private CardFields(Drawing drawing, FieldChoices choices, Predicate<String> wanted) {
        this.drawing = drawing;
        this.choices = choices;
        this.wanted = wanted;
    }

    /**
     * The lines for this item; empty if there is no such item.
     *
     * @param condition id of the condition that is shown; lines that belong to one are left out if it is none
     */
    public static List<CardField> of(Drawing d, String item, String condition) {
        return new CardFields(d, new FieldChoices(d), path -> true).of(item, condition);
    }

    private List<CardField> of(String item, String condition) {
        Drawing d = drawing;
        Component c = d.components().get(item);
        Cable w = d.cables().get(item);
        Link l = d.links().get(item);
        Note n = d.notes().get(item);
        if (c != null) {
            component(c, d.conditions().get(condition));
        } else if (w != null) {
            cable(w);
        } else if (l != null) {
            part(CardField.Section.MAIN, "", l, "lengthM");
            part(CardField.Section.MAIN, "", l, "ratingA");
        } else if (n != null) {
            add(new CardField(
                    CardField.Section.MAIN, "text", "text", CardField.Type.LINES, false, n.text(), List.of()));
            part(CardField.Section.MAIN, "", n, "heightMm");
        }
        return fields;
    }

    /**
     * The lines that all these items have, in the order of the first one's card. Where values differ the line is mixed.
     * The other end of a sheet link is left out, since two can't have the same, and so are the ends of cables.
     *
     * @param items ids; those that are not there are passed over
     */
    public static List<CardField> common(Drawing d, Set<String> items, String condition) {
        FieldChoices choices = new FieldChoices(d);
        Map<String, CardField> common = null;
        for (String item : unlikeFirst(d, items)) {
            Map<String, CardField> lines = common;
            List<CardField> own =
                    new CardFields(d, choices, p -> lines == null || lines.containsKey(p)).of(item, condition);
            if (lines == null) {
                common = new LinkedHashMap<>();
                for (CardField f : own) {
                    if (!OF_ONE.contains(f.name())) {
                        common.put(f.path(), f);
                    }
                }
            } else {
                keep(lines, own);
            }
        }
        return common == null ? List.of() : List.copyOf(common.values());
    }

    /** Those that are there: the first one, then the first of each other kind, for few lines are left after these. */
    private static List<String> unlikeFirst(Drawing d, Set<String> items) {
        Map<Object, String> first = new LinkedHashMap<>();
        List<String> rest = new ArrayList<>();
        for (String item : items) {
            Component c = d.components().get(item);
            boolean there = d.hasItem(item) || d.notes().contains(item);
            Object kind = c != null
                    ? c.kind()
                    : d.cables().contains(item) ? Cable.class : d.links().contains(item);
            if (there && first.putIfAbsent(kind, item) != null) {
                rest.add(item);
            }
        }
        List<String> ordered = new ArrayList<>(first.values());
        ordered.addAll(rest);
        return ordered;
    }

    /** Keeps of these lines those that another item has too. */
    private static void keep(Map<String, CardField> lines, List<CardField> own) {
        Map<String, CardField> there = new HashMap<>();
        own.forEach(f -> there.put(f.path(), f));
        for (Iterator<Map.Entry<String, CardField>> all = lines.entrySet().iterator(); all.hasNext(); ) {
            Map.Entry<String, CardField> line = all.next();
            CardField other = there.get(line.getKey());
            if (other == null || !line.getValue().sameLine(other)) {
                all.remove();
            } else {
                line.setValue(line.getValue().with(other));
            }
        }
    }

    private void component(Component c, @Nullable OperatingCondition condition) {
        part(CardField.Section.MAIN, "", c, "name");
        int systems = c.kind().spansSystems()
                ? Math.max(2, c.systems().size())
                : c.systems().size();
        for (int i = 0; i < systems; i++) {
            String now = c.systems().get(Math.min(i, c.systems().size() - 1));
            String name = systems == 1 ? "system" : i == 0 ? "systemIn" : "systemOut";
            add(new CardField(
                    CardField.Section.MAIN,
                    "systems." + i,
                    name,
                    CardField.Type.CHOICE,
                    false,
                    now,
                    choices.systems()));
        }
        Record p = (Record) c.particulars();
        for (RecordParts.Part part : RecordParts.of(p.getClass())) {
            if (wanted.test("particulars." + part.name()) && Meaning.has(drawing, c, part.name())) {
                part(CardField.Section.PARTICULARS, "particulars.", p, part.name());
            }
        }
        fields.replaceAll(f -> f.name().equals("poles") ? f.choosing(v -> fits(c, f, v)) : f);
        if (condition != null) {
            condition(c, condition);
        }
        if (!choices.locations().isEmpty()) {
            add(new CardField(
                    CardField.Section.MORE,
                    "location",
                    "location",
                    CardField.Type.CHOICE,
                    false,
                    c.location(),
                    choices.locations()));
        }
        part(CardField.Section.MORE, "", c, "refit");
        part(CardField.Section.MORE, "", c, "stage");
        part(CardField.Section.MORE, "", c, "locked");
    }

    private boolean fits(Component c, CardField poles, Object value) {
        return value.equals(poles.value())
                || (value instanceof Poles p
                        && PolesFit.of(PolesFit.nature(drawing, c)).contains(p));
    }

    private void condition(Component c, OperatingCondition condition) {
        if (c.kind().group() == Group.LOADS) {
            LoadState s = condition.load(c.id());
            part(CardField.Section.CONDITION, "condition.", s, "running");
            part(CardField.Section.CONDITION, "condition.", s, "simultaneity");
            part(CardField.Section.CONDITION, "condition.", s, "average");
        } else if (c.kind().group() == Group.SOURCES) {
            boolean on = condition.sourceOn(c.id());
            add(new CardField(
                    CardField.Section.CONDITION,
                    "condition.source",
                    "sourceOn",
                    CardField.Type.FLAG,
                    false,
                    on,
                    List.of()));
        }
        List<String> positions = SwitchPositions.of(c.particulars());
        if (!positions.isEmpty()) {
            String now = SwitchPositions.in(condition, c);
            add(new CardField(
                    CardField.Section.CONDITION,
                    "condition.position",
                    "positionHere",
                    CardField.Type.CHOICE,
                    false,
                    now,
                    choices.positions(positions)));
        }
    }

    private void cable(Cable w) {
        CABLE_MAIN.forEach(name -> part(CardField.Section.MAIN, "", w, name));
        for (RecordParts.Part p : RecordParts.of(Cable.Construction.class)) {
            CardField.Section section =
                    CABLE_FIRST.contains(p.name()) ? CardField.Section.PARTICULARS : CardField.Section.MORE;
            part(section, "construction.", w.construction(), p.name());
        }
        end(w, true);
        end(w, false);
        part(w.lengthEstimated() ? CardField.Section.PARTICULARS : CardField.Section.MORE, "", w, "lengthEstimated");
        part(CardField.Section.MORE, "", w, "name");
        part(CardField.Section.MORE, "", w, "parallel");
        for (RecordParts.Part p : RecordParts.of(Cable.Return.class)) {
            part(CardField.Section.MORE, "returns.", w.returns(), p.name());
        }
        for (RecordParts.Part p : RecordParts.of(Cable.Measured.class)) {
            if (wanted.test("measured." + p.name()) && Meaning.has(drawing, w, p.name())) {
                part(CardField.Section.MORE, "measured.", w.measured(), p.name());
            }
        }
        part(CardField.Section.MORE, "", w, "conductorC");
        part(CardField.Section.MORE, "", w, "refit");
        part(CardField.Section.MORE, "", w, "stage");
        part(CardField.Section.MORE, "", w, "locked");
    }

    private void end(Cable w, boolean atFrom) {
        String name = atFrom ? "from" : "to";
        if (wanted.test(name)) {
            List<CardField.Choice> places = CableEnds.choices(drawing, w, atFrom).stream()
                    .map(t -> new CardField.Choice(t, TerminalNames.of(drawing, t)))
                    .toList();
            String now = CableEnds.name(drawing, atFrom ? w.from() : w.to());
            add(new CardField(CardField.Section.MORE, name, name, CardField.Type.CHOICE, false, now, places));
        }
    }

    private void part(CardField.Section section, String prefix, Record record, String name) {
        if (!wanted.test(prefix + name)) {
            return;
        }
        RecordParts.Part part = RecordParts.of(record.getClass()).stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
        Object value = RecordParts.get(record, name);
        List<CardField.Choice> all = choices.of(part, record);
        CardField.Type type = all.isEmpty() ? type(part) : CardField.Type.CHOICE;
        add(new CardField(section, prefix + name, name, type, part.optional(), value, all));
    }

    private void add(CardField f) {
        if (wanted.test(f.path())) {
            fields.add(f);
        }
    }

    private static CardField.Type type(RecordParts.Part p) {
        if (p.type() == double.class || p.type() == Double.class) {
            return CardField.Type.NUMBER;
        }
        if (p.type() == int.class || p.type() == Integer.class) {
            return CardField.Type.WHOLE;
        }
        return p.type() == boolean.class ? CardField.Type.FLAG : CardField.Type.TEXT;
    }
}
