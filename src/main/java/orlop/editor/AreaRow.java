package orlop.editor;

import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import orlop.desk.CardField;
import orlop.drawing.Message;

/** Text of several lines. It is taken when the field is left; Escape puts the drawing's own text back. */
final class AreaRow extends FieldRow {
    private final JTextArea text = new JTextArea(4, 12);
    private String shown = "";

    AreaRow(CardField field, int width, Function<@Nullable Object, Optional<Message>> writer) {
        super(field, width, writer);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setBorder(javax.swing.UIManager.getBorder("TextField.border"));
        text.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        text.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    take();
                }
            }
        });
        text.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "back");
        text.getActionMap().put("back", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isEnabled() {
                return typing();
            }

            @Override
            public void actionPerformed(ActionEvent e) {
                text.setText(shown);
            }
        });
        build(text);
        show(field);
    }

    @Override
    JComponent editor() {
        return text;
    }

    private boolean typing() {
        return !text.getText().equals(shown);
    }

    /** Gives the drawing what was typed. */
    void take() {
        if (typing() && !write(text.getText())) {
            text.setText(shown);
        }
    }

    @Override
    void show(CardField now) {
        String s = now.value() == null ? "" : now.value().toString();
        if (!typing() || !text.isFocusOwner()) {
            text.setText(s);
        }
        shown = s;
    }
}
