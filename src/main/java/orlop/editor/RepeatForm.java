package orlop.editor;

import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JTextField;
import orlop.desk.Arranging;
import orlop.desk.Measure;
import orlop.desk.NumberInput;
import orlop.desk.Repeats;
import orlop.drawing.Message;
import orlop.layout.Rect;

/** Asks how often something is to be repeated, and at what step. */
final class RepeatForm {
    private static final double GAP_MM = 2.5;
    private static final double ROUND_MM = 5;
    private static final double LEAST_MM = 20;
    private final JPanel page = Forms.page();
    private final JTextField copies;
    private final JTextField across;
    private final JTextField down;

    /** @param box what is to be repeated covers this with its labels: the first suggestion is beside it */
    RepeatForm(Optional<Rect> box) {
        double wide = box.map(Rect::width).orElse(0.0) + GAP_MM;
        double step = Math.max(LEAST_MM, Math.ceil(wide / ROUND_MM) * ROUND_MM);
        page.add(new WrapText(Texts.of("editor.repeat.why"), Look::quiet, Look::font));
        copies = Forms.line(page, "editor.form.copies", new JTextField("1"));
        across = Forms.line(page, "editor.form.across", new JTextField(NumberInput.typed(step, Measure.MILLIMETRE)));
        down = Forms.line(page, "editor.form.down", new JTextField(NumberInput.typed(0, Measure.MILLIMETRE)));
    }

    JPanel panel() {
        return page;
    }

    /** What can't be made of what was typed. */
    Optional<Message> refusal() {
        for (NumberInput.Reading r : java.util.List.of(read(across), read(down), count())) {
            if (r instanceof NumberInput.Refused no) {
                return Optional.of(no.reason());
            }
        }
        double n = value(count());
        if (n != Math.rint(n) || n < 1 || n > Repeats.MOST) {
            return Optional.of(Message.of("editor.repeat.copies", Repeats.MOST));
        }
        return acrossMm() == 0 && downMm() == 0 ? Optional.of(Message.of("editor.repeat.step")) : Optional.empty();
    }

    private static NumberInput.Reading read(JTextField f) {
        return NumberInput.read(f.getText(), Measure.MILLIMETRE);
    }

    private NumberInput.Reading count() {
        return NumberInput.read(copies.getText(), Measure.RATIO);
    }

    private static double value(NumberInput.Reading r) {
        return r instanceof NumberInput.Value v ? v.value() : 0;
    }

    double acrossMm() {
        return Arranging.onGrid(value(read(across)));
    }

    double downMm() {
        return Arranging.onGrid(value(read(down)));
    }

    int copies() {
        return (int) value(count());
    }
}
