package orlop.network;

import orlop.drawing.Component;

/**
 * What hangs on the network: a source, a load, a converter between two systems.
 *
 * @param component the component
 * @param role what it does
 * @param pin its live pin; a converter's input
 * @param returnPin the pin of its drawn return, −1 for the common negative
 * @param outputPin a converter's output, −1 for all else
 * @param on whether the condition lets it work
 */
public record Attachment(Component component, Role role, int pin, int returnPin, int outputPin, boolean on) {
    /** What an attachment does. */
    public enum Role {
        /** A source that holds a voltage: the feeding path of a load starts at one of these if it can. */
        VOLTAGE_SOURCE,
        /** A source that charges, follows or is limited. */
        OTHER_SOURCE,
        LOAD,
        CONVERTER
    }

    /** Whether it is a source. */
    public boolean isSource() {
        return role == Role.VOLTAGE_SOURCE || role == Role.OTHER_SOURCE;
    }
}
