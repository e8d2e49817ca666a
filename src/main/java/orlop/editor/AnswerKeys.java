package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.KeyStroke;

/** The answers of a box by keys: arrows go from one to the next, and each has a letter of its own, with the Alt key. */
final class AnswerKeys {
    private AnswerKeys() {}

    static void give(JOptionPane box) {
        List<JButton> answers = new ArrayList<>();
        find(box, answers);
        MenuLetters.give(new ArrayList<AbstractButton>(answers));
        for (int i = 0; i < answers.size(); i++) {
            JButton next = answers.get((i + 1) % answers.size());
            JButton last = answers.get(Math.floorMod(i - 1, answers.size()));
            key(answers.get(i), "RIGHT", next);
            key(answers.get(i), "DOWN", next);
            key(answers.get(i), "LEFT", last);
            key(answers.get(i), "UP", last);
        }
    }

    /** The answers, and not the buttons of what is shown above them. */
    private static void find(Container in, List<JButton> found) {
        for (Component c : in.getComponents()) {
            if (c instanceof JButton b && "OptionPane.button".equals(b.getName())) {
                found.add(b);
            } else if (c instanceof Container k) {
                find(k, found);
            }
        }
    }

    private static void key(JButton from, String key, JButton to) {
        from.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), "answers." + key);
        from.getActionMap().put("answers." + key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                to.requestFocusInWindow();
            }
        });
    }
}
