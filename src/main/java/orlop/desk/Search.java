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
 * finding. The best hit comes first: the very tag, then the beginning of a tag, then words.
 */
public final class Search {
    private static final int MOST = 200;

    private final Words words;

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

    /** The hits, the best first, at most 200; none for blank words. */
    public List<Hit> find(SessionState s, String typed) {
        String text = lower(typed.strip());
        if (text.isEmpty()) {
            return List.of();
        }
        Drawing d = s.drawing();
        List<Ranked> all = new ArrayList<>();
        Typed typedText = new Typed(text);
        for (Component c : d.components().values()) {
            String kind = words.text(c.kind().term());
            String what = c.name().isEmpty() ? kind : c.name() + ", " + kind;
            rank(
                    all,
                    typedText,
                    new Hit(c.id(), what, c.place().sheet(), number(d, c.place().sheet()), null),
                    (Record) c.particulars());
        }
        for (Cable w : d.cables().values()) {
            String what = w.from().component() + " – " + w.to().component();
            what = w.name().isEmpty() ? what : w.name() + ", " + what;
            String sheet = sheet(d, w.id());
            rank(all, typedText, new Hit(w.id(), what, sheet, number(d, sheet), null), w);
        }
        for (Note n : d.notes().values()) {
            if (all(lower(n.text()), text)) {
                all.add(new Ranked(4, new Hit(n.id(), n.text(), n.sheet(), number(d, n.sheet()), null)));
            }
        }
        findings(all, s, text);
        return all.stream()
                .sorted(Comparator.comparingInt(Ranked::rank))
                .limit(MOST)
                .map(Ranked::hit)
                .toList();
    }

    private static void rank(List<Ranked> all, Typed typed, Hit hit, Record particulars) {
        String tag = lower(hit.item());
        String hay = tag + " " + lower(hit.text());
        int rank;
        if (tag.equals(typed.text)) {
            rank = 0;
        } else if (tag.startsWith(typed.text)) {
            rank = 1;
        } else if (all(hay, typed.text)) {
            rank = 2;
        } else if (typed.isValueIn(particulars) || all(hay + " " + words(particulars), typed.text)) {
            rank = 3;
        } else {
            return;
        }
        all.add(new Ranked(rank, hit));
    }

    /** What was typed, as a value of each measure as which it can be read. */
    private static final class Typed {
        private final String text;
        private final Map<Measure, Double> values = new EnumMap<>(Measure.class);

        Typed(String text) {
            this.text = text;
            for (Measure m : Measure.values()) {
                if (NumberInput.read(text, m) instanceof NumberInput.Value v) {
                    values.put(m, v.value());
                }
            }
        }

        boolean isValueIn(Record record) {
            if (values.isEmpty()) {
                return false;
            }
            for (RecordParts.Part p : RecordParts.of(record.getClass())) {
                Object v = RecordParts.get(record, p.name());
                boolean it = v instanceof Number n
                        && Double.valueOf(n.doubleValue()).equals(values.get(Measure.ofField(p.name())));
                if (it || (v instanceof Record r && isValueIn(r))) {
                    return true;
                }
            }
            return false;
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

    /** The words in a record and in the records in it: standard types, chemistry, conductors. */
    private static String words(Record record) {
        StringBuilder words = new StringBuilder();
        for (RecordParts.Part p : RecordParts.of(record.getClass())) {
            Object v = RecordParts.get(record, p.name());
            if (v instanceof Named n) {
                words.append(lower(n.word())).append(' ');
            } else if (v instanceof String t) {
                words.append(lower(t)).append(' ');
            } else if (v instanceof Record r && !(v instanceof TerminalRef)) {
                words.append(words(r));
            }
        }
        return words.toString();
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
