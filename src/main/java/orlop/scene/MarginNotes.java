package orlop.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.drawing.Words;
import orlop.layout.Placed;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/**
 * The printed margin: what a checker wrote, in the order of the numbers and near the height of the places. Where it is full
 * the gravest notes stand in it, and it says on which sheet the others go on.
 */
final class MarginNotes {
    private static final double INSET_MM = 3.5;
    /** Clear of the centring mark. */
    private static final double RIGHT_MM = 6;

    private static final double GAP_MM = 4;
    private static final double LINE_MM = 0.25;
    private static final double MORE_MM = 10;
    private static final double STEP_MM = 5;

    private final SceneRequest request;
    private final Words words;
    private final Rect rect;
    private double used;
    private boolean full;

    MarginNotes(SceneRequest request, Rect rect) {
        this.request = request;
        this.words = request.words();
        this.rect = rect;
    }

    /**
     * Whether nothing of a person stands in the margin of its sheet, so that notes can. Where something does, they go on a
     * sheet of their own.
     */
    static boolean free(Drawing d, Sheet sheet, List<Placed> placed) {
        Rect margin = new SheetFrame(sheet.size()).margin();
        return placed.stream().noneMatch(p -> p.ink().overlaps(margin))
                && d.notes().stream()
                        .filter(n -> n.sheet().equals(sheet.id()))
                        .noneMatch(n -> NoteItems.rect(n).overlaps(margin));
    }

    /** In a window: a line where the margin of the paper begins, so that it is kept free. */
    void outline(ItemMaker items) {
        TextBlock head = TextBlock.of(List.of(Line.of(words.text("scene.margin.paper"), Weight.REGULAR, Ink.QUIET)));
        Rect at = Rect.of(
                rect.minX() + INSET_MM, rect.minY() + INSET_MM, rect.width() - INSET_MM - RIGHT_MM, head.height());
        List<Mark> marks = new ArrayList<>(List.of(line()));
        marks.addAll(head.marks(at, Side.RIGHT));
        items.add(Role.FRAME, "", head.words(), marks, Map.of());
    }

    /** Where the margin isn't free: says on which sheet the notes stand. */
    void elsewhere(ItemMaker items, Rect body, Legend.Room room, String next, boolean nothing) {
        String text =
                nothing ? words.text("scene.margin.none") : words.text(Message.of("scene.margin.elsewhere", next));
        TextBlock block = TextBlock.of(List.of(Line.of(text, Weight.BOLD, Ink.QUIET)));
        items.add(Role.MARGIN, "", text, block.marks(spot(block, body, room), Side.RIGHT), Map.of());
    }

    /** The free place nearest to the upper right corner; the corner itself if there is none. */
    private static Rect spot(TextBlock block, Rect body, Legend.Room room) {
        double right = body.maxX() - RIGHT_MM - block.width();
        double top = body.minY() + INSET_MM;
        for (double x = right; x >= body.minX() + INSET_MM; x -= STEP_MM) {
            for (double y = top; y + block.height() <= body.maxY() - INSET_MM; y += STEP_MM) {
                Rect r = Rect.of(x, y, block.width(), block.height());
                if (room.open(r.grown(1))) {
                    return r;
                }
            }
        }
        return Rect.of(right, top, block.width(), block.height());
    }

    /** Draws what fits, and gives back what does not, in the order of the numbers. */
    List<FoundPlace> draw(ItemMaker items, List<FoundPlace> places, String next) {
        double top = head(items, places.isEmpty());
        used = top;
        double width = rect.width() - INSET_MM - RIGHT_MM;
        List<NoteBlock> notes =
                places.stream().map(p -> NoteBlock.of(p, words, width)).toList();
        double bottom = rect.maxY() - INSET_MM;
        List<NoteBlock> fitting = fitting(notes, bottom - top);
        if (fitting.size() < notes.size()) {
            fitting = fitting(notes, bottom - MORE_MM - top);
            full = true;
            more(items, notes.size() - fitting.size(), next);
            bottom -= MORE_MM;
        }
        List<Double> tops = tops(fitting, top, bottom);
        for (int i = 0; i < fitting.size(); i++) {
            fitting.get(i).draw(items, words, rect.minX() + INSET_MM, tops.get(i));
            used = tops.get(i) + fitting.get(i).height();
        }
        List<FoundPlace> rest = new ArrayList<>(places);
        rest.removeAll(fitting.stream().map(NoteBlock::place).toList());
        return rest;
    }

