package orlop.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
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
import orlop.drawing.Poles;
import orlop.drawing.Protection;
import orlop.drawing.SwitchPositions;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.ProtectiveFamily;

/** The lines of the card of a component, cable, link or note, made from its record. */
public final class CardFields {
    /** The word of what is not known: it stands above the rest, as a list begins with what it is before one has chosen. */
    private static final String UNKNOWN = "unknown";

    private static final List<String> CABLE_MAIN = List.of("areaMm2", "lengthM", "conductors");
    private static final Set<String> CABLE_FIRST = Set.of("insulationC", "laying");

    private static final ClassValue<String> WORDS = new ClassValue<>() {
        @Override
        protected String computeValue(Class<?> type) {
            return type.getSimpleName().replaceAll("([a-z])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
        }
    };

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
            f.part(CardField.Section.MAIN, "", l, "lengthM");
            f.part(CardField.Section.MAIN, "", l, "ratingA");
        } else if (n != null) {
            f.add(new CardField(
                    CardField.Section.MAIN, "text", "text", CardField.Type.LINES, false, n.text(), List.of()));
            f.part(CardField.Section.MAIN, "", n, "heightMm");
        }
        return f.fields;
    }

    /**
     * The lines that all these items have, in the order of the first one's card. Where values differ the line is mixed.
     * The other end of a sheet link is left out: two can't have the same.
     *
     * @param items ids; those that are not there are passed over
     */
    public static List<CardField> common(Drawing d, Set<String> items, String condition) {
        List<CardField> common = null;
        for (String item : items) {
            List<CardField> own = of(d, item, condition);
            if (common == null) {
                common = own.stream().filter(f -> !f.name().equals("mate")).toList();
            } else if (!own.isEmpty()) {
                common = common.stream()
                        .flatMap(f -> own.stream().filter(f::sameLine).map(f::with))
                        .toList();
            }
        }
        return common == null ? List.of() : common;
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
                    CardField.Section.MAIN, "systems." + i, name, CardField.Type.CHOICE, false, now, ids(systemIds())));
        }
        Record p = (Record) c.particulars();
        for (RecordParts.Part part : RecordParts.of(p.getClass())) {
            if (Meaning.has(drawing, c, part.name())) {
                part(CardField.Section.PARTICULARS, "particulars.", p, part.name());
            }
        }
        fields.replaceAll(f -> f.name().equals("poles") ? f.choosing(v -> fits(c, f, v)) : f);
        if (condition != null) {
            condition(c, condition);
        }
        List<String> places = new ArrayList<>(List.of(""));
        drawing.locations().forEach(e -> places.add(e.getKey()));
        if (places.size() > 1) {
            add(new CardField(
                    CardField.Section.MORE,
                    "location",
                    "location",
                    CardField.Type.CHOICE,
                    false,
                    c.location(),
                    ids(places)));
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

    private List<String> systemIds() {
        List<String> ids = new ArrayList<>();
        drawing.systems().forEach(e -> ids.add(e.getKey()));
        return ids;
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
            List<CardField.Choice> choices = positions.stream()
                    .map(p -> new CardField.Choice(p, Message.of("editor.choice.position." + p)))
                    .toList();
            String now = SwitchPositions.in(condition, c);
            add(new CardField(
                    CardField.Section.CONDITION,
                    "condition.position",
                    "positionHere",
                    CardField.Type.CHOICE,
                    false,
                    now,
                    choices));
        }
    }

    private void cable(Cable w) {
        CABLE_MAIN.forEach(name -> part(CardField.Section.MAIN, "", w, name));
        for (RecordParts.Part p : RecordParts.of(Cable.Construction.class)) {
            CardField.Section section =
                    CABLE_FIRST.contains(p.name()) ? CardField.Section.PARTICULARS : CardField.Section.MORE;
            part(section, "construction.", w.construction(), p.name());
        }
        part(
                w.lengthEstimated() ? CardField.Section.PARTICULARS : CardField.Section.MORE,
                "",
                w,
                "lengthEstimated");
        part(CardField.Section.MORE, "", w, "name");
        part(CardField.Section.MORE, "", w, "parallel");
        for (RecordParts.Part p : RecordParts.of(Cable.Return.class)) {
            part(CardField.Section.MORE, "returns.", w.returns(), p.name());
        }
        for (RecordParts.Part p : RecordParts.of(Cable.Measured.class)) {
            if (Meaning.has(drawing, w, p.name())) {
                part(CardField.Section.MORE, "measured.", w.measured(), p.name());
            }
        }
        part(CardField.Section.MORE, "", w, "conductorC");
        part(CardField.Section.MORE, "", w, "refit");
        part(CardField.Section.MORE, "", w, "stage");
        part(CardField.Section.MORE, "", w, "locked");
    }

    private void part(CardField.Section section, String prefix, Record record, String name) {
        RecordParts.Part part = RecordParts.of(record.getClass()).stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
        Object value = RecordParts.get(record, name);
        List<CardField.Choice> choices = choices(part, record);
        CardField.Type type = choices.isEmpty() ? type(part) : CardField.Type.CHOICE;
        add(new CardField(section, prefix + name, name, type, part.optional(), value, choices));
    }

    private void add(CardField f) {
        fields.add(f);
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

    private List<CardField.Choice> choices(RecordParts.Part p, Record record) {
        if (p.type().isEnum()) {
            List<CardField.Choice> all = new ArrayList<>();
            if (p.optional()) {
                all.add(new CardField.Choice("", Message.of("editor.choice.by-system")));
            }
            Arrays.stream(p.type().getEnumConstants())
                    .sorted(Comparator.comparing(v -> !UNKNOWN.equals(((Named) v).word())))
                    .map(v -> new CardField.Choice(
                            v, Message.of("editor.choice." + word(p.type()) + "." + ((Named) v).word())))
                    .forEach(all::add);
            return all;
        }
        if (p.name().equals("mate")) {
            return mates();
        }
        return p.name().equals("family") ? families(record) : List.of();
    }

    /** The standard types that a device of this sort may be of; one that a file brought along and nobody knows, too. */
    private static List<CardField.Choice> families(Record device) {
        boolean fuse = device instanceof Protection.Fuse;
        List<CardField.Choice> all = new ArrayList<>(List.of(new CardField.Choice("", Message.of("editor.unknown"))));
        for (ProtectiveFamily f : ProtectiveFamilies.published().all()) {
            if (fuse == (f.kind() == ProtectiveFamily.Kind.FUSE)) {
                all.add(new CardField.Choice(f.id(), Message.of("editor.choice.id", f.standard())));
            }
        }
        String now = String.valueOf(RecordParts.get(device, "family"));
        if (all.stream().noneMatch(c -> c.value().equals(now))) {
            all.add(new CardField.Choice(now, Message.of("editor.choice.id", now)));
        }
        return all;
    }

    private List<CardField.Choice> mates() {
        List<String> ids = new ArrayList<>(List.of(""));
        drawing.components().stream()
                .filter(c -> c.kind() == Kind.SHEET_LINK && c.particulars() instanceof Distribution.SheetLink)
                .forEach(c -> ids.add(c.id()));
        return ids(ids);
    }

    /** The type of a choice as it stands in text keys: {@code load-behaviour}. */
    static String word(Class<?> type) {
        return WORDS.get(type);
    }

    private static List<CardField.Choice> ids(List<String> ids) {
        return ids.stream()
                .map(id -> new CardField.Choice(
                        id, id.isEmpty() ? Message.of("editor.choice.none") : Message.of("editor.choice.id", id)))
                .toList();
    }
}
