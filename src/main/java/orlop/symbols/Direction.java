package orlop.symbols;

/** The way out of a symbol at a terminal, as seen on the sheet. */
public enum Direction {
    UP,
    DOWN,
    LEFT,
    RIGHT
}
