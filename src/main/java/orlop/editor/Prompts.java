package orlop.editor;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import orlop.drawing.Message;

/** What the window asks a person in boxes of their own. Tests answer in their place. */
interface Prompts {
    /** What to do with changes that aren't saved. */
    enum Unsaved {
        SAVE,
        DISCARD,
        STAY
    }

    /**
     * Which file to open.
     *
     * @param near a file in whose folder one begins to look, if nobody has looked elsewhere yet
     */
    Optional<Path> open(Optional<Path> near);

    /**
     * Where to write.
     *
     * @param suggestion offered at first
     * @param suffix of the file's name, with its dot; added where it lacks
     */
    Optional<Path> save(Path suggestion, String suffix);

    Unsaved unsaved(String name);

    /** What to do with a file that somebody else has written since it was read here. */
    enum Outside {
        OVERWRITE,
        SAVE_AS,
        STAY
    }

    /** The drawing is to be saved, and its file isn't any more what was read. */
    Outside changedOutside(String name);

    /**
     * Somebody else has written the file: whether to read it again.
     *
     * @param dirty whether there are changes here that are not saved
     */
    boolean readAgain(String name, boolean dirty);

    /** Another program has the file open: whether to open a copy of it. */
    boolean openAsCopy(String name);

    /** What to do with a drawing that a crash has left unsaved. */
    enum Recovery {
        RESTORE,
        LATER,
        DISCARD
    }

    /**
     * A drawing was left unsaved.
     *
     * @param when it was last changed, in words
     * @param newer a sentence on what is newer than that, "" if nothing is
     */
    Recovery recover(String name, String when, String newer);

    /** Asks for one line of text; empty if the person backs out. */
    Optional<String> line(String title, String label, String initial);

    /** Asks a question; the number of the answer that was chosen, from 0, or -1 if the person backs out. */
    int choose(String title, String text, String... answers);

    /** Shows a form; whether the person agrees to it. */
    boolean form(String title, JComponent form);

    /**
     * Shows a form until what was typed in it can be taken, or the person backs out; what was typed stays in it.
     *
     * @param taken takes it, and says why that can't be
     * @return whether it was taken
     */
    default boolean form(String title, JPanel page, Supplier<Optional<Message>> taken) {
        while (form(title, page)) {
            Optional<Message> refusal = taken.get();
            if (refusal.isEmpty()) {
                return true;
            }
            Forms.refused(page, refusal.get());
        }
        return false;
    }

    /**
     * Asks for one line of text until it can be taken, or the person backs out.
     *
     * @param taken takes it, and says why that can't be
     */
    default void line(String title, String label, String initial, Function<String, Optional<Message>> taken) {
        Optional<String> typed = line(title, label, initial);
        while (typed.isPresent()) {
            Optional<Message> refusal = taken.apply(typed.get());
            typed = refusal.isEmpty()
                    ? Optional.empty()
                    : line(title, Texts.title(refusal.get()) + "\n\n" + label, typed.get());
        }
    }

    /** Tells something that has to be read. */
    void tell(String title, String text);

    void tell(String title, JComponent content);
}
