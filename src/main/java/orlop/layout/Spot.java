package orlop.layout;

/**
 * A place where a text may stand.
 *
 * @param rect what it would cover
 * @param side how its lines are set
 * @param cost how much worse it is than the best place, 0 or more
 */
public record Spot(Rect rect, Side side, double cost) {}
