package orlop.layout;

/** One of the four ways along the grid of a sheet, y downwards. */
public enum Heading {
    UP(0, -1),
    RIGHT(1, 0),
    DOWN(0, 1),
    LEFT(-1, 0);

    private final int dx;
    private final int dy;

    Heading(int dx, int dy) {
        this.dx = dx;
        this.dy = dy;
    }

    /** −1, 0 or 1, to the right. */
    public int dx() {
        return dx;
    }

    /** −1, 0 or 1, downwards. */
    public int dy() {
        return dy;
    }

    /** Whether it runs left or right. */
    public boolean horizontal() {
        return dy == 0;
    }

    public Heading opposite() {
        return turned(2);
    }

    /** Turned clockwise by so many quarters. */
    public Heading turned(int quarters) {
        Heading h = this;
        for (int i = Math.floorMod(quarters, 4); i > 0; i--) {
            h = h.clockwise();
        }
        return h;
    }

    private Heading clockwise() {
        return switch (this) {
            case UP -> RIGHT;
            case RIGHT -> DOWN;
            case DOWN -> LEFT;
            case LEFT -> UP;
        };
    }

    /** As a component shows it that is mirrored (left and right exchanged) and then turned clockwise. */
    public Heading placed(int rotationDegree, boolean mirrored) {
        Heading h = mirrored && horizontal() ? opposite() : this;
        return h.turned(rotationDegree / 90);
    }
}