    /** What is left of the margin below the notes that were drawn; none of a full one. */
    Rect rest() {
        double bottom = rect.maxY() - INSET_MM;
        double top = full ? bottom : Math.min(bottom, used + 2 * GAP_MM);
        return new Rect(rect.minX() + INSET_MM, top, rect.maxX() - RIGHT_MM, bottom);
    }

    /** The gravest first, of equals the upper ones first; in the order of the numbers. */
    private static List<NoteBlock> fitting(List<NoteBlock> notes, double room) {
        List<NoteBlock> gravest = new ArrayList<>(notes);
        gravest.sort(Comparator.comparing((NoteBlock n) -> n.place().finding().severity()));
        List<NoteBlock> fitting = new ArrayList<>();
        double used = -GAP_MM;
        for (NoteBlock n : gravest) {
            if (used + GAP_MM + n.height() <= room) {
                used += GAP_MM + n.height();
                fitting.add(n);
            }
        }
        fitting.sort(Comparator.comparingInt(n -> n.place().number()));
        return fitting;
    }

    private double head(ItemMaker items, boolean nothing) {
        double x = rect.minX() + INSET_MM;
        double width = rect.width() - INSET_MM - RIGHT_MM;
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(words.text("scene.margin"), Weight.BOLD, Ink.QUIET));
        String shown = request.results().title();
        if (!shown.isEmpty()) {
            String text = words.text(Message.of("scene.margin.condition", shown));
            NoteBlock.wrap(lines, text, width, Weight.REGULAR, Ink.QUIET);
        }
        if (nothing) {
            NoteBlock.wrap(lines, words.text("scene.margin.none"), width, Weight.REGULAR, Ink.QUIET);
        }
        TextBlock block = TextBlock.of(lines);
        Rect at = Rect.of(x, rect.minY() + INSET_MM, width, block.height());
        List<Mark> marks = new ArrayList<>();
        marks.add(line());
        marks.addAll(block.marks(at, Side.RIGHT));
        items.add(Role.MARGIN, "", block.words(), marks, Map.of());
        return at.maxY() + GAP_MM;
    }

    private Mark line() {
        return Mark.Line.solid(
                LINE_MM,
                Ink.MARGIN_LINE,
                new Point(rect.minX(), rect.minY() + 2),
                new Point(rect.minX(), rect.maxY() - 2));
    }

    /** Each note at the height of its place, pushed down by the one before it and up by the end of the margin. */
    private static List<Double> tops(List<NoteBlock> notes, double top, double bottom) {
        List<Double> tops = new ArrayList<>();
        double least = top;
        for (NoteBlock n : notes) {
            double y = Math.max(least, n.place().target().centreY() - Marker.HEIGHT_MM / 2);
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

    private void more(ItemMaker items, int left, String next) {
        String text = words.text(Message.of("scene.margin.more", left, next));
        List<Line> lines = new ArrayList<>();
        NoteBlock.wrap(lines, text, rect.width() - INSET_MM - RIGHT_MM, Weight.BOLD, Ink.INK);
        TextBlock block = TextBlock.of(lines);
        double y = rect.maxY() - INSET_MM - block.height();
        Rect at = Rect.of(rect.minX() + INSET_MM, y, block.width(), block.height());
        items.add(Role.MARGIN, "", text, block.marks(at, Side.RIGHT), Map.of());
    }
}
