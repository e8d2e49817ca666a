package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.KeyStroke;
import orlop.drawing.Group;
import orlop.drawing.Kind;

/** Everything that can be asked for, as lines of text: for the card that finds a command, and for the list of keys. */
final class CommandList {
    private final Commands commands;
    private final Consumer<Kind> place;

    /** @param place begins to place a component */
    CommandList(Commands commands, Consumer<Kind> place) {
        this.commands = commands;
        this.place = place;
    }

    /**
     * A thing that can be asked for.
     *
     * @param text its words in the menu
     * @param keys its keys, spoken; "" for none
     * @param why why it can't be done now; "" if it can
     */
    record Line(String text, String keys, String why, Runnable body) {}

    /** All of them: the commands in the order of their ids, then the components of the locker. */
    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (CommandId id : CommandId.values()) {
            Command c = commands.get(id);
            Object key = c.getValue(Action.ACCELERATOR_KEY);
            String spoken = key instanceof KeyStroke k ? HelpCommands.spoken(k) : "";
            lines.add(new Line(id.text(), spoken, c.why(), c::run));
        }
        for (Group g : Group.values()) {
            for (LockerKeys.Row row : LockerKeys.rows(g)) {
                String text =
                        Texts.of("editor.lookup.place", Texts.of(row.kind().term()));
                lines.add(new Line(text, row.keys(), "", () -> place.accept(row.kind())));
            }
        }
        return lines;
    }

    /** Those in which each of the words occurs; those that begin with them first, what can't be done now last. */
    List<Lookup.Entry> find(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        List<Lookup.Entry> first = new ArrayList<>();
        List<Lookup.Entry> then = new ArrayList<>();
        List<Lookup.Entry> last = new ArrayList<>();
        for (Line l : lines()) {
            String hay = l.text().toLowerCase(Locale.ROOT);
            boolean all = true;
            for (String word : text.split("\\s+")) {
                all &= hay.contains(word);
            }
            if (all) {
                boolean possible = l.why().isEmpty();
                List<Lookup.Entry> to = !possible ? last : hay.startsWith(text) ? first : then;
                to.add(new Lookup.Entry(l.text(), possible ? l.keys() : l.why(), possible, l.body()));
            }
        }
        first.addAll(then);
        first.addAll(last);
        return first;
    }
}
