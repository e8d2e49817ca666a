package orlop.editor;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import orlop.desk.CureEdits;
import orlop.desk.Search;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Acceptance;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Extras;
import orlop.drawing.Message;
import orlop.drawing.Sheet;
import orlop.findings.Cure;
import orlop.findings.Finding;

/** The commands of the menu Check: from finding to finding, cure, accept. */
final class CheckCommands implements NoteView.Deeds {
    private final Session session;
    private final SheetCanvas canvas;
    private final Pointing pointing;
    private final Prompts prompts;
    private @Nullable Margin margin;
    private Consumer<String> vessel = field -> {};
    private int label;
    private String labelSheet = "";

    CheckCommands(Session session, SheetCanvas canvas, Pointing pointing, Prompts prompts) {
        this.session = session;
        this.canvas = canvas;
        this.pointing = pointing;
        this.prompts = prompts;
    }

    /** @param asks asks for a particular of the vessel, by its field */
    void vessel(Consumer<String> asks) {
        vessel = asks;
    }

    void margin(Margin m) {
        margin = m;
    }

    void addTo(Commands c) {
        c.add(CommandId.NEXT_FINDING, () -> step(1), this::any);
        c.add(CommandId.PREVIOUS_FINDING, () -> step(-1), this::any);
        c.add(
                CommandId.CURE,
                () -> cure(require()),
                () -> pointed().flatMap(f -> Optional.ofNullable(f.cure())).isPresent());
        c.add(
                CommandId.ACCEPT,
                () -> accept(require()),
                () -> pointed().filter(f -> !f.accepted()).isPresent());
        c.add(
                CommandId.WITHDRAW,
                () -> reopen(require()),
                () -> pointed().filter(Finding::accepted).isPresent());
        c.add(CommandId.CHECK_AGAIN, session::review);
    }

    private boolean any() {
        return !FindingPlaces.all(session.state()).isEmpty();
    }

    private Optional<Finding> pointed() {
        return Optional.ofNullable(pointing.finding());
    }

    private Finding require() {
        return pointed().orElseThrow();
    }

    /** In the order of the numbers on the sheet that is shown; past the last, to the next sheet that has findings. */
    private void step(int by) {
        List<FindingPlaces.Numbered> here = here();
        int at = -1;
        for (int i = 0; i < here.size(); i++) {
            at = here.get(i).finding().equals(pointing.finding()) ? i : at;
        }
        int next = at < 0 ? beside(here, by) : at + by;
        if (here.isEmpty() || next < 0 || next >= here.size()) {
            session.showSheet(otherSheet(by));
            here = here();
            next = by > 0 ? 0 : here.size() - 1;
        }
        if (margin != null && !here.isEmpty()) {
            margin.wanted();
            margin.show(here.get(next).finding());
            canvas.hint(hint(here.get(next).finding()));
            label = here.get(next).label();
            labelSheet = session.state().sheet();
        }
    }

    /** What the keys do with the finding that is pointed at. */
    private static String hint(Finding f) {
        Cure cure = f.cure();
        return cure == null
                ? Texts.of("editor.hint.finding-plain", Texts.title(f.title()))
                : Texts.of("editor.hint.finding", Texts.title(f.title()), Texts.of(cure.label()));
    }

    /** What stands now where the finding stood that was pointed at last and is cured; else the first, or the last. */
    private int beside(List<FindingPlaces.Numbered> here, int by) {
        boolean went = labelSheet.equals(session.state().sheet());
        int next = by > 0 ? 0 : here.size() - 1;
        for (int i = 0; went && i < here.size(); i++) {
            boolean before = here.get(i).label() < label;
            next = by > 0 && before ? i + 1 : by < 0 && before ? i : next;
        }
        return next;
    }

    private List<FindingPlaces.Numbered> here() {
        SessionState s = session.state();
        return canvas.scene().map(scene -> FindingPlaces.ofSheet(s, scene)).orElseGet(() -> FindingPlaces.ofSheet(s));
    }

    /** The next sheet in this direction on which there are findings; it may be the same one. */
    private String otherSheet(int by) {
        SessionState s = session.state();
        Set<String> with = new HashSet<>();
        FindingPlaces.all(s).forEach(n -> with.add(FindingPlaces.sheet(s.drawing(), n.finding())));
        List<String> ids = s.drawing().sheets().stream().map(Sheet::id).toList();
        int now = ids.indexOf(s.sheet());
        for (int i = 1; i < ids.size(); i++) {
            String id = ids.get(Math.floorMod(now + by * i, ids.size()));
            if (with.contains(id)) {
                return id;
            }
        }
        return s.sheet();
    }

    /** Does what a finding would have done. */
    @Override
    public void cure(Finding f) {
        if (f.cure() == null) {
            return;
        }
        SessionState s = session.state();
        CureEdits.Action a =
                CureEdits.of(s.drawing(), f.cure(), sheet -> canvas.shown().ofSheet(s, sheet));
        if (a instanceof CureEdits.Made m) {
            session.apply(m.edit(), m.select());
        } else if (a instanceof CureEdits.Asked q && q.item().isEmpty()) {
            vessel.accept(q.field());
        } else if (a instanceof CureEdits.Asked q && margin != null) {
            String sheet = Search.sheet(s.drawing(), q.item());
            session.showSheet(sheet);
            margin.ask(q.item(), q.field());
        }
    }

    @Override
    public void place(Finding f) {
        if (margin != null) {
            margin.show(f);
        }
    }

    /** Takes back that somebody lives with a finding. */
    @Override
    public void reopen(Finding f) {
        session.apply(named(
                "editor.edit.reopen", f, Edits.withdraw(f.rule(), f.place().item())));
        pointing.at(null);
    }

    /** Asks why somebody lives with a finding, and remembers it. */
    @Override
    public void accept(Finding f) {
        prompts.line(
                Texts.of("editor.accept.title"),
                Texts.of("editor.accept", Texts.title(f.title())),
                "",
                reason -> accepted(f, reason));
    }

    private Optional<Message> accepted(Finding f, String reason) {
        if (reason.isBlank()) {
            return Optional.of(Message.of("drawing.range.reason", Texts.of("editor.accept.reason")));
        }
        String id = f.rule() + "~" + f.place().item();
        String by = session.state().drawing().vessel().owner();
        pointing.at(null);
        Edit edit = named(
                "editor.edit.accept",
                f,
                Edits.accept(
                        new Acceptance(id, f.rule(), f.place().item(), reason, by, "", f.messageKeys(), Extras.NONE)));
        Optional<Message> refusal = session.apply(edit, Set.of());
        if (refusal.isEmpty()) {
            session.say(null); // that nothing is selected any more has put what can be done in its place
            session.say(edit.label());
        }
        return refusal;
    }

    /** The edit by the words that a person reads of a finding, in place of the rule's id. */
    private static Edit named(String key, Finding f, Edit edit) {
        String item = f.place().item();
        Message label = item.isEmpty()
                ? Message.of(key, Texts.of(f.title()))
                : Message.of(key + ".at", Texts.of(f.title()), item);
        return Edit.of(label, edit::applyTo);
    }
}
