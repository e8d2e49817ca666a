package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.HierarchyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/** Lines of a form: label and editor. */
final class Forms {
    private static final int WIDTH = 460;
    private static final int LABEL = 190;

    private Forms() {}

    /** The typing begins in this field when its form is shown, and not in the first. */
    static void beginAt(JComponent field) {
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
