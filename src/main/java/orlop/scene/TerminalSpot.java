package orlop.scene;

import orlop.drawing.TerminalRef;
import orlop.layout.Heading;

/**
 * Where a cable can begin.
 *
 * @param terminal the terminal; for a spot on a bar a name that is not used yet
 * @param xMm on the sheet
 * @param yMm on the sheet
 * @param heading the way a cable leaves
 * @param connected whether a cable or link ends there already
 */
public record TerminalSpot(TerminalRef terminal, double xMm, double yMm, Heading heading, boolean connected) {}
