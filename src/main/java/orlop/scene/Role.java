package orlop.scene;

import java.util.Locale;

/** What an item is on the sheet. */
public enum Role {
    FRAME,
    TITLE_BLOCK,
    /** A component's symbol. */
    COMPONENT,
    /** A component that is drawn as a bar: busbar, distribution board. */
    BAR,
    /** The line of a cable. */
    CABLE,
    /** The line of a link. */
    LINK,
    /** The texts of a component or cable. */
    LABEL,
    /** The numbered marker at the place of a finding. */
    FINDING,
    /** A device that is not there and ought to be. */
    PROPOSED,
    /** A note in the printed margin. */
    MARGIN,
    /** Free text of a person. */
    NOTE,
    LEGEND,
    CAUTION;

    /** As it stands in exported files: {@code title-block}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
