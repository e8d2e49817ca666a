package orlop.editor;

import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Group;
import orlop.drawing.Kind;

/** The menu bar: every command stands in it, with its key. */
final class Menus {
    private final Commands commands;
    private final JMenuBar bar = new JMenuBar();

    private Menus(Commands commands) {
        this.commands = commands;
    }

    /**
     * @param recent the files that were open last
     * @param open opens one of them
     * @param place begins to place a component
     */
    static JMenuBar bar(Commands commands, Supplier<List<Path>> recent, Consumer<Path> open, Consumer<Kind> place) {
        Menus m = new Menus(commands);
        JMenu file = m.menu("file", CommandId.NEW, CommandId.OPEN);
        file.add(recentMenu(recent, open));
        m.fill(file, null, CommandId.SAVE, CommandId.SAVE_AS, CommandId.SAVE_COPY, CommandId.REVERT);
        m.fill(
                file,
                null,
                CommandId.EXPORT_SHEETS,
                CommandId.EXPORT_SVG,
                CommandId.EXPORT_PNG,
                CommandId.GIVE_UP,
                null);
        m.fill(file, CommandId.PREFERENCES, null, CommandId.CLOSE, CommandId.QUIT);
        m.menu("edit", CommandId.UNDO, CommandId.REDO, null, CommandId.CUT, CommandId.COPY, CommandId.PASTE)
                .setName("menu.edit");
        m.fill(m.last(), CommandId.DUPLICATE, CommandId.DELETE, null, CommandId.SELECT_ALL, CommandId.SELECT_KIND);
        m.fill(m.last(), CommandId.SELECT_CONNECTED, null, CommandId.FIND, CommandId.FIND_COMMAND);
        m.fill(m.last(), CommandId.RENAME, null, CommandId.BACK_OUT);
        JMenu draw = m.menu("draw");
        for (Group g : Group.values()) {
            draw.add(groupMenu(g, place));
        }
        m.fill(draw, null, CommandId.RUN, CommandId.JOIN, CommandId.LINK, null, CommandId.NOTE, null, CommandId.SWITCH);
        m.fill(draw, null, CommandId.AUTOMATIC);
        m.arrange();
        m.menu(
                "view",
                CommandId.ZOOM_IN,
                CommandId.ZOOM_OUT,
                CommandId.FIT,
                CommandId.FIT_DRAWN,
                CommandId.FULL_SIZE,
                null);
        m.checks(CommandId.SHOW_SIZE, CommandId.SHOW_LENGTH, CommandId.SHOW_CURRENT, CommandId.SHOW_DROP);
        m.checks(CommandId.SHOW_FAULT, null, CommandId.SHOW_STRIP, CommandId.SHOW_LOCKER, CommandId.SHOW_MARGIN);
        m.checks(CommandId.SHOW_PATH, CommandId.SHOW_WORKING, CommandId.SHOW_FINDINGS, CommandId.SHOW_CONDITIONS);
        m.checks(CommandId.SHOW_REGISTER, null, CommandId.WHOLE_PAGE, CommandId.ALONE, null, CommandId.DARK);
        m.fill(m.last(), null, CommandId.NEXT_PART, CommandId.PREVIOUS_PART);
        m.menu("check", CommandId.NEXT_FINDING, CommandId.PREVIOUS_FINDING, CommandId.CURE, CommandId.ACCEPT);
        m.fill(m.last(), CommandId.WITHDRAW, null, CommandId.CHECK_AGAIN);
        m.menu("vessel", CommandId.VESSEL, CommandId.SYSTEMS, null, CommandId.NEW_CONDITION);
        m.fill(m.last(), CommandId.COPY_CONDITION, CommandId.RENAME_CONDITION, CommandId.DELETE_CONDITION);
        m.fill(m.last(), CommandId.NEXT_CONDITION, CommandId.PREVIOUS_CONDITION);
        m.menu("sheet", CommandId.NEW_SHEET, CommandId.SHEET_DETAILS, CommandId.LARGER_PAPER, null);
        m.fill(m.last(), CommandId.NEXT_SHEET);
        m.fill(m.last(), CommandId.PREVIOUS_SHEET, CommandId.FOLLOW_LINK, null, CommandId.MOVE_TO_SHEET, null);
        m.fill(m.last(), CommandId.SHEET_EARLIER, CommandId.SHEET_LATER, CommandId.DELETE_SHEET);
        m.menu("help", CommandId.KEYS, CommandId.ABOUT);
        MenuLetters.give(m.bar);
        return m.bar;
    }

