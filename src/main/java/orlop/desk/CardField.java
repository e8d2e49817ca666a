package orlop.desk;

import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;

/**
 * One line of a card: a particular that a person can change.
 *
 * @param section where on the card it stands
 * @param path where it is kept: {@code name}, {@code particulars.ratingA}, {@code construction.laying}
 * @param name the particular's own name, which is that in the file
 * @param type how it is entered
 * @param optional whether it may be left empty: not known
 * @param value what it is now; null for not known
 * @param choices what can be chosen, for {@link Type#CHOICE}
 * @param mixed whether the line stands for several items with different values; {@code value} is null then
 */
public record CardField(
        Section section,
        String path,
        String name,
        Type type,
        boolean optional,
        @Nullable Object value,
        List<Choice> choices,
        boolean mixed) {
    public CardField {
        choices = List.copyOf(choices);
    }

    /** A line of one item. */
    public CardField(
            Section section,
            String path,
            String name,
            Type type,
            boolean optional,
            @Nullable Object value,
            List<Choice> choices) {
        this(section, path, name, type, optional, value, choices, false);
    }

    /** This line for one more item: mixed if that one has another value. */
    CardField with(CardField other) {
        boolean differs = mixed || !Objects.equals(value, other.value);
        return new CardField(section, path, name, type, optional, differs ? null : value, choices, differs);
    }

    /** This line with those of its choices that are wanted. */
    CardField choosing(Predicate<Object> wanted) {
        List<Choice> some = choices.stream().filter(c -> wanted.test(c.value())).toList();
        return new CardField(section, path, name, type, optional, value, some, mixed);
    }

    /** The parts of a card, from top to foot. */
    public enum Section {
        MAIN,
        PARTICULARS,
        CONDITION,
        MORE
    }

    /** How a particular is entered. */
    public enum Type {
        NUMBER,
        WHOLE,
        TEXT,
        /** Text of several lines. */
        LINES,
        FLAG,
        CHOICE
    }

    /**
     * One of several values.
     *
     * @param value what is kept
     * @param label its words; an id that came from a person stands as it is
     */
    public record Choice(Object value, Message label) {}

    /** The same line with another value. */
    public boolean sameLine(CardField other) {
        return path.equals(other.path)
                && name.equals(other.name)
                && type == other.type
                && optional == other.optional
                && choices.equals(other.choices);
    }
}
