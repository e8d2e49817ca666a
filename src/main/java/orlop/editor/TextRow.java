package orlop.editor;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.jspecify.annotations.Nullable;
import orlop.desk.CardField;
import orlop.desk.Measure;
import orlop.desk.NumberInput;
import orlop.drawing.Message;

/**
 * A particular that is typed: a number with its unit, or text. It is taken on Enter and when the field is left; what
 * can't be taken stays as it was typed, with the reason below. Escape puts the drawing's own value back. While a number
 * is typed, the figures follow.
 */
final class TextRow extends FieldRow {
    private final JTextField text = new JTextField(8);
    /** So long after the last key, in milliseconds, a number counts as typed for now. */
    private static final int PAUSE_MS = 120;

    private final TypedStep step;
    private final Timer pause = new Timer(PAUSE_MS, e -> follow());
    private final Drafts drafts;
    private final String draft;
    private String shown = "";
    private boolean filling;
    private boolean refusing;

    /** @param drafts keeps what was typed and couldn't be taken while something else is selected */
    TextRow(
            CardField field,
            int width,
            Function<@Nullable Object, Optional<Message>> writer,
            TypedStep step,
            Drafts drafts,
            String item) {
        super(field, width, writer);
        this.step = step;
        this.drafts = drafts;
        pause.setRepeats(false);
        this.draft = item + " " + field.path();
        text.addActionListener(e -> {
            take();
            if (!wrong()) {
                text.selectAll(); // what is typed next takes its place, as when the field was come to
            }
        });
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                text.selectAll();
            }

            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    take();
                }
            }
        });
        text.getDocument().addDocumentListener(new Typed());
        bind("ESCAPE");
        bind("ctrl Z");
        bind("meta Z");
        build(text);
        show(field);
        String kept = drafts.take(draft);
        if (kept != null) {
            text.setText(kept);
            take();
        }
    }

    /** Puts the drawing's own value back; with nothing typed the key goes on to the window, which undoes or backs out. */
    private void bind(String key) {
        text.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        text.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isEnabled() {
                return typing() || step.begun();
            }

            @Override
            public void actionPerformed(ActionEvent e) {
                putBack();
            }
        });
    }

    @Override
    JComponent editor() {
        return text;
    }

    private Measure measure() {
        return Measure.ofField(field().name());
    }

    private boolean number() {
        return field().type() != CardField.Type.TEXT;
    }

    private boolean typing() {
        return !text.getText().equals(shown);
    }

    private void putBack() {
        pause.stop();
        drafts.forget(draft);
        step.putBack();
        fill(shown);
        error(null);
    }

    private void fill(String s) {
        filling = true;
        text.setText(s);
        text.setCaretPosition(0);
        filling = false;
        understood();
    }

    @Override
    void show(CardField now) {
        Object value = now.value();
        String s = value == null
                ? ""
                : number() ? NumberInput.typed(((Number) value).doubleValue(), measure()) : value.toString();
        boolean untouched = !typing();
        boolean changed = !s.equals(shown);
        shown = s;
        text.putClientProperty(
                "JTextField.placeholderText",
                Texts.words().pattern("editor.example." + now.name()).orElseGet(() -> Texts.of(empty())));
        if ((untouched && !step.begun()) || (changed && !text.isFocusOwner() && !step.begun() && !refusing)) {
            fill(s);
            error(null);
        }
    }

    private String empty() {
        if (field().mixed()) {
            return "editor.several";
        }
        if (!field().optional()) {
            return "editor.empty";
        }
        return field().path().equals("areaMm2") ? "editor.auto" : "editor.unknown";
    }

    /** While a person types, shows beside the field how it is read. */
    private void understood() {
        note("");
        if (!number()) {
            return;
        }
        NumberInput.Reading r = NumberInput.read(text.getText(), measure());
        if (r instanceof NumberInput.Value v) {
            if (typing()) {
                note("= " + Texts.of(v.understood()));
            } else if (measure() == Measure.SQUARE_MILLIMETRE) {
                note(Preferences.beside(v.value()));
            }
        } else if (!typing() && text.getText().isEmpty()) {
            note(measure().shown()); // which unit a bare number has
        }
    }

    /** The figures follow a number that is understood; nothing is said of one that would be refused. */
    private void follow() {
        boolean number = field().type() == CardField.Type.NUMBER && !field().mixed();
        if (number && typing() && NumberInput.read(text.getText(), measure()) instanceof NumberInput.Value v) {
            step.follow(field().value(), v.value());
        }
    }

    @Override
    Optional<Message> put(@Nullable Object value) {
        return step.begun() ? step.follow(field().value(), value) : super.put(value);
    }

    private void take() {
        pause.stop();
        if (!typing()) {
            step.taken();
            error(null);
            return;
        }
        drafts.forget(draft);
        if (!number()) {
            kept(write(text.getText()));
            return;
        }
        NumberInput.Reading r = NumberInput.read(emptyInWords() ? "" : text.getText(), measure());
        if (r instanceof NumberInput.Value v) {
            kept(whole(v.value()));
        } else if (r instanceof NumberInput.Refused refused) {
            error(refused.reason());
            kept(false);
        } else if (field().optional()) {
            kept(write(null));
        } else {
            error(Message.of("editor.needed"));
            kept(false);
        }
    }

    /** "auto" and "not known" can be typed where several values can't be wiped away. */
    private boolean emptyInWords() {
        String typed = text.getText().strip();
        return typed.equalsIgnoreCase(Texts.of("editor.auto")) || typed.equalsIgnoreCase(Texts.of("editor.unknown"));
    }

    private boolean whole(double value) {
        if (field().type() != CardField.Type.WHOLE) {
            return write(value);
        }
        if (value != Math.rint(value) || Math.abs(value) > 1_000_000) {
            error(Message.of("editor.whole"));
            return false;
        }
        return write((int) value);
    }

    /** What was refused is kept; what was taken is shown as the drawing has it. */
    private void kept(boolean taken) {
        if (taken) {
            step.taken();
            show(field());
            fill(shown);
        } else {
            refusing = true; // what was typed stays
            step.putBack();
            refusing = false;
            drafts.keep(draft, text.getText());
        }
    }

    private final class Typed implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            changed();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            changed();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {}

        private void changed() {
            if (!filling) {
                error(null);
                understood();
                drafts.keep(draft, text.getText());
                pause.restart();
            }
        }
    }
}
