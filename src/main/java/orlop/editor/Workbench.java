package orlop.editor;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Message;
import orlop.findings.Finding;

/** All that lies within a window, put together. It needs no screen: a test can paint it into an image. */
final class Workbench {
    private static final Map<CommandId, String> FOLDS = new LinkedHashMap<>();

    static {
        FOLDS.put(CommandId.SHOW_PATH, "path");
        FOLDS.put(CommandId.SHOW_WORKING, "working");
        FOLDS.put(CommandId.SHOW_FINDINGS, "findings");
        FOLDS.put(CommandId.SHOW_CONDITIONS, "conditions");
        FOLDS.put(CommandId.SHOW_REGISTER, "register");
    }

    private final Session session;
    private final PreferenceCommands preferences;
    private boolean inJournal = true;
    private final JPanel panel = Flat.panel(new BorderLayout(), Look::strip);
    private final Commands commands;
    private final Pointing pointing = new Pointing();
    private final SheetCanvas canvas;
    private final ContextMenus menus;
    private final Locker locker;
    private final Margin margin;
    private @Nullable WorkingView working;
    private @Nullable FindingsTable findings;
    private final FoldOut foldOut;
    private final GivingWay room;
    private final JPanel strip;
    private final FindCommands finds;
    private final CheckCommands checks;
    private final FileCommands files;
    private final StatusLine status;

    /**
     * @param background runs what takes long, away from the event thread
     * @param menuKey {@code ctrl} or {@code meta}
     * @param onOpen told when another drawing lies on the desk
     * @param onClose told when the window may go
     */
    Workbench(
            Session session,
            Prompts prompts,
            Settings settings,
            Desks desks,
            Executor background,
            String menuKey,
            Runnable onOpen,
            Runnable onClose) {
        this.session = session;
        this.commands = new Commands(menuKey);
        ShownScene shown = new ShownScene();
        this.canvas = new SheetCanvas(session, shown, pointing);
        shown.behind(background, new EventThread(), canvas::ready);
        this.locker = new Locker(canvas);
        this.checks = new CheckCommands(session, canvas, pointing, prompts);
        this.margin = new Margin(session, canvas, pointing, checks);
        checks.margin(margin);
        this.files = new FileCommands(
                session,
                prompts,
                settings,
                desks,
                background,
                new EventThread(),
                () -> {
                    margin.forgetDrafts();
                    canvas.fit();
                    OpenedNotice.of(session.state()).ifPresent(session::say);
                    onOpen.run();
                },
                onClose);
        files.addTo(commands);
        ExportCommands exports = new ExportCommands(session, shown, prompts, background, new EventThread());
        exports.addTo(commands);
        canvas.onBackOut(() -> exports.giveUp() || giveBack());
        NoteCommands notes = new NoteCommands(session, canvas, prompts);
        notes.addTo(commands);
        EditCommands edits = new EditCommands(session, canvas, prompts, notes::edit);
        edits.addTo(commands);
        new ArrangeCommands(session, canvas, prompts).addTo(commands);
        this.menus = new ContextMenus(session, canvas, commands, notes, edits);
        canvas.onMenu(menus::open);
        ConditionsStrip conditions = new ConditionsStrip(session, canvas.blink(), () -> {
            canvas.byKeys(false);
            canvas.requestFocusInWindow();
        });
        this.strip = conditions.panel();
        this.preferences =
                new PreferenceCommands(session, prompts, new Preferences(settings), panel, () -> foldMarks());
        preferences.addTo(commands);
        checks.addTo(commands);
        VesselCommands vessel = new VesselCommands(session, prompts);
        vessel.addTo(commands);
        checks.vessel(vessel::vessel);
        new ConditionCommands(session, prompts).addTo(commands);
        SheetCommands sheets = new SheetCommands(session, canvas, prompts);
        sheets.addTo(commands);
        canvas.hand().renamer(id -> {
            if (!sheets.follow(id)) {
                edits.rename(id);
            }
        });
        CommandList all = new CommandList(commands, locker::take);
        new HelpCommands(prompts, all).addTo(commands);
        this.finds = new FindCommands(session, canvas, all, margin::show);
        finds.addTo(commands);
        // Pages have buttons of commands, and one that was open is made here.
        this.foldOut = new FoldOut(settings, pages());
        this.room = new GivingWay(panel, locker.rail(), margin, foldOut, conditions);
        new ViewCommands(session, canvas, locker.rail(), margin.panel(), strip, room, settings).addTo(commands);
        margin.onWanted(room::card);
        margin.onShown(this::told);
        canvas.hand().onMark(this::told);
        margin.onWorking(figure -> {
            room.page();
            foldOut.open("working");
            working().open(figure);
        });
        FOLDS.forEach((id, page) -> commands.toggle(id, () -> foldOut.shows(page), () -> fold(page)));
        Parts parts = new Parts(panel, canvas, canvas::hint, this::rest);
        room.onChange(this::foldMarks);
        parts.add(margin.cardPlace(), margin::cardFocus, () -> Texts.of("editor.hint.part-card"), room::card);
        parts.add(margin.notes(), margin::notesFocus, () -> Texts.of("editor.hint.part-notes"), room::card);
        parts.add(foldOut.panel(), foldOut::focus, foldOut::hint, room::page);
        parts.add(strip, conditions::focus, () -> Texts.of("editor.hint.part-conditions"), room::strip);
        parts.add(locker.rail(), locker::focus, () -> Texts.of("editor.hint.part-locker"), room::locker);
        commands.toggle(CommandId.WHOLE_PAGE, room::isWhole, this::wholePage);
        commands.add(CommandId.NEXT_PART, () -> parts.go(1));
        commands.add(CommandId.PREVIOUS_PART, () -> parts.go(-1));
        foldOut.onFold(() -> {
            room.page();
            foldMarks();
            parts.changed(foldOut.panel());
            if (working != null) {
                working.look();
            }
        });
        if (!commands.complete()) {
            throw new IllegalStateException("a command has no body");
        }
        commands.bind(panel);
        commands.onRefused(why -> session.say(Message.of("editor.say.refused", why)));
        new CanvasKeys(canvas, edits, () -> {
            room.card();
            return margin.cardFocus();
        });
        key("shift F10", menus::openByKey);
        key("CONTEXT_MENU", menus::openByKey);
        this.status = new StatusLine(session, () -> KeyHints.atRest(session.state(), canvas.byKeys()));
        status.follow(panel);
        BoxAnswers.follow(panel, canvas);
        lay(settings);
        pointing.listen(commands::refresh);
        session.listen((before, after) -> commands.refresh());
        OpenedNotice.of(session.state()).ifPresent(session::say);
        commands.refresh();
    }

