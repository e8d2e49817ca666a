package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Lines of a form: label and editor. */
final class Forms {
    private static final int WIDTH = 420;
    private static final int LABEL = 150;

    private Forms() {}

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
