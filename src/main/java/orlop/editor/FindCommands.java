package orlop.editor;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import orlop.desk.Search;
import orlop.desk.Session;
import orlop.findings.Finding;

/** The two cards that find something: a command, or an item of any sheet. */
final class FindCommands {
    private final Session session;
    private final Search search = new Search(Texts.words());
    private final SheetCanvas canvas;
    private final Lookup commands;
    private final Lookup items;
    private final Consumer<Finding> onFinding;

    /**
     * @param all every command
     * @param onFinding shows the place of a finding
     */
    FindCommands(Session session, SheetCanvas canvas, CommandList all, Consumer<Finding> onFinding) {
        this.session = session;
        this.canvas = canvas;
        this.onFinding = onFinding;
        this.commands = new Lookup("command", all::find);
        this.items = new Lookup("item", this::hits);
    }

    void addTo(Commands c) {
        c.add(CommandId.FIND, () -> items.open(canvas));
        c.add(CommandId.FIND_COMMAND, () -> commands.open(canvas));
    }

    Lookup commands() {
        return commands;
    }

    Lookup items() {
        return items;
    }

    private List<Lookup.Entry> hits(String typed) {
        return search.find(session.state(), typed).stream().map(this::entry).toList();
    }

    private Lookup.Entry entry(Search.Hit h) {
        Finding f = h.finding();
        String sheet = h.number().isEmpty() ? "" : Texts.of("editor.lookup.on-sheet", h.number());
        String text = f == null ? h.item() + "   " + h.text().replace('\n', ' ') : h.text();
        return new Lookup.Entry(text, sheet, true, () -> {
            if (f == null) {
                show(h.item(), h.sheet());
            } else {
                onFinding.accept(f);
                canvas.scene()
                        .flatMap(s -> FindingPlaces.bounds(session.state(), s, f))
                        .ifPresent(canvas.view()::bringNear);
            }
        });
    }

    private void show(String id, String sheet) {
        session.showSheet(sheet);
        session.select(Set.of(id));
        canvas.scene()
                .flatMap(s ->
                        s.items().stream().filter(i -> i.subject().equals(id)).findFirst())
                .ifPresent(i -> canvas.view().bringNear(i.bounds()));
        canvas.requestFocusInWindow();
    }
}
