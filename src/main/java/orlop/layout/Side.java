package orlop.layout;

/** Where a text stands to what it speaks of, and so how its lines are set. */
public enum Side {
    /** Set from the left. */
    RIGHT,
    /** Set to the right edge. */
    LEFT,
    /** Set in the middle. */
    ABOVE,
    /** Set in the middle. */
    BELOW;

    /** As a component shows it that is mirrored (left and right exchanged) and then turned clockwise. */
    Side placed(int rotationDegree, boolean mirrored) {
        Heading h = heading().placed(rotationDegree, mirrored);
        return switch (h) {
            case RIGHT -> RIGHT;
            case LEFT -> LEFT;
            case UP -> ABOVE;
            case DOWN -> BELOW;
        };
    }

    Heading heading() {
        return switch (this) {
            case RIGHT -> Heading.RIGHT;
            case LEFT -> Heading.LEFT;
            case ABOVE -> Heading.UP;
            case BELOW -> Heading.DOWN;
        };
    }
}