    /**
     * Whoever works by keys goes with a page that is opened, and comes back to the sheet from one that is folded away. A
     * page that lies open gets the keys first, and is folded away when it has them.
     */
    private void fold(String page) {
        boolean byKeys = canvas.byKeys() || EventQueue.getCurrentEvent() instanceof KeyEvent;
        if (byKeys && foldOut.shows(page) && !foldOut.hasTheKeys()) {
            room.page();
        } else {
            foldOut.toggle(page);
        }
        if (byKeys) {
            SwingUtilities.invokeLater(() -> foldOut.focus().orElse(canvas).requestFocusInWindow());
        }
    }

    /** The page that is open gets all the room; with none open, the findings do. */
    private void wholePage() {
        if (!foldOut.open()) {
            foldOut.open("findings");
        }
        room.whole();
        if (room.isWhole() && canvas.byKeys()) {
            SwingUtilities.invokeLater(() -> foldOut.focus().orElse(canvas).requestFocusInWindow());
        }
    }

    /** Whether a page had all the room; it has not any longer. */
    private boolean giveBack() {
        boolean was = room.isWhole();
        if (was) {
            room.sheet();
        }
        return was;
    }

    private void rest() {
        room.sheet();
        status.rest();
    }

    /** A finding whose place is shown is told in the margin; one that has no note there, by its line among all findings. */
    private void told(Finding f) {
        boolean noted = canvas.scene()
                .map(s -> FindingPlaces.noted(session.state(), s, f))
                .orElse(true);
        if (!noted) {
            foldOut.open("findings");
        }
        FindingsTable table = findings;
        if (table != null && foldOut.shows("findings")) {
            table.show(f);
        }
    }

