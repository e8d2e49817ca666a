package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.HierarchyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import orlop.drawing.Message;
import orlop.findings.Severity;

/** Lines of a form: label and editor. */
final class Forms {
    /** The name of what says why a form wasn't taken. */
    static final String REFUSAL = "form.refusal";

    private static final String BEGIN = "orlop.begin";
    private static final int WIDTH = 460;
    private static final int LABEL = 190;

    private Forms() {}

    /** The typing begins in this field when its form is shown, and not in the first. */
    static void beginAt(JComponent field) {
        field.putClientProperty(BEGIN, true);
        field.addHierarchyListener(e -> {
            if ((e.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && field.isShowing()) {
                // A box for questions puts the focus on its button when its window gets it.
                SwingUtilities.getWindowAncestor(field).addWindowFocusListener(new WindowAdapter() {
                    @Override
                    public void windowGainedFocus(WindowEvent w) {
                        w.getWindow().removeWindowFocusListener(this);
                        SwingUtilities.invokeLater(() -> begun(field));
                    }
                });
            }
        });
    }

    private static void begun(JComponent field) {
        field.requestFocusInWindow();
        if (field instanceof JTextField text) {
            text.selectAll(); // what is typed takes the place of what is offered
        }
    }

    /** Begins where {@link #beginAt} says, else at the first field. */
    static void begin(Container form) {
        if (!marked(form)) {
            CanvasKeys.firstField(form).map(JComponent.class::cast).ifPresent(Forms::beginAt);
        }
    }

    private static boolean marked(Container in) {
        for (Component c : in.getComponents()) {
            boolean here = c instanceof JComponent j && j.getClientProperty(BEGIN) != null;
            if (here || (c instanceof Container k && marked(k))) {
                return true;
            }
        }
        return false;
    }

    /** Says below the fields why they can't be taken. */
    static void refused(JPanel page, Message reason) {
        for (Component c : page.getComponents()) {
            if (REFUSAL.equals(c.getName())) {
                page.remove(c);
                break;
            }
        }
        WrapText text = new WrapText(Texts.title(reason), () -> Look.severity(Severity.DANGER), Look::font);
        text.setName(REFUSAL);
        page.add(text);
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
