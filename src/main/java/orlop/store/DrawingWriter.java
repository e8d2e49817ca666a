package orlop.store;

import orlop.drawing.Drawing;
import orlop.drawing.Ledger;

/** Drawing to text: keys in fixed order, one item a line, what is the default left out. */
final class DrawingWriter {
    private final JsonOut out = new JsonOut();
    private final Drawing drawing;

    private DrawingWriter(Drawing drawing) {
        this.drawing = drawing;
    }

    static String text(Drawing drawing) {
        return new DrawingWriter(drawing).write();
    }

    private String write() {
        out.raw("{");
        member("\n  ", Section.VERSION).number(FormatVersion.CURRENT);
        member(",\n  ", Section.VESSEL);
        Shapes.VESSEL.write(out, drawing.vessel());
        for (Section<?> section : Section.ALL) {
            list(section);
        }
        drawing.extras().json().forEach((key, json) -> member(",\n  ", key).raw(json));
        return out.raw("\n}\n").toString();
    }

    private JsonOut member(String before, String key) {
        return out.raw(before).text(key).raw(": ");
    }

    private <V> void list(Section<V> section) {
        Ledger<V> ledger = section.of().apply(drawing);
        if (ledger.isEmpty()) {
            return;
        }
        member(",\n  ", section.key()).raw("[");
        String before = "\n    ";
        for (V item : ledger.values()) {
            out.raw(before);
            section.shape().apply(item).write(out, item);
            before = ",\n    ";
        }
        out.raw("\n  ]");
    }
}
