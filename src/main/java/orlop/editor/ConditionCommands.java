package orlop.editor;

import java.util.Optional;
import orlop.desk.ConditionEdits;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.OperatingCondition;
import orlop.study.Results;

/** The commands that make, copy, name and delete operating conditions. All but the first work on the one that is shown. */
final class ConditionCommands {
    private final Session session;
    private final Prompts prompts;

    ConditionCommands(Session session, Prompts prompts) {
        this.session = session;
        this.prompts = prompts;
    }

    void addTo(Commands c) {
        c.add(CommandId.NEW_CONDITION, this::add);
        c.add(CommandId.COPY_CONDITION, this::copy, this::shown);
        c.add(CommandId.RENAME_CONDITION, this::rename, this::shown);
        c.add(CommandId.DELETE_CONDITION, this::delete, this::shown);
    }

    private boolean shown() {
        return condition().isPresent();
    }

    private Optional<OperatingCondition> condition() {
        return session.state().shownCondition();
    }

    private Drawing drawing() {
        return session.state().drawing();
    }

    private Optional<String> name(String title, String initial) {
        return prompts.line(Texts.of(title), Texts.of("editor.form.condition"), initial)
                .filter(n -> !n.isBlank());
    }

    private void add() {
        name("editor.form.condition.title", "").ifPresent(name -> {
            String id = ConditionEdits.freeId(drawing());
            if (session.apply(ConditionEdits.add(id, name)).isEmpty()) {
                session.showCondition(id);
            }
        });
    }

    private void copy() {
        condition().ifPresent(c -> {
            String id = ConditionEdits.freeId(drawing());
            String suggested = Texts.of("editor.form.condition.copy", c.title());
            name("editor.form.condition.copy.title", suggested).ifPresent(name -> {
                if (session.apply(ConditionEdits.duplicate(c.id(), id, name)).isEmpty()) {
                    session.showCondition(id);
                }
            });
        });
    }

    private void rename() {
        condition()
                .ifPresent(c -> name("editor.form.condition.rename.title", c.title())
                        .ifPresent(name -> session.apply(ConditionEdits.rename(c.id(), name))));
    }

    private void delete() {
        condition().ifPresent(c -> {
            Optional<Message> said = ConditionEdits.saidOfDeleting(drawing(), c.id());
            if (session.apply(ConditionEdits.delete(c.id())).isEmpty()) {
                session.showCondition(drawing().conditions().stream()
                        .findFirst()
                        .map(OperatingCondition::id)
                        .orElse(Results.GOVERNING));
                said.ifPresent(session::say);
            }
        });
    }
}
