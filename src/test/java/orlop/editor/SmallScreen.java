package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.Window;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JPopupMenu;
import javax.swing.JScrollBar;
import javax.swing.JViewport;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import orlop.desk.Sample;

/**
 * A program of its own: opens a window at the scale that its command sets, goes through menus, boxes and pages, and says
 * what of them lies beyond the screen or is hidden.
 */
final class SmallScreen {
    private static final List<CommandId> BOXES = List.of(
            CommandId.PREFERENCES,
            CommandId.KEYS,
            CommandId.ABOUT,
            CommandId.NEW,
            CommandId.OPEN,
            CommandId.SAVE_COPY,
            CommandId.EXPORT_SHEETS,
            CommandId.EXPORT_SVG,
            CommandId.VESSEL,
            CommandId.SYSTEMS,
            CommandId.SHEET_DETAILS,
            CommandId.DELETE_SHEET,
            CommandId.MOVE_TO_SHEET,
            CommandId.RENAME,
            CommandId.REPEAT,
            CommandId.NEW_CONDITION);
    private static final List<CommandId> PAGES = List.of(
            CommandId.SHOW_PATH,
            CommandId.SHOW_WORKING,
            CommandId.SHOW_FINDINGS,
            CommandId.SHOW_CONDITIONS,
            CommandId.SHOW_REGISTER);

    private final MainWindow window;
    private final Rectangle screen;

    private SmallScreen(MainWindow window) {
        this.window = window;
        this.screen = window.frame().getGraphicsConfiguration().getBounds();
    }

    /** @param args none are needed */
    public static void main(String[] args) throws Exception {
        MainWindow[] made = new MainWindow[1];
        onUi(() -> {
            made[0] = EditorApp.window(Sample.of("pilot-cutter"), null, new Settings(null));
            made[0].show();
        });
        SmallScreen s = new SmallScreen(made[0]);
        s.settle();
        onUi(() -> made[0].bench().canvas().session().select(Set.of("QB1")));
        s.settle();
        s.window("window");
        s.menus();
        for (CommandId id : BOXES) {
            s.box(id);
        }
        for (CommandId id : PAGES) {
            onUi(made[0].bench().commands().get(id)::run);
            s.settle();
            s.window(id.word());
        }
        System.out.println("seen " + s.screen.width + " by " + s.screen.height);
        System.exit(0);
    }

    private static void onUi(Runnable r) throws Exception {
        SwingUtilities.invokeAndWait(r);
    }

    private void settle() throws Exception {
        for (int i = 0; i < 300; i++) {
            boolean[] fresh = new boolean[1];
            onUi(() -> fresh[0] = window.bench().canvas().session().state().fresh());
            if (fresh[0]) {
                break;
            }
            Thread.sleep(100);
        }
        Thread.sleep(300);
    }

    private void window(String where) throws Exception {
        onUi(() -> {
            within(where, window.frame());
            hidden(where, window.frame().getRootPane());
        });
    }

    private void menus() throws Exception {
        JMenuBar bar = window.frame().getJMenuBar();
        for (int i = 0; i < bar.getMenuCount(); i++) {
            JMenu menu = bar.getMenu(i);
            popup("menu " + menu.getText(), menu.getPopupMenu(), () -> menu.doClick(0));
        }
        for (Set<String> selected : List.of(Set.<String>of(), Set.of("QB1"), Set.of("W2"), Set.of("QB1", "W1"))) {
            onUi(() -> window.bench().canvas().session().select(selected));
            SheetCanvas c = window.bench().canvas();
            int foot = c.getHeight() - 2;
            JPopupMenu[] made = new JPopupMenu[1];
            onUi(() -> made[0] = window.bench().menus().menu(Spot.of(c.getWidth() - 2, foot, c.viewport())));
            popup("menu of " + selected, made[0], () -> made[0].show(c, c.getWidth() - 2, foot));
        }
        onUi(() -> window.bench().canvas().session().select(Set.of("QB1")));
    }

    /**
     * Opens a menu, looks at it and closes it. The screen takes the mouse back from a menu a moment after it has been
     * closed, and closes the next one with that if it is open by then: it is opened again. A menu that is higher than the
     * screen slides in a frame of its own.
     */
    private void popup(String where, JPopupMenu menu, Runnable open) throws Exception {
        boolean[] seen = new boolean[1];
        for (int i = 0; i < 20 && !seen[0]; i++) {
            onUi(open);
            Thread.sleep(150);
            onUi(() -> {
                seen[0] = menu.isShowing();
                if (seen[0]) {
                    Container frame = SwingUtilities.getAncestorOfClass(JViewport.class, menu);
                    within(where, frame == null ? menu : frame);
                }
                MenuSelectionManager.defaultManager().clearSelectedPath();
            });
            Thread.sleep(50);
        }
        if (!seen[0]) {
            System.out.println(where + " is not there");
        }
    }

    private void box(CommandId id) throws Exception {
        SwingUtilities.invokeLater(window.bench().commands().get(id)::run);
        for (int i = 0; i < 50 && boxes().isEmpty(); i++) {
            Thread.sleep(100);
        }
        Thread.sleep(200);
        if (boxes().isEmpty()) {
            System.out.println(id + " opens nothing");
        }
        onUi(() -> boxes().forEach(b -> {
            within(id.word(), b);
            hidden(id.word(), b);
        }));
        onUi(() -> boxes().forEach(Window::dispose));
        Thread.sleep(100);
    }

    private static List<Window> boxes() {
        return Arrays.stream(Window.getWindows())
                .filter(w -> w instanceof JDialog && w.isShowing())
                .toList();
    }

    private void within(String where, Component c) {
        Rectangle r = new Rectangle(c.getLocationOnScreen(), c.getSize());
        if (!screen.contains(r)) {
            System.out.println(where + " lies beyond the screen: " + r);
        }
    }

    /** Says which buttons can't be pressed; what slides is brought into sight by keys and wheel. */
    private static void hidden(String where, Container in) {
        for (Component c : in.getComponents()) {
            boolean slides = SwingUtilities.getAncestorOfClass(JViewport.class, c) != null
                    || SwingUtilities.getAncestorOfClass(JScrollBar.class, c) != null;
            if (c instanceof AbstractButton b && b.isShowing() && !slides && covered(b)) {
                System.out.println(where + " hides " + b.getName() + " " + b.getText());
            }
            if (c instanceof Container k && c.isVisible()) {
                hidden(where, k);
            }
        }
    }

    private static boolean covered(JComponent b) {
        Rectangle seen = b.getVisibleRect();
        return seen.width < b.getWidth() - 1 || seen.height < b.getHeight() - 1 || b.getHeight() == 0;
    }
}
