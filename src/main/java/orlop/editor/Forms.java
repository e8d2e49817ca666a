package orlop.editor;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.HierarchyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;
import orlop.findings.Severity;

/** Lines of a form: label and editor. */
final class Forms {
    /** The name of what says why a form wasn't taken. */
    static final String REFUSAL = "form.refusal";

    private static final String BEGIN = "orlop.begin";
    private static final int WIDTH = 460;
    private static final int LABEL = 190;

    /** What a box has around its form: edges, and below it the buttons. */
    private static final int AROUND = 60;

    private static final int BELOW = 110;

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
        Component before = refusal(page);
        if (before != null) {
            page.remove(before);
        }
        WrapText text = new WrapText(Texts.title(reason), () -> Look.severity(Severity.DANGER), Look::font);
        text.setName(REFUSAL);
        page.add(text);
    }

    static JPanel page() {
        return Flat.clear(new Column(width(), Look.px(6)));
    }

    /**
     * What is said in a box without fields, in lines that the screen has room for.
     *
     * @param beside what stands beside it, in pixels of a window of the usual resolution
     */
    static JPanel said(String text, int beside) {
        JPanel page = Flat.clear(new Column(Math.min(Look.px(WIDTH), width() - Look.px(beside)), 0));
        page.add(new WrapText(text, Look::text, Look::font));
        return page;
    }

    private static int width() {
        return Math.min(Look.px(WIDTH), Screens.width() - Look.px(AROUND));
    }

    /** A form as it is, or in a frame in which it slides, where the screen is too small for it. */
    static JComponent fitting(JComponent form) {
        Dimension wanted = form.getPreferredSize();
        int most = Screens.height() - Look.px(BELOW);
        if (wanted.height <= most) {
            return form;
        }
        JScrollPane scroll =
                new JScrollPane(form, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Look.px(18));
        int bar = scroll.getVerticalScrollBar().getPreferredSize().width;
        Component why = refusal(form);
        int below = why == null ? 0 : why.getPreferredSize().height;
        scroll.setPreferredSize(new Dimension(wanted.width + bar, Math.max(Look.px(60), most - below)));
        follow(form);
        return why == null ? scroll : above(scroll, why);
    }

    /** Why a form wasn't taken doesn't slide out of sight with it. */
    private static JComponent above(JScrollPane scroll, Component why) {
        JPanel both = Flat.panel(new BorderLayout(), Look::strip);
        both.setOpaque(false);
        both.add(scroll, BorderLayout.CENTER);
        both.add(why, BorderLayout.SOUTH);
        return both;
    }

    private static @Nullable Component refusal(Container form) {
        for (Component c : form.getComponents()) {
            if (REFUSAL.equals(c.getName())) {
                return c;
            }
        }
        return null;
    }

    /** What has the keys is brought into sight. */
    private static void follow(Container in) {
        for (Component c : in.getComponents()) {
            if (c instanceof JComponent j) {
                j.addFocusListener(new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent e) {
                        int rim = Look.px(6);
                        j.scrollRectToVisible(
                                new Rectangle(-rim, -rim, j.getWidth() + 2 * rim, j.getHeight() + 2 * rim));
                    }
                });
                follow(j);
            }
        }
    }

    static <C extends JComponent> C line(JPanel page, String key, C editor) {
        JPanel line = Flat.clear(new BorderLayout(Look.px(8), 0));
        JLabel label = new JLabel(Texts.of(key));
        label.setLabelFor(editor);
        int wide = Math.min(Look.px(LABEL), width() * 2 / 5);
        label.setPreferredSize(new Dimension(wide, label.getPreferredSize().height));
        label.setToolTipText(label.getText());
        editor.getAccessibleContext().setAccessibleName(label.getText());
        editor.setName("form." + key.substring(key.lastIndexOf('.') + 1));
        line.add(label, BorderLayout.WEST);
        line.add(editor, BorderLayout.CENTER);
        page.add(line);
        return editor;
    }
}
