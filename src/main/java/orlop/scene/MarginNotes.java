package orlop.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.Words;
import orlop.findings.Cure;
import orlop.findings.Finding;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/** The printed margin: what a checker wrote, in order and near the height of the places. */
final class MarginNotes {
    private static final double INSET_MM = 3.5;
    private static final double TEXT_MM = 11;
    private static final double GAP_MM = 4;
    private static final double LINE_MM = 0.25;

    private final SheetView view;
    private final Words words;
    private final Rect rect;

    MarginNotes(SheetView view, Rect rect) {
        this.view = view;
        this.words = view.words();
        this.rect = rect;
    }

    private record Note(FoundPlace place, TextBlock block) {
        double height() {
            return Math.max(Marker.HEIGHT_MM, block.height());
        }
    }

    void draw(ItemMaker items, List<FoundPlace> places) {
        double top = head(items, places.isEmpty());
        List<FoundPlace> sorted = new ArrayList<>(places);
        sorted.sort(Comparator.comparingDouble(p -> p.target().centreY()));
        double room = rect.maxY() - INSET_MM - top;
        List<Note> notes = notes(sorted, true);
        if (total(notes) > room) {
            notes = notes(sorted, false);
        }
        int left = 0;
        while (total(notes) > room - (left > 0 ? 2 * GAP_MM : 0) && !notes.isEmpty()) {
            notes = without(notes);
            left++;
        }
        double bottom = rect.maxY() - INSET_MM - (left > 0 ? GAP_MM + TextBlock.SIZE_MM : 0);
        List<Double> tops = tops(notes, top, bottom);
        for (int i = 0; i < notes.size(); i++) {
            note(items, notes.get(i), tops.get(i));
        }
        if (left > 0) {
            more(items, left);
        }
    }

    /** Without the mildest of them, of equals the last. */
    private static List<Note> without(List<Note> notes) {
        Note mildest = notes.stream()
                .max(Comparator.comparing((Note n) -> n.place.finding().severity())
                        .thenComparing(n -> n.place.number()))
                .orElseThrow();
        return notes.stream().filter(n -> !n.equals(mildest)).toList();
    }

    private double head(ItemMaker items, boolean nothing) {
        double x = rect.minX() + INSET_MM;
        double width = rect.width() - 2 * INSET_MM;
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(words.text("scene.margin"), Weight.BOLD, Ink.QUIET));
        String shown = view.request().results().title();
        if (!shown.isEmpty()) {
            wrap(lines, words.text(Message.of("scene.margin.condition", shown)), width, Weight.REGULAR, Ink.QUIET, 2);
        }
        if (nothing) {
            wrap(lines, words.text("scene.margin.none"), width, Weight.REGULAR, Ink.QUIET, 3);
        }
        TextBlock block = TextBlock.of(lines);
        Rect at = Rect.of(x, rect.minY() + INSET_MM, width, block.height());
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.Line.solid(
                LINE_MM,
                Ink.MARGIN_LINE,
                new Point(rect.minX(), rect.minY() + 2),
                new Point(rect.minX(), rect.maxY() - 2)));
        marks.addAll(block.marks(at, Side.RIGHT));
        items.add(Role.MARGIN, "", block.words(), marks, Map.of());
        return at.maxY() + GAP_MM;
    }

    private static void wrap(List<Line> lines, String text, double width, Weight weight, Ink ink, int most) {
        for (String s : TextBlock.wrapped(text, width, TextBlock.SIZE_MM, weight, most)) {
            lines.add(Line.of(s, weight, ink));
        }
    }

    private List<Note> notes(List<FoundPlace> places, boolean full) {
        return places.stream().map(p -> new Note(p, block(p.finding(), full))).toList();
    }

    private TextBlock block(Finding f, boolean full) {
        Ink ink = Marker.ink(f.severity());
        double width = rect.width() - TEXT_MM - INSET_MM;
        List<Line> lines = new ArrayList<>();
        wrap(lines, words.text(f.title()), width, Weight.BOLD, ink, 2);
        if (full) {
            wrap(lines, words.text(f.message()), width, Weight.REGULAR, Ink.INK, 6);
            if (!f.clause().isEmpty()) {
                wrap(lines, f.clause(), width, Weight.REGULAR, Ink.QUIET, 2);
            }
            for (Message m : f.assumptions()) {
                String text = words.text(Message.of("scene.margin.assumed", m));
                wrap(lines, text, width, Weight.REGULAR, Ink.QUIET, 2);
            }
        }
        Cure cure = f.cure();
        if (f.acceptedReason() != null) {
            String text = words.text(Message.of("scene.margin.accepted", f.acceptedReason()));
            wrap(lines, text, width, Weight.REGULAR, Ink.INK, 3);
        } else if (cure != null) {
            wrap(lines, words.text(Message.of("scene.margin.cure", cure.label())), width, Weight.BOLD, ink, 2);
        }
        return TextBlock.of(lines);
    }

    private static double total(List<Note> notes) {
        return notes.stream().mapToDouble(n -> n.height() + GAP_MM).sum();
    }

    /** Each note at the height of its place, pushed down by the one before it and up by the end of the margin. */
    private static List<Double> tops(List<Note> notes, double top, double bottom) {
        List<Double> tops = new ArrayList<>();
        double least = top;
        for (Note n : notes) {
            double y = Math.max(least, n.place.target().centreY() - Marker.HEIGHT_MM / 2);
            tops.add(y);
            least = y + n.height() + GAP_MM;
        }
        double most = bottom;
        for (int i = notes.size() - 1; i >= 0; i--) {
            double y = Math.min(tops.get(i), most - notes.get(i).height());
            tops.set(i, y);
            most = y - GAP_MM;
        }
        return tops;
    }

    private void note(ItemMaker items, Note n, double top) {
        Finding f = n.place.finding();
        String number = Integer.toString(n.place.number());
        double x = rect.minX() + INSET_MM + Marker.WIDTH_MM / 2;
        List<Mark> marks =
                new ArrayList<>(Marker.marks(f.severity(), x, top + Marker.HEIGHT_MM / 2, number, f.accepted()));
        double down = Math.max(0, (Marker.HEIGHT_MM - TextBlock.SIZE_MM) / 2 - 0.2);
        Rect text = Rect.of(rect.minX() + TEXT_MM, top + down, n.block.width(), n.block.height());
        marks.addAll(n.block.marks(text, Side.RIGHT));
        String kind = words.text("scene.severity." + f.severity().word());
        items.add(
                Role.MARGIN,
                number,
                words.text(Message.of("scene.finding", number, kind, n.block.words())),
                marks,
                Map.of("rule", f.rule()));
    }

    private void more(ItemMaker items, int left) {
        String text = words.text(Message.of("scene.margin.more", left));
        TextBlock block = TextBlock.of(List.of(Line.of(text, Weight.REGULAR, Ink.QUIET)));
        double y = rect.maxY() - INSET_MM - block.height();
        Rect at = Rect.of(rect.minX() + INSET_MM, y, block.width(), block.height());
        items.add(Role.MARGIN, "", text, block.marks(at, Side.RIGHT), Map.of());
    }
}
