/**
 * Sparse symmetric elimination: the one solver of all network equations.
 *
 * <p>A sub-room of {@code orlop.study}: pure functions, no AWT, no JSON. Types are not safe for several threads unless
 * they say so.
 */
@NullMarked
package orlop.study.linear;

import org.jspecify.annotations.NullMarked;
