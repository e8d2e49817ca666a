package orlop.study.protection;

import org.jspecify.annotations.Nullable;
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

    /** Highest fault current in any condition through a connection; NaN if it is not determined. */
    double faultThroughA(int connection);

    /** Id of the first condition in which the source works. */
    String conditionOf(String source);
}
