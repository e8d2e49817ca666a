package orlop.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.drawing.Words;
import orlop.findings.Cure;
import orlop.findings.Finding;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/**
 * A finding as a checker writes it down: marker, what is wrong, why, by which clause, what was assumed, what cures it. The
 * printed margin and the sheets of findings set the same blocks.
 *
 * @param first false for the rest of a note that began in the column before
 */
record NoteBlock(FoundPlace place, TextBlock block, boolean first) {
    /** From the left edge to the text. */
    static final double TEXT_MM = 7.5;

    private static final int ENDLESS = Integer.MAX_VALUE;

    static NoteBlock of(FoundPlace place, Words words, double widthMm) {
        return new NoteBlock(place, text(place.finding(), words, widthMm - TEXT_MM), true);
    }

    double height() {
        return Math.max(Marker.HEIGHT_MM, block.height());
    }

    /** The note in pieces none of which is higher than this; in one if it can be. */
    List<NoteBlock> pieces(double heightMm) {
        if (height() <= heightMm) {
            return List.of(this);
        }
        int fitting = block.lines().size();
        while (fitting > 1 && part(0, fitting).height() > heightMm) {
            fitting--;
        }
        List<NoteBlock> pieces = new ArrayList<>(List.of(new NoteBlock(place, part(0, fitting), first)));
        if (fitting < block.lines().size()) {
            TextBlock rest = part(fitting, block.lines().size());
            pieces.addAll(new NoteBlock(place, rest, false).pieces(heightMm));
        }
        return pieces;
    }

    private TextBlock part(int from, int to) {
        return new TextBlock(block.lines().subList(from, to), block.sizeMm());
    }

    /** @param x left edge, that of the marker */
    void draw(ItemMaker items, Words words, double x, double top) {
        Finding f = place.finding();
        String number = Integer.toString(place.number());
        List<Mark> marks = new ArrayList<>();
        if (first) {
            double middle = top + Marker.HEIGHT_MM / 2;
            marks.addAll(Marker.marks(f.severity(), x + Marker.WIDTH_MM / 2, middle, number, f.accepted()));
        }
        double down = first ? Math.max(0, (Marker.HEIGHT_MM - TextBlock.SIZE_MM) / 2 - 0.2) : 0;
        Rect text = Rect.of(x + TEXT_MM, top + down, block.width(), block.height());
        marks.addAll(block.marks(text, Side.RIGHT));
        String kind = words.text("scene.severity." + f.severity().word());
        Map<String, String> data = new LinkedHashMap<>();
        data.put("number", number);
        data.put("rule", f.rule());
        String title = words.text(Message.of("scene.finding", number, kind, block.words()));
        items.add(Role.MARGIN, Integer.toString(place.index()), title, marks, data);
    }

    private static TextBlock text(Finding f, Words words, double width) {
        Ink ink = Marker.ink(f.severity());
        List<Line> lines = new ArrayList<>();
        wrap(lines, words.text(f.title()), width, Weight.BOLD, ink);
        wrap(lines, words.text(f.message()), width, Weight.REGULAR, Ink.INK);
        if (!f.clause().isEmpty()) {
            wrap(lines, f.clause(), width, Weight.REGULAR, Ink.QUIET);
        }
        for (Message m : f.assumptions()) {
            wrap(lines, words.text(Message.of("scene.margin.assumed", m)), width, Weight.REGULAR, Ink.QUIET);
        }
        Cure cure = f.cure();
        if (f.acceptedReason() != null) {
            String text = words.text(Message.of("scene.margin.accepted", f.acceptedReason()));
            wrap(lines, text, width, Weight.REGULAR, Ink.INK);
        } else if (cure != null) {
            wrap(lines, words.text(Message.of("scene.margin.cure", cure.label())), width, Weight.BOLD, ink);
        }
        return TextBlock.of(lines);
    }

    /** Nothing is cut: what is long takes more lines. */
    static void wrap(List<Line> lines, String text, double width, Weight weight, Ink ink) {
        for (String s : TextBlock.wrapped(text, width, TextBlock.SIZE_MM, weight, ENDLESS)) {
            if (!s.isEmpty()) {
                lines.add(Line.of(s, weight, ink));
            }
        }
    }
}
