package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.drawing.Sheet;
import orlop.drawing.Words;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/** The sheets on which the notes of a full margin go on, and a legend for which its sheet has no room. */
final class FindingSheets {
    private static final double INSET_MM = 6;
    private static final double BETWEEN_MM = 8;
    private static final double COLUMN_MM = 85;
    private static final double GAP_MM = 4;

    private final SceneRequest request;
    private final Words words;
    private final Sheet sheet;
    private final SheetFrame frame;
    private final Rect body;
    private final double columnMm;
    private final int columns;

    FindingSheets(SceneRequest request) {
        this.request = request;
        this.words = request.words();
        this.sheet = request.drawing().sheets().require(request.sheet());
        this.frame = new SheetFrame(sheet.size());
        Rect b = frame.body();
        this.body = new Rect(b.minX() + INSET_MM, b.minY() + 14, b.maxX() - INSET_MM, b.maxY() - INSET_MM);
        this.columns = Math.max(1, (int) ((body.width() + BETWEEN_MM) / (COLUMN_MM + BETWEEN_MM)));
        this.columnMm = (body.width() - (columns - 1) * BETWEEN_MM) / columns;
    }

    /** What flows through the columns. */
    private interface Part {
        double height();

        void draw(ItemMaker items, double x, double top);
    }

    private record NotePart(NoteBlock note, Words words) implements Part {
        @Override
        public double height() {
            return note.height();
        }

        @Override
        public void draw(ItemMaker items, double x, double top) {
            note.draw(items, words, x, top);
        }
    }

    /** Some rows of the legend one below the other. */
    private record LegendPart(List<LegendRow> rows) implements Part {
        @Override
        public double height() {
            return rows.size() * LegendRow.HEIGHT_MM;
        }

        @Override
        public void draw(ItemMaker items, double x, double top) {
            List<Mark> marks = new ArrayList<>();
            double y = top;
            for (LegendRow row : rows) {
                marks.addAll(row.marks(x, y, LegendRow.SAMPLE_MM));
                y += LegendRow.HEIGHT_MM;
            }
            String spoken = String.join("; ", rows.stream().map(LegendRow::text).toList());
            double width = rows.stream()
                    .mapToDouble(r -> r.width(LegendRow.SAMPLE_MM))
                    .max()
                    .orElse(0);
            items.add(Role.LEGEND, "", spoken, Rect.of(x, top, width, y - top), marks, Map.of());
        }
    }

    /** As many sheets as it takes; none if nothing is left over. */
    List<Scene> scenes(List<FoundPlace> notes, List<LegendRow> legend) {
        List<Part> parts = legend(legend);
        for (FoundPlace p : notes) {
            NoteBlock.of(p, words, columnMm).pieces(body.height()).forEach(n -> parts.add(new NotePart(n, words)));
        }
        List<Scene> scenes = new ArrayList<>();
        int done = 0;
        while (done < parts.size()) {
            ItemMaker items = new ItemMaker();
            SheetNumber number = SheetNumber.of(request.drawing(), sheet.id(), scenes.size() + 1);
            paper(items, number);
            done = fill(items, parts, done);
            scenes.add(scene(items, number));
        }
        return scenes;
    }

    /** The legend comes first, so that it stands on the sheet that is named for it. */
    private List<Part> legend(List<LegendRow> rows) {
        List<Part> parts = new ArrayList<>();
        int most = Math.max(1, (int) (body.height() / LegendRow.HEIGHT_MM));
        for (int from = 0; from < rows.size(); from += most) {
            parts.add(new LegendPart(List.copyOf(rows.subList(from, Math.min(rows.size(), from + most)))));
        }
        return parts;
    }

    private void paper(ItemMaker items, SheetNumber number) {
        frame.draw(items, words);
        new TitleBlock(request, number).draw(items, frame.titleBlock());
        new Legend(words, frame.foot()).draw(items, List.of(), "", Legend.Spare.NONE);
        String head = words.text(Message.of("scene.findings.head", String.valueOf(number.position()), sheet.title()));
        TextBlock block = new TextBlock(List.of(Line.of(head, Weight.BOLD, Ink.INK)), 3.5);
        Rect at = Rect.of(body.minX(), frame.body().minY() + 5, block.width(), block.height());
        items.add(Role.MARGIN, "", head, block.marks(at, Side.RIGHT), Map.of());
    }

    /** Fills the columns from this part on; the first part that did not fit any more. */
    private int fill(ItemMaker items, List<Part> parts, int from) {
        int next = from;
        for (int column = 0; column < columns; column++) {
            double x = body.minX() + column * (columnMm + BETWEEN_MM);
            double y = body.minY();
            boolean empty = true;
            while (next < parts.size() && (empty || y + parts.get(next).height() <= body.maxY())) {
                parts.get(next).draw(items, x, y);
                y += parts.get(next).height() + GAP_MM;
                empty = false;
                next++;
            }
        }
        return next;
    }

    private Scene scene(ItemMaker items, SheetNumber number) {
        String vessel = request.drawing().vessel().name();
        return new Scene(
                sheet.id() + SheetNumber.suffix(number.findings()),
                words.text(Message.of("scene.findings.sheet", vessel, number.text(), sheet.title())),
                sheet.size().widthMm(),
                sheet.size().heightMm(),
                frame.drawable(),
                items.items(),
                List.of(),
                List.of(),
                Map.of());
    }
}
