package orlop.editor;

import java.awt.event.ActionEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.ActionMap;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** All commands of a window by their ids. */
final class Commands {
    private final Map<CommandId, Command> byId = new EnumMap<>(CommandId.class);
    private final Map<CommandId, BooleanSupplier> toggles = new EnumMap<>(CommandId.class);
    private final String menuKey;
    private Consumer<String> refused = why -> {};

    /** @param menuKey {@code ctrl}, or {@code meta} on a Mac */
    Commands(String menuKey) {
        this.menuKey = menuKey;
    }

    void add(CommandId id, Runnable body, BooleanSupplier possible) {
        if (byId.put(id, new Command(id, menuKey, body, possible)) != null) {
            throw new IllegalStateException("two commands " + id);
        }
    }

    void add(CommandId id, Runnable body) {
        add(id, body, () -> true);
    }

    /** A command that is either on or off. */
    void toggle(CommandId id, BooleanSupplier on, Runnable body) {
        add(id, () -> {
            body.run();
            get(id).putValue(Action.SELECTED_KEY, on.getAsBoolean());
        });
        get(id).putValue(Action.SELECTED_KEY, on.getAsBoolean());
        toggles.put(id, on);
    }

    Command get(CommandId id) {
        Command c = byId.get(id);
        if (c == null) {
            throw new IllegalStateException("no command " + id);
        }
        return c;
    }

    boolean complete() {
        return byId.size() == CommandId.values().length;
    }

    /** Asks each whether it is possible now. */
    void refresh() {
        byId.values().forEach(Command::refresh);
        toggles.forEach((id, on) -> get(id).putValue(Action.SELECTED_KEY, on.getAsBoolean()));
    }

    /**
     * Binds the key of every command to a component and what is in it. Menus bind them too, but a menu may be hidden, and
     * on a Mac lies outside the window. Text fields keep their own keys: they are asked first.
     */
    void bind(JComponent root) {
        InputMap keys = root.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        ActionMap actions = root.getActionMap();
        for (Command c : byId.values()) {
            KeyStroke key = (KeyStroke) c.getValue(Action.ACCELERATOR_KEY);
            actions.put(c.id(), new Pressed(c));
            if (key != null) {
                keys.put(key, c.id());
            }
        }
        also(keys, "shift Z", CommandId.REDO);
        also(keys, "EQUALS", CommandId.ZOOM_IN);
        also(keys, "ADD", CommandId.ZOOM_IN);
        also(keys, "SUBTRACT", CommandId.ZOOM_OUT);
        keys.put(KeyStroke.getKeyStroke("BACK_SPACE"), CommandId.DELETE);
    }

    /** A key whose command is not possible now says why, where a menu would show it grey. */
    private final class Pressed extends AbstractAction {
        private static final long serialVersionUID = 1L;
        private final transient Command command;

        Pressed(Command command) {
            this.command = command;
        }

        @Override
        public void actionPerformed(ActionEvent e) {
            String why = command.why();
            if (why.isEmpty()) {
                command.run();
            } else {
                refused.accept(command.id().text().replace("…", "") + ": " + why);
            }
        }
    }

    /** @param listener told in words why what was asked for by its key is not possible */
    void onRefused(Consumer<String> listener) {
        refused = listener;
    }

    private void also(InputMap keys, String key, CommandId id) {
        keys.put(KeyStroke.getKeyStroke(menuKey + " " + key), id);
    }
}
