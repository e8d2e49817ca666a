package orlop.layout;

import orlop.drawing.TerminalRef;

/**
 * A terminal on the sheet: where a line ends and the way it leaves.
 *
 * @param terminal the terminal
 * @param x mm
 * @param y mm
 * @param heading away from the component
 */
public record Port(TerminalRef terminal, double x, double y, Heading heading) {}
