package orlop.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Named;
import orlop.drawing.Note;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;
import orlop.drawing.Words;
import orlop.findings.Finding;

/**
 * Finds items of all sheets by what a person types: tag, name, kind, a value with its unit, words of a note or of a
 * finding. The best hit comes first: the very tag, then the beginning of a tag, then words. Used by one thread.
 */
public final class Search {
    private static final int MOST = 200;

    private final Words words;
    private @Nullable Drawing indexed;
    private List<Item> index = List.of();

    /** @param words the language in which a person types */
    public Search(Words words) {
        this.words = words;
    }

    /**
     * What was found.
     *
     * @param item tag of the component or cable, or id of the note
     * @param text what it is, in words
     * @param sheet id of its sheet; "" if it has none
     * @param number of that sheet; ""
     * @param finding the finding whose words were typed; null where the item itself was found
     */
    public record Hit(
            String item,
            String text,
            String sheet,
            String number,
            @Nullable Finding finding) {}

    private record Ranked(int rank, Hit hit) {}

    /** A number of a record, with the measure in which it is typed. */
    private record Number(Measure measure, double value) {}

    /**
     * What can be found of one item.
     *
     * @param tag in small letters
     * @param text tag and words in small letters
     * @param particulars the words in its particulars
     */
    private record Item(Hit hit, String tag, String text, String particulars, List<Number> numbers) {}

    /** The hits, the best first, at most 200; none for blank words. */
    public List<Hit> find(SessionState s, String typed) {
        String text = lower(typed.strip());
        if (text.isEmpty()) {
            return List.of();
        }
        Map<Measure, Double> values = values(text);
        List<Ranked> all = new ArrayList<>();
        for (Item i : index(s.drawing())) {
            int rank = rank(i, text, values);
            if (rank >= 0) {
                all.add(new Ranked(rank, i.hit()));
            }
        }
        findings(all, s, text);
        return all.stream()
                .sorted(Comparator.comparingInt(Ranked::rank))
                .limit(MOST)
                .map(Ranked::hit)
                .toList();
    }

    private static int rank(Item i, String text, Map<Measure, Double> values) {
        if (i.tag().equals(text)) {
            return 0;
        }
        if (i.tag().startsWith(text)) {
            return 1;
        }
        if (all(i.text(), text)) {
            return 2;
        }
        boolean value =
                i.numbers().stream().anyMatch(n -> Double.valueOf(n.value()).equals(values.get(n.measure())));
        return value || all(i.text() + " " + i.particulars(), text) ? 3 : -1;
    }

    /** What was typed, as a value of each measure as which it can be read. */
    private static Map<Measure, Double> values(String text) {
        Map<Measure, Double> values = new EnumMap<>(Measure.class);
        for (Measure m : Measure.values()) {
            if (NumberInput.read(text, m) instanceof NumberInput.Value v) {
                values.put(m, v.value());
            }
        }
        return values;
    }

    /** Everything that can be found in a drawing; it is gathered once, not with every letter that is typed. */
    @SuppressWarnings("ReferenceEquality") // another drawing is another object
    private List<Item> index(Drawing d) {
        if (indexed == d) {
            return index;
        }
        List<Item> items = new ArrayList<>();
        for (Component c : d.components().values()) {
            String kind = words.text(c.kind().term());
            String what = c.name().isEmpty() ? kind : c.name() + ", " + kind;
            items.add(item(d, c.id(), what, c.place().sheet(), (Record) c.particulars()));
        }
        for (Cable w : d.cables().values()) {
            String ends = w.from().component() + " – " + w.to().component();
            String what = w.name().isEmpty() ? ends : w.name() + ", " + ends;
            items.add(item(d, w.id(), what, sheet(d, w.id()), w));
        }
        for (Note n : d.notes().values()) {
            Hit hit = new Hit(n.id(), n.text(), n.sheet(), number(d, n.sheet()), null);
            items.add(new Item(hit, lower(n.id()), lower(n.text()), "", List.of()));
        }
        index = items;
        indexed = d;
        return items;
    }

    private static Item item(Drawing d, String id, String what, String sheet, Record particulars) {
        StringBuilder text = new StringBuilder();
        List<Number> numbers = new ArrayList<>();
        gather(particulars, text, numbers);
        Hit hit = new Hit(id, what, sheet, number(d, sheet), null);
        return new Item(hit, lower(id), lower(id + " " + what), text.toString(), List.copyOf(numbers));
    }

    /** The words and numbers in a record and in the records in it: standard types, chemistry, areas. */
    private static void gather(Record record, StringBuilder text, List<Number> numbers) {
        for (RecordParts.Part p : RecordParts.of(record.getClass())) {
            Object v = RecordParts.get(record, p.name());
            if (v instanceof java.lang.Number n) {
                numbers.add(new Number(Measure.ofField(p.name()), n.doubleValue()));
            } else if (v instanceof Named n) {
                text.append(lower(n.word())).append(' ');
            } else if (v instanceof String t) {
                text.append(lower(t)).append(' ');
            } else if (v instanceof Record r && !(v instanceof TerminalRef)) {
                gather(r, text, numbers);
            }
        }
    }

    private void findings(List<Ranked> all, SessionState s, String text) {
        if (s.review() == null) {
            return;
        }
        for (Finding f : s.review().findings()) {
            String says = words.text(f.title()) + ": " + words.text(f.message());
            String hay = lower(
                    says + " " + f.clause() + " " + f.rule() + " " + f.place().item());
            if (!f.accepted() && all(hay, text)) {
                String sheet = sheet(s.drawing(), f.place().item());
                all.add(new Ranked(5, new Hit(f.place().item(), says, sheet, number(s.drawing(), sheet), f)));
            }
        }
    }

    /** Whether each word that was typed occurs. */
    private static boolean all(String hay, String text) {
        for (String word : text.split("\\s+")) {
            if (!hay.contains(word)) {
                return false;
            }
        }
        return true;
    }

    private static String lower(String s) {
        return s.toLowerCase(Locale.ROOT);
    }

    /** The sheet of a component or note, or of the end at which a cable starts; "" if it has none. */
    public static String sheet(Drawing d, String id) {
        Note n = d.notes().get(id);
        if (n != null) {
            return n.sheet();
        }
        Cable w = d.cables().get(id);
        Component c = d.components().get(w == null ? id : w.from().component());
        return c == null ? "" : c.place().sheet();
    }

    private static String number(Drawing d, String sheet) {
        return d.sheets().find(sheet).map(Sheet::number).orElse("");
    }
}