    private boolean showsWorking() {
        return foldOut != null && foldOut.shows("working");
    }

    private WorkingView working() {
        WorkingView made = working;
        if (made == null) {
            made = new WorkingView(session, this::showsWorking);
            working = made;
        }
        return made;
    }

    private Map<String, Supplier<JComponent>> pages() {
        Map<String, Supplier<JComponent>> pages = new LinkedHashMap<>();
        pages.put("path", () -> new PathView(session));
        pages.put("working", () -> working().panel());
        pages.put("findings", () -> {
            FindingsTable table = new FindingsTable(session, canvas.shown()::of, margin::show);
            canvas.blink().listen(table::refresh);
            findings = table;
            return table.panel();
        });
        pages.put("conditions", () -> new ConditionsView(session, commands).panel());
        pages.put("register", () -> new RegisterView(session, commands).panel());
        return pages;
    }

    /** Lets the marks in the menu agree with the window. */
    private void foldMarks() {
        FOLDS.forEach((id, page) -> commands.get(id).putValue(Action.SELECTED_KEY, foldOut.shows(page)));
        commands.get(CommandId.WHOLE_PAGE).putValue(Action.SELECTED_KEY, room.isWhole());
        commands.get(CommandId.ALONE).putValue(Action.SELECTED_KEY, room.isAlone());
        commands.get(CommandId.DARK).putValue(Action.SELECTED_KEY, Look.dark());
    }

    private void lay(Settings settings) {
        JPanel middle = Flat.panel(new BorderLayout(), Look::desk);
        middle.add(new SheetStrip(session, canvas, () -> foldOut.open("register")).panel(), BorderLayout.NORTH);
        JPanel shared = Flat.panel(new BorderLayout(), Look::desk);
        shared.add(canvas, BorderLayout.CENTER);
        shared.add(room.foldPlace(), BorderLayout.SOUTH);
        canvas.view().shares(shared);
        middle.add(shared, BorderLayout.CENTER);
        canvas.onHint(status::hint);
        JPanel below = Flat.panel(new BorderLayout(), Look::strip);
        below.add(room.lockerPlace(), BorderLayout.WEST);
        below.add(middle, BorderLayout.CENTER);
        below.add(room.marginPlace(), BorderLayout.EAST);
        new Sides(below, locker, margin, settings);
        panel.add(room.stripPlace(), BorderLayout.NORTH);
        panel.add(below, BorderLayout.CENTER);
        panel.add(status.panel(), BorderLayout.SOUTH);
    }

    private void key(String key, Runnable body) {
        canvas.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        canvas.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                body.run();
            }
        });
    }

    JPanel panel() {
        return panel;
    }

    Commands commands() {
        return commands;
    }

    SheetCanvas canvas() {
        return canvas;
    }

    Locker locker() {
        return locker;
    }

    Pointing pointing() {
        return pointing;
    }

    ContextMenus menus() {
        return menus;
    }

    /** Does what a finding would have done, as its button does. */
    void cure(Finding f) {
        checks.cure(f);
    }

    FindCommands finds() {
        return finds;
    }

    FileCommands files() {
        return files;
    }

    /** When the window comes to the front: what was chosen in another one holds here too. */
    void catchUp() {
        preferences.catchUp();
        commands.refresh();
    }

    /** Whether what is not saved is in the journal; if not, the title says so for as long as it lasts. */
    void inJournal(boolean is) {
        inJournal = is;
    }

    /** What stands in the title of the window. */
    String title() {
        SessionState s = session.state();
        String kept = s.file() == null ? "editor.title.new" : "editor.title.saved";
        String unsaved = inJournal ? "editor.title.unsaved" : "editor.title.unkept";
        String state = Texts.of(s.dirty() ? unsaved : kept);
        return Texts.of("editor.title", files.name(), state);
    }
}
