package orlop.editor;

import java.awt.event.ActionEvent;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** One thing that can be asked of the window: the same object behind menu, key and button. */
final class Command extends AbstractAction {
    private static final long serialVersionUID = 1L;
    private final transient CommandId id;
    private final transient Runnable body;
    private final transient BooleanSupplier possible;

    Command(CommandId id, String menuKey, Runnable body, BooleanSupplier possible) {
        super(id.text());
        this.id = id;
        this.body = body;
        this.possible = possible;
        putValue(Action.ACTION_COMMAND_KEY, id.word());
        putValue(Action.ACCELERATOR_KEY, id.key(menuKey));
    }

    CommandId id() {
        return id;
    }

    /** Does it, if it is possible now. */
    void run() {
        if (possible.getAsBoolean()) {
            body.run();
        }
    }

    /** Why it can't be done now; "" if it can. */
    String why() {
        if (possible.getAsBoolean()) {
            return "";
        }
        String key = "editor.why." + id.word();
        return Texts.of(Texts.words().pattern(key).isPresent() ? key : "editor.why");
    }

    void refresh() {
        setEnabled(possible.getAsBoolean());
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        run();
    }
}
