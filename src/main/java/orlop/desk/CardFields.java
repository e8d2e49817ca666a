package orlop.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.desk.CardField.Choice;
import orlop.desk.CardField.Section;
import orlop.desk.CardField.Type;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.LoadState;
import orlop.drawing.Message;
import orlop.drawing.Named;
import orlop.drawing.Note;
import orlop.drawing.OperatingCondition;
import orlop.drawing.SwitchPositions;

/** The lines of the card of a component, cable, link or note, made from its record. */
public final class CardFields {
    private static final List<String> CABLE_MAIN = List.of("areaMm2", "lengthM", "conductors");
    private static final Set<String> CABLE_FIRST = Set.of("insulationC", "laying");

    private final Drawing drawing;
    private final List<CardField> fields = new ArrayList<>();

    private CardFields(Drawing drawing) {
        this.drawing = drawing;
    }

    /**
     * The lines for this item; empty if there is no such item.
     *
     * @param condition id of the condition that is shown; lines that belong to one are left out if it is none
     */
    public static List<CardField> of(Drawing d, String item, String condition) {
        CardFields f = new CardFields(d);
        Component c = d.components().get(item);
        Cable w = d.cables().get(item);
        Link l = d.links().get(item);
        Note n = d.notes().get(item);
        if (c != null) {
            f.component(c, d.conditions().get(condition));
        } else if (w != null) {
            f.cable(w);
        } else if (l != null) {
            f.part(Section.MAIN, "", l, "lengthM");
            f.part(Section.MAIN, "", l, "ratingA");
        } else if (n != null) {
            f.part(Section.MAIN, "", n, "text");
            f.part(Section.MAIN, "", n, "heightMm");
        }
        return f.fields;
    }

    private void component(Component c, @Nullable OperatingCondition condition) {
        part(Section.MAIN, "", c, "name");
        int systems = c.kind().spansSystems()
                ? Math.max(2, c.systems().size())
                : c.systems().size();
        for (int i = 0; i < systems; i++) {
            String now = c.systems().get(Math.min(i, c.systems().size() - 1));
            String name = systems == 1 ? "system" : i == 0 ? "systemIn" : "systemOut";
            add(new CardField(Section.MAIN, "systems." + i, name, Type.CHOICE, false, now, ids(systemIds())));
        }
        Record p = (Record) c.particulars();
        for (RecordParts.Part part : RecordParts.of(p.getClass())) {
            part(Section.PARTICULARS, "particulars.", p, part.name());
        }
        if (condition != null) {
            condition(c, condition);
        }
        List<String> places = new ArrayList<>(List.of(""));
        drawing.locations().forEach(e -> places.add(e.getKey()));
        if (places.size() > 1) {
            add(new CardField(Section.MORE, "location", "location", Type.CHOICE, false, c.location(), ids(places)));
        }
        part(Section.MORE, "", c, "refit");
        part(Section.MORE, "", c, "stage");
        part(Section.MORE, "", c, "locked");
    }

    private List<String> systemIds() {
        List<String> ids = new ArrayList<>();
        drawing.systems().forEach(e -> ids.add(e.getKey()));
        return ids;
    }

    private void condition(Component c, OperatingCondition condition) {
        if (c.kind().group() == Group.LOADS) {
            LoadState s = condition.load(c.id());
            part(Section.CONDITION, "condition.", s, "running");
            part(Section.CONDITION, "condition.", s, "simultaneity");
            part(Section.CONDITION, "condition.", s, "average");
        } else if (c.kind().group() == Group.SOURCES) {
            boolean on = condition.sourceOn(c.id());
            add(new CardField(Section.CONDITION, "condition.source", "sourceOn", Type.FLAG, false, on, List.of()));
        }
        List<String> positions = SwitchPositions.of(c.particulars());
        if (!positions.isEmpty()) {
            List<Choice> choices = positions.stream()
                    .map(p -> new Choice(p, Message.of("editor.choice.position." + p)))
                    .toList();
            String now = SwitchPositions.in(condition, c);
            add(new CardField(
                    Section.CONDITION, "condition.position", "positionHere", Type.CHOICE, false, now, choices));
        }
    }

    private void cable(Cable w) {
        CABLE_MAIN.forEach(name -> part(Section.MAIN, "", w, name));
        for (RecordParts.Part p : RecordParts.of(Cable.Construction.class)) {
            Section section = CABLE_FIRST.contains(p.name()) ? Section.PARTICULARS : Section.MORE;
            part(section, "construction.", w.construction(), p.name());
        }
        part(Section.MORE, "", w, "name");
        part(Section.MORE, "", w, "parallel");
        for (RecordParts.Part p : RecordParts.of(Cable.Return.class)) {
            part(Section.MORE, "returns.", w.returns(), p.name());
        }
        for (RecordParts.Part p : RecordParts.of(Cable.Measured.class)) {
            part(Section.MORE, "measured.", w.measured(), p.name());
        }
        part(Section.MORE, "", w, "conductorC");
        part(Section.MORE, "", w, "refit");
        part(Section.MORE, "", w, "stage");
    }

    private void part(Section section, String prefix, Record record, String name) {
        RecordParts.Part part = RecordParts.of(record.getClass()).stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
        Object value = RecordParts.get(record, name);
        List<Choice> choices = choices(part);
        Type type = choices.isEmpty() ? type(part) : Type.CHOICE;
        add(new CardField(section, prefix + name, name, type, part.optional(), value, choices));
    }

    private void add(CardField f) {
        fields.add(f);
    }

    private static Type type(RecordParts.Part p) {
        if (p.type() == double.class || p.type() == Double.class) {
            return Type.NUMBER;
        }
        if (p.type() == int.class || p.type() == Integer.class) {
            return Type.WHOLE;
        }
        return p.type() == boolean.class ? Type.FLAG : Type.TEXT;
    }

    private List<Choice> choices(RecordParts.Part p) {
        if (p.type().isEnum()) {
            List<Choice> all = new ArrayList<>();
            if (p.optional()) {
                all.add(new Choice("", Message.of("editor.choice.by-system")));
            }
            Arrays.stream(p.type().getEnumConstants())
                    .map(v -> new Choice(v, Message.of("editor.choice." + word(p.type()) + "." + ((Named) v).word())))
                    .forEach(all::add);
            return all;
        }
        if (p.name().equals("mate")) {
            return mates();
        }
        return List.of();
    }

    private List<Choice> mates() {
        List<String> ids = new ArrayList<>(List.of(""));
        drawing.components().stream()
                .filter(c -> c.kind() == Kind.SHEET_LINK && c.particulars() instanceof Distribution.SheetLink)
                .forEach(c -> ids.add(c.id()));
        return ids(ids);
    }

    /** The type of a choice as it stands in text keys: {@code load-behaviour}. */
    static String word(Class<?> type) {
        return type.getSimpleName().replaceAll("([a-z])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }

    private static List<Choice> ids(List<String> ids) {
        return ids.stream()
                .map(id -> new Choice(
                        id, id.isEmpty() ? Message.of("editor.choice.none") : Message.of("editor.choice.id", id)))
                .toList();
    }
}
