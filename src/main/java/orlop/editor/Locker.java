package orlop.editor;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.FlowLayout;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import javax.swing.event.MenuKeyEvent;
import javax.swing.event.MenuKeyListener;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Group;
import orlop.drawing.Kind;

/**
 * The rail on the left: the groups of components under their letter codes. A group opens a drawer with its kinds; a row
 * is dragged on the sheet, clicked, or taken by its key.
 */
final class Locker {
    private static final int FAR_PX = 20_000;

    private final SheetCanvas canvas;
    private final JPanel rail = Flat.panel(new FlowLayout(), Look::strip);
    private final Map<Group, GroupButton> buttons = new EnumMap<>(Group.class);
    private @Nullable JPopupMenu drawer;
    private @Nullable Group open;
    private @Nullable Group shut;
    private long shutWhen = -1;
    private boolean shutsAgain;
    private @Nullable DrawerKeys drawerKeys;

    Locker(SheetCanvas canvas) {
        this.canvas = canvas;
        rail.setLayout(new BoxLayout(rail, BoxLayout.Y_AXIS));
        rail.setBorder(Flat.lines(0, 0, 0, 1, new Insets(Look.px(4), Look.px(5), Look.px(4), Look.px(5))));
        rail.setName("locker");
        Letters letters = new Letters();
        for (Group g : Group.values()) {
            GroupButton b = new GroupButton(g);
            b.addActionListener(e -> toggle(g));
            b.addKeyListener(letters);
            b.setRequestFocusEnabled(false);
            b.addMouseListener(new MouseAdapter() {
                @Override
                public void mousePressed(MouseEvent e) {
                    shutsAgain = e.getWhen() == shutWhen && g == shut;
                    canvas.byKeys(false);
                    canvas.requestFocusInWindow();
                }

                @Override
                public void mouseReleased(MouseEvent e) {
                    shutsAgain = false; // the click has been taken by now
                }
            });
            buttons.put(g, b);
            rail.add(b);
            rail.add(gap());
        }
        rail.add(Box.createVerticalGlue());
        canvas.addKeyListener(letters);
    }

    /** Between two groups, where there is room. */
    private static Component gap() {
        return new Box.Filler(new Dimension(0, 0), new Dimension(0, Look.px(4)), new Dimension(0, Look.px(4)));
    }

    /** Who has gone to a group by Tab has the keys there: the letters must work as they do on the sheet. */
    private final class Letters extends KeyAdapter {
        @Override
        public void keyTyped(KeyEvent e) {
            int other = KeyEvent.CTRL_DOWN_MASK | KeyEvent.META_DOWN_MASK | KeyEvent.ALT_DOWN_MASK;
            boolean mine = (e.getModifiersEx() & other) == 0 && !canvas.tool().letters();
            if (mine && !letter(e.getKeyChar())) {
                LockerKeys.group(e.getKeyChar()).ifPresent(Locker.this::open);
            }
        }
    }

    /** In a narrow window the letters stand alone. */
    void narrow(boolean on) {
        if (buttons.values().iterator().next().narrow != on) {
            buttons.values().forEach(b -> b.narrow = on);
            rail.revalidate();
            rail.repaint();
        }
    }

    JComponent rail() {
        return rail;
    }

    /** The button of the first group. */
    Optional<Component> focus() {
        return Optional.of(button(Group.SOURCES));
    }

    /** From now on the mouse places this kind. */
    void take(Kind kind) {
        close();
        canvas.use(new PlaceTool(canvas, kind));
        keysToSheet();
    }

    /**
     * The sheet has the keys. A drawer that closes gives them back to whatever had them before, a moment later; and it can
     * hang in a window of its own, out of which only requestFocus leads.
     */
    void keysToSheet() {
        canvas.requestFocusInWindow();
        SwingUtilities.invokeLater(canvas::requestFocus);
    }

