package orlop.editor;

import java.util.Optional;
import java.util.Set;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import orlop.desk.Arranging;
import orlop.desk.Measure;
import orlop.desk.NumberInput;
import orlop.desk.RepeatPlaces;
import orlop.desk.Repeats;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.layout.Rect;

/** Asks how often something is to be repeated, and at what step. */
final class RepeatForm {
    private static final double GAP_MM = 2.5;
    private static final double ROUND_MM = 5;
    private static final double LEAST_MM = 20;
    private final Optional<RepeatPlaces> places;
    private final RepeatPlaces.Step beside;
    private final JPanel page = Forms.page();
    private final JTextField copies;
    private final JTextField across;
    private final JTextField down;
    private RepeatPlaces.Step offered;

    /**
     * @param places where copies have room; empty while the sheet is not laid out
     * @param box what is to be repeated covers this with its labels: if there is no room, what is offered is beside it
     */
    RepeatForm(Optional<RepeatPlaces> places, Optional<Rect> box) {
        this.places = places;
        double wide = box.map(Rect::width).orElse(0.0) + GAP_MM;
        beside = new RepeatPlaces.Step(Math.max(LEAST_MM, Math.ceil(wide / ROUND_MM) * ROUND_MM), 0);
        offered = offered(1);
        page.add(new WrapText(Texts.of("editor.repeat.why"), Look::quiet, Look::font));
        copies = Forms.line(page, "editor.form.copies", new JTextField("1"));
        across = Forms.line(page, "editor.form.across", new JTextField(typed(offered.acrossMm())));
        down = Forms.line(page, "editor.form.down", new JTextField(typed(offered.downMm())));
        copies.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                offer();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                offer();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                offer();
            }
        });
    }

    private static String typed(double mm) {
        return NumberInput.typed(mm, Measure.MILLIMETRE);
    }

    private RepeatPlaces.Step offered(int n) {
        return places.flatMap(p -> p.offered(n)).orElse(beside);
    }

    private boolean untouched() {
        return across.getText().equals(typed(offered.acrossMm()))
                && down.getText().equals(typed(offered.downMm()));
    }

    /** More copies may need another step; what a person has typed stands. */
    private void offer() {
        double n = value(count());
        if (untouched() && n == Math.rint(n) && n >= 1 && n <= Repeats.MOST) {
            offered = offered((int) n);
            across.setText(typed(offered.acrossMm()));
            down.setText(typed(offered.downMm()));
        }
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

    private double acrossMm() {
        return Arranging.onGrid(value(read(across)));
    }

    private double downMm() {
        return Arranging.onGrid(value(read(down)));
    }

    /** The edit that was asked for; places at which something stands are passed over. */
    Edit edit(Set<String> ids) {
        RepeatPlaces.Step step = new RepeatPlaces.Step(acrossMm(), downMm());
        int copies = (int) value(count());
        return places.map(p -> Repeats.edit(ids, step.acrossMm(), step.downMm(), p.places(step, copies, !untouched())))
                .orElseGet(() -> Repeats.edit(ids, step.acrossMm(), step.downMm(), copies));
    }
}
