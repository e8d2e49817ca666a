package orlop.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

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

    /** Fills in a form before it is agreed to. */
    Consumer<JComponent> filling = form -> {};

    @Nullable
    String line;

    private @Nullable JComponent last;

    final List<String> told = new ArrayList<>();
    final List<String> asked = new ArrayList<>();

    @Override
    public Optional<Path> open() {
        return Optional.ofNullable(file);
    }

    @Override
    public Optional<Path> save(Path suggestion, String suffix) {
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
    public Recovery recover(String name, String when) {
        asked.add("recover " + name);
        return recovery;
    }

    @Override
    public Optional<String> line(String title, String label, String initial) {
        return Optional.ofNullable(line);
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
        boolean again = form == last; // asked again, because what was entered was refused
        last = form;
        return agree && !again;
    }

    @Override
    public void tell(String title, String text) {
        told.add(text);
    }

    @Override
    public void tell(String title, JComponent content) {
        told.add(title);
    }
}
