package orlop.editor;

import java.awt.BorderLayout;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.event.AncestorEvent;
import javax.swing.event.AncestorListener;
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
        text.addAncestorListener(new Focus());
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

    /** Puts the cursor into the words when their box first has the keyboard; by itself it goes to the button. */
    private static final class Focus implements AncestorListener {
        @Override
        public void ancestorAdded(AncestorEvent e) {
            Window box = SwingUtilities.getWindowAncestor(e.getComponent());
            if (box != null) {
                box.addWindowFocusListener(new WindowAdapter() {
                    @Override
                    public void windowGainedFocus(WindowEvent w) {
                        e.getComponent().requestFocusInWindow();
                        box.removeWindowFocusListener(this);
                    }
                });
            }
        }

        @Override
        public void ancestorRemoved(AncestorEvent e) {}

        @Override
        public void ancestorMoved(AncestorEvent e) {}
    }
}
