package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import orlop.desk.CardField;
import orlop.drawing.Message;
import orlop.findings.Severity;

/** A line of the card: label, editor, what was understood, and below it what is wrong. */
abstract class FieldRow {
    private static final int LABEL = 116;
    private static final int EDITOR = 68;
    private static final int LEAST_EDITOR = 58;

    private final JPanel panel;
    private final JLabel note = Flat.quiet("");
    private final WrapText error;
    private final int labelWidth;
    private final Function<@Nullable Object, Optional<Message>> writer;
    private CardField field;

    /** @param writer gives the drawing a new value and says why that was refused */
    FieldRow(CardField field, int width, Function<@Nullable Object, Optional<Message>> writer) {
        this.field = field;
        this.writer = writer;
        this.labelWidth = labelWidth(width);
        this.panel = Flat.clear(new Column(width, Look.px(1)));
        this.error = new WrapText("", () -> Look.severity(Severity.DANGER), Look::small);
        error.setVisible(false);
        error.setName("error." + field.path());
        note.setName("note." + field.path());
    }

    /** Puts the line together; called once by the subclass when its editor is ready. */
    final void build(JComponent editor) {
        JLabel label = Flat.label(FieldTexts.label(field.name()), Look::quiet, false);
        label.setLabelFor(editor);
        label.setPreferredSize(new Dimension(labelWidth, label.getPreferredSize().height));
        String meaning = FieldTexts.meaning(field.name());
        boolean cut = label.getFontMetrics(label.getFont()).stringWidth(label.getText()) > labelWidth;
        label.setToolTipText(meaning != null ? label.getText() + ": " + meaning : cut ? label.getText() : null);
        editor.setToolTipText(meaning);
        boolean number = field.type() == CardField.Type.NUMBER || field.type() == CardField.Type.WHOLE;
        if (number) {
            editor.setPreferredSize(new Dimension(Look.px(EDITOR), editor.getPreferredSize().height));
            editor.setMinimumSize(new Dimension(Look.px(LEAST_EDITOR), 0));
        }
        editor.setName("field." + field.path());
        editor.getAccessibleContext().setAccessibleName(label.getText());
        JPanel line = Flat.clear(new BorderLayout(Look.px(6), 0));
        line.add(label, BorderLayout.WEST);
        if (number) {
            JPanel pair = Flat.clear(new GivingRow(Look.px(6)));
            pair.add(editor);
            pair.add(note);
            line.add(pair, BorderLayout.CENTER);
        } else {
            line.add(editor, BorderLayout.CENTER);
        }
        panel.add(line);
        panel.add(error);
    }

    JPanel panel() {
        return panel;
    }

    /** Of the labels on a card of this width, in pixels. */
    static int labelWidth(int card) {
        return Math.min(Look.px(LABEL), card * 21 / 50);
    }

    final CardField field() {
        return field;
    }

    /** Shows the value that the drawing has now, unless a person is in the middle of typing another. */
    final void refresh(CardField now) {
        field = now;
        show(now);
    }

    abstract void show(CardField now);

    abstract JComponent editor();

    final void note(String text) {
        note.setText(text);
        note.setToolTipText(text.isEmpty() ? null : text);
    }

    /** @param reason null takes the error away */
    final void error(@Nullable Message reason) {
        boolean was = error.isVisible();
        String text = reason == null ? "" : Texts.title(reason);
        boolean same = text.equals(error.getText()) && was == (reason != null);
        if (!same) {
            error.setText(text);
            error.setVisible(reason != null);
            editor().putClientProperty("JComponent.outline", reason == null ? null : "error");
            editor().getAccessibleContext().setAccessibleDescription(text);
            panel.revalidate();
            panel.repaint();
        }
    }

    final boolean wrong() {
        return error.isVisible();
    }

    /** Gives the drawing the value, and shows why if it is refused. */
    final boolean write(@Nullable Object value) {
        if (!field.mixed() && java.util.Objects.equals(value, field.value())) {
            error(null);
            return true;
        }
        Optional<Message> refusal = put(value);
        error(refusal.map(FieldRow::spoken).orElse(null));
        return refusal.isEmpty();
    }

    /** Gives the drawing the value; says why if it is refused. */
    Optional<Message> put(@Nullable Object value) {
        return writer.apply(value);
    }

    /** A record refuses by the names that stand in the file; a person knows the label. */
    static Message spoken(Message m) {
        if (m.key().startsWith("drawing.range.")
                && !m.arguments().isEmpty()
                && m.arguments().get(0) instanceof String f) {
            java.util.List<Object> arguments = new java.util.ArrayList<>(m.arguments());
            arguments.set(0, Texts.words().pattern("editor.field." + f).orElse(f));
            return new Message(m.key(), arguments);
        }
        return m;
    }
}
