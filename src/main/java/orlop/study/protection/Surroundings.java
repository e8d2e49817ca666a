package orlop.study.protection;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.study.model.Rating;

/** What coverage needs to know of the rest of the study. */
public interface Surroundings {
    /** What a cable may carry; null if not known. */
    @Nullable
    Rating rating(int cable);

    /** What a cable is sized for. */
    double designA(int cable);

    /** Highest fault current in any condition, and with every switch closed, at a terminal's point, by pin; NaN if nothing feeds it. */
    double faultMaxA(int pin);

    /** Lowest fault current of all conditions in which a terminal's point is fed, by pin; NaN if nothing feeds it. */
    double faultMinA(int pin);

    /** As {@link #faultMinA(int)}, in the condition of this place in the list alone. */
    double faultMinA(int pin, int condition);

    /** Highest fault current in any condition through a connection; NaN if it is not determined. */
    double faultThroughA(int connection);

    /** Ids of all conditions. */
    List<String> conditions();

    /** Whether a source or converter is on in the condition of this place in the list. */
    boolean isOn(int condition, Component source);

    /**
     * Ids of the conditions in which more than this flows into a fault through a connection, or at its ends where that is
     * not determined; all of them where only a position of the switches that no condition has brings it.
     */
    List<String> conditionsAbove(int connection, double amps);
}
