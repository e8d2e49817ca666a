/**
 * The geometry of a sheet, in millimetres: where cables run, where labels stand, how things line up.
 *
 * <p>Text is measured by the advance widths in the bundled font itself, so that a sheet is laid out alike on every
 * machine. Nothing here may know AWT, Swing or pixels.
 */
@NullMarked
package orlop.layout;

import org.jspecify.annotations.NullMarked;