    private void toggle(Group g) {
        if (open == g) {
            close();
        } else if (!shutsAgain) { // a press anywhere shuts an open drawer, also the press on its own group
            open(g);
        }
    }

    void open(Group g) {
        close();
        JPopupMenu menu = new JPopupMenu();
        menu.setName("drawer." + g.word());
        LockerDrawer rows = new LockerDrawer(canvas, this, g);
        menu.add(rows.panel());
        menu.addPopupMenuListener(new PopupEnd(() -> {
            rows.cancel();
            shut(menu);
        }));
        DrawerKeys keys = new DrawerKeys(rows);
        menu.addMenuKeyListener(keys);
        drawer = menu;
        open = g;
        GroupButton b = button(g);
        b.setSelected(true);
        if (rail.isShowing()) {
            menu.show(rail, rail.getWidth() - Look.px(2), Math.max(0, b.getY() - Look.px(20)));
        } else if (canvas.isShowing()) {
            menu.show(canvas, 0, 0); // the rail is folded away
        }
        if (menu.isShowing()) {
            keysGoTo(keys);
            if (!canvas.byKeys()) {
                canvas.hint(Texts.of("editor.hint.drawer"));
            }
        }
    }

    private void keysGoTo(@Nullable DrawerKeys next) {
        KeyboardFocusManager all = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        if (drawerKeys != null) {
            all.removeKeyEventDispatcher(drawerKeys);
        }
        drawerKeys = next;
        if (next != null) {
            all.addKeyEventDispatcher(next);
        }
    }

    /**
     * An open drawer takes the keys away from the sheet, from the first on: a popup comes to have them a moment after it is
     * shown.
     */
    private final class DrawerKeys implements MenuKeyListener, KeyEventDispatcher {
        private final LockerDrawer rows;

        DrawerKeys(LockerDrawer rows) {
            this.rows = rows;
        }

        @Override
        public void menuKeyTyped(MenuKeyEvent e) {
            if (letter(e.getKeyChar())) {
                e.consume();
            }
        }

        @Override
        public boolean dispatchKeyEvent(KeyEvent e) {
            int held = KeyEvent.CTRL_DOWN_MASK | KeyEvent.META_DOWN_MASK | KeyEvent.ALT_DOWN_MASK;
            return e.getID() == KeyEvent.KEY_PRESSED && (e.getModifiersEx() & held) == 0 && pressed(e.getKeyCode());
        }

        private boolean pressed(int code) {
            switch (code) {
                case KeyEvent.VK_DOWN, KeyEvent.VK_KP_DOWN -> rows.step(1);
                case KeyEvent.VK_UP, KeyEvent.VK_KP_UP -> rows.step(-1);
                case KeyEvent.VK_HOME -> rows.step(-LockerKeys.MOST);
                case KeyEvent.VK_END -> rows.step(LockerKeys.MOST);
                case KeyEvent.VK_RIGHT -> neighbour(1);
                case KeyEvent.VK_LEFT -> neighbour(-1);
                case KeyEvent.VK_ENTER, KeyEvent.VK_SPACE -> {
                    canvas.byKeys(true);
                    take(rows.marked());
                }
                case KeyEvent.VK_ESCAPE -> {
                    close();
                    canvas.requestFocus();
                }
                default -> {
                    return false;
                }
            }
            return true;
        }

        @Override
        public void menuKeyPressed(MenuKeyEvent e) {}

        @Override
        public void menuKeyReleased(MenuKeyEvent e) {}
    }

    /** Opens the drawer above or below. */
    private void neighbour(int by) {
        List<Group> all = List.of(Group.values());
        Group now = open;
        if (now != null) {
            open(all.get(Math.floorMod(all.indexOf(now) + by, all.size())));
        }
    }

    /** Whether a drawer is open. */
    boolean opened() {
        return open != null;
    }

