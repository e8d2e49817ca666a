/**
 * What the physics needs to know of a drawing: resistances, ampacities, loads, sources, with what was assumed.
 *
 * <p>A sub-room of {@code orlop.study}: pure functions, no AWT, no JSON. Types are not safe for several threads unless
 * they say so.
 */
@NullMarked
package orlop.study.model;

import org.jspecify.annotations.NullMarked;
