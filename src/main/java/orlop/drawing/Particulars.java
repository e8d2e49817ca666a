package orlop.drawing;

import java.util.List;

/**
 * What is special to one kind of component. Each kind is a record; its components are, name by name, the keys of the
 * file and the fields of the card.
 *
 * <p>A nullable particular is "not known": the study then assumes a value and says so.
 */
public sealed interface Particulars permits Source, Conversion, Distribution, Protection, Switching, Consumer, Earth {

    /** The kind that these particulars belong to. */
    Kind kind();

    /** Calls the case of this group: forgetting a group does not compile. */
    <R> R match(Cases<R> cases);

    /** The names of the terminals in order; empty where any name is a terminal. */
    default List<String> terminals() {
        return kind().terminals().names();
    }

    /** Whether a terminal of this name exists. */
    default boolean hasTerminal(String name) {
        return kind().isOnePiece() || terminals().contains(name);
    }

    /**
     * Which of the component's systems a terminal belongs to: 0 for the first. Kinds between two systems have terminal
     * 1 in the first and all others in the second, unless they say otherwise.
     */
    default int systemOf(String terminal) {
        return kind().spansSystems() && !terminal.equals("1") ? 1 : 0;
    }

    /** One case for each group. */
    interface Cases<R> {
        R source(Source s);

        R conversion(Conversion c);

        R distribution(Distribution d);

        R protection(Protection p);

        R switching(Switching s);

        R consumer(Consumer c);

        R earth(Earth e);
    }
}
