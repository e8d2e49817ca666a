package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import orlop.desk.Measure;
import orlop.desk.NumberInput;

/** Asks for the words of a note and how high its letters are. */
final class NoteForm {
    private final JPanel page = Forms.page();
    private final JTextArea text;
    private final JTextField height;

    NoteForm(String words, double heightMm) {
        text = new JTextArea(words, 7, 30);
        text.setName("form.words");
        text.getAccessibleContext().setAccessibleName(Texts.of("editor.form.words"));
        text.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null); // Tab goes on
        text.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        text.getInputMap().put(KeyStroke.getKeyStroke("ctrl ENTER"), "agree"); // Enter alone begins a line
        text.getInputMap().put(KeyStroke.getKeyStroke("meta ENTER"), "agree");
        text.getActionMap().put("agree", new Agree());
        JPanel top = Flat.clear(new BorderLayout());
        top.add(new JScrollPane(text));
        page.add(top);
        height = Forms.line(
                page, "editor.form.letters", new JTextField(NumberInput.typed(heightMm, Measure.MILLIMETRE)));
    }

    JPanel panel() {
        return page;
    }

    String text() {
        return text.getText().stripTrailing();
    }

    /** The height as typed; one that can't be read is 0, which a note refuses with its range. */
    double heightMm() {
        return NumberInput.read(height.getText(), Measure.MILLIMETRE) instanceof NumberInput.Value v ? v.value() : 0;
    }

    /** Presses the button that Enter presses elsewhere. */
    private static final class Agree extends AbstractAction {
        private static final long serialVersionUID = 1L;

        @Override
        public void actionPerformed(ActionEvent e) {
            JButton agree =
                    SwingUtilities.getRootPane((Component) e.getSource()).getDefaultButton();
            if (agree != null) {
                agree.doClick();
            }
        }
    }
}