    /** Takes a kind out of the open drawer by its letter. */
    boolean letter(char c) {
        Optional<Kind> kind = open == null ? Optional.empty() : LockerKeys.kind(open, c);
        kind.ifPresent(this::take);
        return kind.isPresent();
    }

    private GroupButton button(Group g) {
        GroupButton b = buttons.get(g);
        if (b == null) {
            throw new IllegalStateException("no button for " + g);
        }
        return b;
    }

    void close() {
        JPopupMenu menu = drawer;
        if (menu != null) {
            // Menus take the focus to themselves and give it back when the path to them is cleared.
            javax.swing.MenuSelectionManager.defaultManager().clearSelectedPath();
            menu.setVisible(false);
            shut(menu);
        }
    }

    /**
     * Puts the open drawer out of sight while something is dragged out of it. It isn't closed: the rest of the drag still
     * comes to its row.
     */
    void stow() {
        JPopupMenu menu = drawer;
        if (menu == null) {
            return;
        }
        java.awt.Window of = SwingUtilities.getWindowAncestor(menu);
        boolean own = of != null && of != SwingUtilities.getWindowAncestor(canvas);
        java.awt.Component holder = own ? of : menu.getParent();
        if (holder != null) {
            holder.setLocation(-FAR_PX, -FAR_PX);
        }
    }

    private void shut(JPopupMenu menu) {
        if (drawer == menu) {
            shut = open;
            shutWhen = EventQueue.getCurrentEvent() instanceof MouseEvent m ? m.getWhen() : -1;
            drawer = null;
            open = null;
            keysGoTo(null);
            if (canvas.tool() == canvas.hand() && !canvas.busy()) {
                canvas.hint("");
            }
            buttons.values().forEach(b -> b.setSelected(false));
        }
    }

    /** A group's letters over its name. */
    private static final class GroupButton extends JButton {
        private static final long serialVersionUID = 1L;
        private final transient String letters;
        private final transient String name;
        private boolean narrow;

        GroupButton(Group g) {
            letters = g.letters();
            name = Texts.of("editor.group.short." + g.word());
            setName("group." + g.word());
            setToolTipText(
                    Texts.of("editor.group." + g.word()) + "  (" + g.letters().charAt(0) + ")");
            getAccessibleContext().setAccessibleName(Texts.of("editor.group." + g.word()));
            setContentAreaFilled(false);
            setBorderPainted(false);
            setFocusPainted(false);
            setRolloverEnabled(true);
            setAlignmentX(0.5f);
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(
                    narrow
                            ? Look.px(40)
                            : Math.max(Look.px(64), getFontMetrics(Look.small()).stringWidth(name) + Look.px(8)),
                    Look.px(50));
        }

        @Override
        public Dimension getMaximumSize() {
            return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
        }

        @Override
        public Dimension getMinimumSize() {
            return new Dimension(
                    getPreferredSize().width, Look.px(20)); // so that all groups are there in a very low window
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            if (isSelected() || getModel().isRollover()) {
                Flat.box(this, graphics, Look.chosen(), Look.chosen(), 1f);
            }
            Graphics2D g = (Graphics2D) graphics.create();
            StaticLayer.hints(g);
            g.setColor(Look.text());
            g.setFont(Look.font().deriveFont(isSelected() ? java.awt.Font.BOLD : java.awt.Font.PLAIN, Look.px(16)));
            boolean room = !narrow && getHeight() >= Look.px(46);
            centre(g, letters, room ? Look.px(23) : getHeight() / 2 + Look.px(6));
            if (room) {
                g.setColor(Look.quiet());
                g.setFont(Look.small());
                centre(g, name, Look.px(41));
            }
            g.dispose();
            Ring.paint(this, graphics);
        }

        private void centre(Graphics2D g, String text, int y) {
            FontMetrics m = g.getFontMetrics();
            g.drawString(text, (getWidth() - m.stringWidth(text)) / 2, y);
        }
    }
}
