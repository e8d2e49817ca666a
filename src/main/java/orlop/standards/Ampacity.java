package orlop.standards;

import java.util.List;

/**
 * The current that a copper conductor carries for ever under one rule set. Pure, immutable, safe for any thread.
 *
 * <p>Common to all: the row is the largest one whose area is not above the conductor's (half a percent is allowed for
 * areas written with three digits; never rounded up to the next row); the column is the greatest one not above the
 * insulation's rating that reaches the area.
 */
public interface Ampacity {
    /** The ampacity of one conductor, with its factors, or the reason why there is none. */
    AmpacityResult of(CableSituation situation);

    /** The areas of the table's rows, ascending, mm². */
    List<Double> areasMm2();
}
