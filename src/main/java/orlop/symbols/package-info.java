/**
 * The graphical symbols: the top-level folder {@code symbols/} read into outlines, terminals and text places.
 *
 * <p>Every file is read by the same guarded reader, be it ours or a person's own. It takes a small part of SVG by an
 * allow list, opens nothing else, and says what it refused. Shapes are those of {@code java.awt.geom}; Swing, pixels and
 * fonts are not known here. All lengths are in mm on the sheet, x to the right, y downwards, from the symbol's origin.
 */
@NullMarked
package orlop.symbols;

import org.jspecify.annotations.NullMarked;
