package orlop.editor;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.jspecify.annotations.Nullable;
import orlop.desk.Insertions;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** The menus that open on the sheet: what can be done with what is there. What is impossible now is left out. */
final class ContextMenus {
    private static final @Nullable CommandId LINE = null;
    private static final List<CommandId> ALIGN = List.of(
            CommandId.ALIGN_LEFT,
            CommandId.ALIGN_RIGHT,
            CommandId.ALIGN_TOP,
            CommandId.ALIGN_BOTTOM,
            CommandId.ALIGN_COLUMN,
            CommandId.ALIGN_ROW,
            CommandId.DISTRIBUTE_ACROSS,
            CommandId.DISTRIBUTE_DOWN);

    private final Session session;
    private final SheetCanvas canvas;
    private final Commands commands;
    private final NoteCommands notes;
    private final EditCommands edits;

    ContextMenus(Session session, SheetCanvas canvas, Commands commands, NoteCommands notes, EditCommands edits) {
        this.session = session;
        this.canvas = canvas;
        this.commands = commands;
        this.notes = notes;
        this.edits = edits;
    }

    /** Opens the menu for what is selected, at this place on the sheet. */
    void open(Spot at) {
        JPopupMenu menu = menu(at);
        menu.show(canvas, at.xPx(), at.yPx());
    }

    /** Opens the menu for what is selected, beside it; with nothing selected, that of the sheet. */
    void openByKey() {
        Set<String> ids = session.state().selection();
        open(canvas.scene()
                .flatMap(s -> s.items().stream()
                        .filter(i -> ids.contains(i.subject()))
                        .map(SceneItem::bounds)
                        .findFirst())
                .map(r -> Spot.at(r.centreX(), r.centreY(), canvas.viewport()))
                .filter(at -> canvas.contains(at.xPx(), at.yPx()))
                .orElseGet(() -> Spot.of(canvas.getWidth() / 2, canvas.getHeight() / 2, canvas.viewport())));
    }

    JPopupMenu menu(Spot at) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("menu.sheet");
        SessionState s = session.state();
        Drawing d = s.drawing();
        Set<String> ids = s.selection();
        if (ids.isEmpty()) {
            sheet(menu, at);
        } else if (ids.size() > 1) {
            several(menu);
        } else {
            one(menu, d, ids.iterator().next(), at);
        }
        tidy(menu);
        MenuLetters.give(menu);
        return menu;
    }

    private void sheet(JPopupMenu menu, Spot at) {
        if (session.state().shownSheet().isPresent()) {
            JMenuItem note = new JMenuItem(Texts.of("editor.context.note-here"));
            note.setName("context.note-here");
            note.addActionListener(e -> notes.place(at.xMm(), at.yMm()));
            menu.add(note);
        }
        if (commands.get(CommandId.PASTE).isEnabled()) {
            JMenuItem paste = new JMenuItem(Texts.of("editor.context.paste-here"));
            paste.setName("context.paste-here");
            paste.addActionListener(e -> edits.pasteAt(at.xMm(), at.yMm()));
            menu.add(paste);
        }
        fill(menu, CommandId.SELECT_ALL, LINE, CommandId.UNDO, CommandId.REDO, LINE);
        fill(menu, CommandId.FIT, CommandId.FIT_DRAWN, LINE, CommandId.SHEET_DETAILS, CommandId.LARGER_PAPER);
        fill(menu, CommandId.NEW_SHEET);
        fill(menu, LINE, CommandId.RENUMBER);
    }

    private void several(JPopupMenu menu) {
        fill(menu, CommandId.CUT, CommandId.COPY, CommandId.DUPLICATE, CommandId.REPEAT, CommandId.DELETE, LINE);
        JMenu align = new JMenu(Texts.of("editor.menu.align"));
        align.setName("context.align");
        for (CommandId id : ALIGN) {
            add(align, id);
        }
        if (align.getItemCount() > 0) {
            menu.add(align);
        }
        fill(
                menu,
                CommandId.JOIN,
                CommandId.LINK,
                CommandId.TURN,
                CommandId.MIRROR,
                CommandId.SWITCH,
                CommandId.AUTOMATIC,
                LINE);
        fill(menu, CommandId.RENUMBER_SELECTED, CommandId.LOCK, CommandId.UNLOCK, LINE);
        fill(menu, CommandId.SELECT_KIND, CommandId.SELECT_CONNECTED);
    }

    private void one(JPopupMenu menu, Drawing d, String id, Spot at) {
        if (d.notes().contains(id)) {
            JMenuItem write = new JMenuItem(Texts.of("editor.context.note-words"));
            write.setName("context.note-words");
            write.addActionListener(e -> notes.edit(id));
            menu.add(write);
            fill(menu, LINE);
        } else {
            fill(menu, CommandId.RENAME, CommandId.SWITCH, LINE);
        }
        if (d.cables().contains(id)) {
            devices(menu, id, at);
        }
        fill(menu, CommandId.CUT, CommandId.COPY, CommandId.DUPLICATE, CommandId.REPEAT, CommandId.DELETE, LINE);
        fill(menu, CommandId.TURN, CommandId.MIRROR, CommandId.AUTOMATIC, LINE);
        fill(menu, CommandId.LOCK, CommandId.UNLOCK, LINE);
        fill(menu, CommandId.SELECT_KIND, CommandId.SELECT_CONNECTED);
    }

    /** The devices that can be put into a cable, at the place where the menu was opened. */
    private void devices(JPopupMenu menu, String cable, Spot at) {
        Optional<Scene> scene = canvas.scene();
        Route route = scene.map(s -> s.routes().get(cable)).orElse(null);
        if (scene.isEmpty() || route == null) {
            return;
        }
        JMenu in = new JMenu(Texts.of("editor.context.put-in"));
        in.setName("context.put-in");
        for (Kind k : Kind.values()) {
            if (Insertions.inline(k) && (k.group() == Group.PROTECTION || k.group() == Group.SWITCHING)) {
                JMenuItem item = new JMenuItem(Texts.of(k.term()));
                item.setName("context.put-in." + k.word());
                item.addActionListener(
                        e -> Insertions.of(session.state().drawing(), scene.get(), route.nearest(at.xMm(), at.yMm()), k)
                                .ifPresent(i -> PlaceTool.insert(session, i)));
                in.add(item);
            }
        }
        menu.add(in);
        menu.addSeparator();
    }

    private void fill(JPopupMenu menu, @Nullable CommandId... ids) {
        for (@Nullable CommandId id : ids) {
            if (id == null) {
                menu.addSeparator();
            } else {
                add(menu, id);
            }
        }
    }

    private void add(JComponent menu, CommandId id) {
        Command c = commands.get(id);
        c.refresh();
        if (c.isEnabled()) {
            JMenuItem item = new JMenuItem(c);
            item.setName("context." + id.word());
            menu.add(item);
        }
    }

    /** No line at the top, at the foot, or after another line. */
    private static void tidy(JPopupMenu menu) {
        boolean line = true;
        for (int i = 0; i < menu.getComponentCount(); i++) {
            boolean here = menu.getComponent(i) instanceof JPopupMenu.Separator;
            if (here && line) {
                menu.remove(i--);
            }
            line = here;
        }
        int last = menu.getComponentCount() - 1;
        if (last >= 0 && menu.getComponent(last) instanceof JPopupMenu.Separator) {
            menu.remove(last);
        }
    }
}
