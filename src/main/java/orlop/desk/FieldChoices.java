package orlop.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.Named;
import orlop.drawing.Protection;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.ProtectiveFamily;

/**
 * What can be chosen in the lines of the cards of one drawing. The same choices are the same list, made once: of a
 * thousand items each has them.
 */
final class FieldChoices {
    /** The word of what is not known: it stands above the rest, as a list begins with what it is before one has chosen. */
    private static final String UNKNOWN = "unknown";

    private static final ClassValue<String> WORDS = new ClassValue<>() {
        @Override
        protected String computeValue(Class<?> type) {
            return type.getSimpleName().replaceAll("([a-z])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
        }
    };

    private final Drawing drawing;
    private final Map<Object, List<CardField.Choice>> made = new HashMap<>();

    FieldChoices(Drawing drawing) {
        this.drawing = drawing;
    }

    /** The choices of a part; none if it is not chosen. */
    List<CardField.Choice> of(RecordParts.Part p, Record record) {
        if (p.type().isEnum()) {
            return once(List.of(p.type(), p.optional()), () -> constants(p));
        }
        if (p.name().equals("mate")) {
            return once("mate", this::mates);
        }
        if (p.name().equals("family")) {
            String now = String.valueOf(RecordParts.get(record, "family"));
            boolean fuse = record instanceof Protection.Fuse;
            return once(List.of(now, fuse), () -> families(now, fuse));
        }
        return List.of();
    }

    /** The electrical systems. */
    List<CardField.Choice> systems() {
        return once("systems", () -> {
            List<String> ids = new ArrayList<>();
            drawing.systems().forEach(e -> ids.add(e.getKey()));
            return ids(ids);
        });
    }

    /** The locations, and none; empty if there are none to choose from. */
    List<CardField.Choice> locations() {
        return once("locations", () -> {
            List<String> places = new ArrayList<>(List.of(""));
            drawing.locations().forEach(e -> places.add(e.getKey()));
            return places.size() > 1 ? ids(places) : List.of();
        });
    }

    /** The positions of a switch. */
    List<CardField.Choice> positions(List<String> positions) {
        return once(
                positions,
                () -> positions.stream()
                        .map(p -> new CardField.Choice(p, Message.of("editor.choice.position." + p)))
                        .toList());
    }

    private List<CardField.Choice> once(Object what, Supplier<List<CardField.Choice>> choices) {
        return made.computeIfAbsent(what, k -> List.copyOf(choices.get()));
    }

    private static List<CardField.Choice> constants(RecordParts.Part p) {
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

    /** The standard types that a device of this sort may be of; one that a file brought along and nobody knows, too. */
    private static List<CardField.Choice> families(String now, boolean fuse) {
        List<CardField.Choice> all = new ArrayList<>(List.of(new CardField.Choice("", Message.of("editor.unknown"))));
        for (ProtectiveFamily f : ProtectiveFamilies.published().all()) {
            if (fuse == (f.kind() == ProtectiveFamily.Kind.FUSE)) {
                all.add(new CardField.Choice(f.id(), Message.of("editor.choice.id", f.standard())));
            }
        }
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
