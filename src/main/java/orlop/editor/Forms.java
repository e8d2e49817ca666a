package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.HierarchyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import orlop.drawing.Message;

/** Lines of a form: label and editor. */
final class Forms {
    private static final int WIDTH = 460;
    private static final int LABEL = 190;
    private static final String BEGINS = "orlop.begins";

    private Forms() {}

    /**
     * Asks until what was entered is taken or the person backs out: what was refused stays as it was typed.
     *
     * @param take takes what was entered; says why not
     */
    static void ask(Prompts prompts, String title, JComponent page, Supplier<Optional<Message>> take) {
        while (prompts.form(title, page)) {
            Optional<Message> refusal = take.get();
            if (refusal.isEmpty()) {
                return;
            }
            prompts.tell(Texts.of("editor.problem.title"), Texts.title(refusal.get()));
        }
    }

    /** What typing begins in, as it was told, else the first field. */
    static Optional<JComponent> first(JComponent page) {
        return told(page).or(() -> CanvasKeys.firstField(page).map(JComponent.class::cast));
    }

    private static Optional<JComponent> told(Container in) {
        for (Component c : in.getComponents()) {
            if (c instanceof JComponent j && j.getClientProperty(BEGINS) != null) {
                return Optional.of(j);
            }
            Optional<JComponent> deeper = c instanceof Container k ? told(k) : Optional.empty();
            if (deeper.isPresent()) {
                return deeper;
            }
        }
        return Optional.empty();
    }

    /** The typing is to begin in this field of its form, and not in the first. */
    static void beginAt(JComponent field) {
        field.putClientProperty(BEGINS, true);
    }

    /** The typing begins in this field when its form is shown. */
    static void begin(JComponent field) {
        field.addHierarchyListener(e -> {
            if ((e.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && field.isShowing()) {
                // A box for questions puts the focus on its button when its window gets it.
                SwingUtilities.getWindowAncestor(field).addWindowFocusListener(new WindowAdapter() {
                    @Override
                    public void windowGainedFocus(WindowEvent w) {
                        w.getWindow().removeWindowFocusListener(this);
                        SwingUtilities.invokeLater(field::requestFocusInWindow);
                    }
                });
            }
        });
    }

    static JPanel page() {
        return Flat.clear(new Column(Look.px(WIDTH), Look.px(6)));
    }

    static <C extends JComponent> C line(JPanel page, String key, C editor) {
        JPanel line = Flat.clear(new BorderLayout(Look.px(8), 0));
        JLabel label = new JLabel(Texts.of(key));
        label.setLabelFor(editor);
        label.setPreferredSize(new Dimension(Look.px(LABEL), label.getPreferredSize().height));
        editor.getAccessibleContext().setAccessibleName(label.getText());
        editor.setName("form." + key.substring(key.lastIndexOf('.') + 1));
        line.add(label, BorderLayout.WEST);
        line.add(editor, BorderLayout.CENTER);
        page.add(line);
        return editor;
    }
}
