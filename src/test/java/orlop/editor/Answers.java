package orlop.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;

/** Answers in a person's place. Left alone, it backs out of everything. */
final class Answers implements Prompts {
    @Nullable
    Path file;

    Unsaved unsaved = Unsaved.STAY;
    Outside outside = Outside.STAY;
    Recovery recovery = Recovery.LATER;
    boolean readAgain;
    boolean openAsCopy;
    boolean agree;
    int choice = -1;

    /** How often the same form or line is agreed to before it is backed out of. */
    int patience = 1;

    private int left = Integer.MAX_VALUE;

    /** Fills in a form before it is agreed to. */
    Consumer<JComponent> filling = form -> {};

    @Nullable
    String line;

    /** What was shown last to be read. */
    @Nullable
    JComponent shown;

    final List<String> told = new ArrayList<>();
    final List<String> asked = new ArrayList<>();
    final List<String> suggested = new ArrayList<>();

    @Override
    public Optional<Path> open(Optional<Path> near) {
        near.ifPresent(p -> asked.add("open near " + p));
        return Optional.ofNullable(file);
    }

    @Override
    public Optional<Path> save(Path suggestion, String suffix) {
        suggested.add(String.valueOf(suggestion.getFileName()));
        return Optional.ofNullable(file);
    }

    @Override
    public Unsaved unsaved(String name) {
        asked.add("unsaved " + name);
        return unsaved;
    }

    @Override
    public Outside changedOutside(String name) {
        asked.add("outside " + name);
        return outside;
    }

    @Override
    public boolean readAgain(String name, boolean dirty) {
        asked.add("read again " + name);
        return readAgain;
    }

    @Override
    public boolean openAsCopy(String name) {
        asked.add("copy " + name);
        return openAsCopy;
    }

    @Override
    public Recovery recover(String name, String when, String newer) {
        asked.add(("recover " + name + " " + newer).strip());
        return recovery;
    }

    @Override
    public Optional<String> line(String title, String label, String initial) {
        asked.add("line " + label);
        return left-- > 0 ? Optional.ofNullable(line) : Optional.empty();
    }

    @Override
    public int choose(String title, String text, String... answers) {
        asked.add(text);
        return choice;
    }

    @Override
    public boolean form(String title, JComponent form) {
        asked.add("form " + title);
        filling.accept(form);
        return agree && left-- > 0;
    }

    @Override
    public boolean form(String title, JPanel page, Supplier<Optional<Message>> taken) {
        left = patience;
        boolean made = Prompts.super.form(title, page, () -> told(taken.get()));
        left = Integer.MAX_VALUE;
        return made;
    }

    @Override
    public void line(String title, String label, String initial, Function<String, Optional<Message>> taken) {
        left = patience;
        Prompts.super.line(title, label, initial, typed -> told(taken.apply(typed)));
        left = Integer.MAX_VALUE;
    }

    private Optional<Message> told(Optional<Message> refusal) {
        refusal.ifPresent(m -> told.add(Texts.title(m)));
        return refusal;
    }

    @Override
    public void tell(String title, String text) {
        told.add(text);
    }

    @Override
    public void tell(String title, JComponent content) {
        shown = content;
        told.add(title);
    }
}