    private void arrange() {
        menu("arrange", CommandId.TURN, CommandId.MIRROR, null, CommandId.ALIGN_LEFT, CommandId.ALIGN_RIGHT);
        fill(last(), CommandId.ALIGN_TOP, CommandId.ALIGN_BOTTOM, CommandId.ALIGN_COLUMN, CommandId.ALIGN_ROW, null);
        fill(last(), CommandId.DISTRIBUTE_ACROSS, CommandId.DISTRIBUTE_DOWN, null);
        fill(last(), CommandId.FROM_SOURCES, null, CommandId.REPEAT, null);
        fill(last(), CommandId.RENUMBER, CommandId.RENUMBER_SELECTED, null, CommandId.LOCK, CommandId.UNLOCK);
    }

    /** The key with which this system's menus are worked: {@code ctrl}, or {@code meta} on a Mac. */
    static String menuKey() {
        boolean mac = System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("mac");
        return mac && Toolkit.getDefaultToolkit() != null ? "meta" : "ctrl";
    }

    private JMenu menu(String word, @Nullable CommandId... ids) {
        JMenu menu = new JMenu(Texts.of("editor.menu." + word));
        menu.setName("menu." + word);
        bar.add(menu);
        fill(menu, ids);
        return menu;
    }

    private JMenu last() {
        return bar.getMenu(bar.getMenuCount() - 1);
    }

    private void fill(JMenu menu, @Nullable CommandId... ids) {
        for (@Nullable CommandId id : ids) {
            if (id == null) {
                menu.addSeparator();
            } else {
                menu.add(named(new JMenuItem(commands.get(id)), id));
            }
        }
    }

    private void checks(@Nullable CommandId... ids) {
        for (@Nullable CommandId id : ids) {
            if (id == null) {
                last().addSeparator();
            } else {
                last().add(named(new JCheckBoxMenuItem(commands.get(id)), id));
            }
        }
    }

    private static JMenuItem named(JMenuItem item, CommandId id) {
        item.setName("menu." + id.word());
        return item;
    }

    private static JMenu recentMenu(Supplier<List<Path>> recent, Consumer<Path> open) {
        JMenu menu = new JMenu(Texts.of("editor.menu.recent"));
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent e) {
                menu.removeAll();
                for (Path p : recent.get()) {
                    JMenuItem item = new JMenuItem(String.valueOf(p.getFileName()));
                    item.setToolTipText(p.toString());
                    item.addActionListener(a -> open.accept(p));
                    menu.add(item);
                }
                if (menu.getItemCount() == 0) {
                    JMenuItem none = new JMenuItem(Texts.of("editor.menu.recent.none"));
                    none.setEnabled(false);
                    menu.add(none);
                }
            }

            @Override
            public void menuDeselected(MenuEvent e) {}

            @Override
            public void menuCanceled(MenuEvent e) {}
        });
        // An empty menu never opens and so would never be filled.
        menu.add(new JMenuItem(Texts.of("editor.menu.recent.none")));
        return menu;
    }

    private static JMenu groupMenu(Group group, Consumer<Kind> place) {
        JMenu menu = new JMenu(group.letters() + "   " + Texts.of("editor.group." + group.word()));
        for (LockerKeys.Row row : LockerKeys.rows(group)) {
            JMenuItem item = new JMenuItem(Texts.of(row.kind().term()));
            item.setName("menu.place." + row.kind().word());
            item.addActionListener(e -> place.accept(row.kind()));
            // Two keys one after the other, which an accelerator can't be: they stand in the text.
            item.setText(item.getText() + "    " + row.keys());
            menu.add(item);
        }
        return menu;
    }
}
