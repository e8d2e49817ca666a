/**
 * Ampacity, least areas and voltage-drop limits.
 *
 * <p>A sub-room of {@code orlop.study}: pure functions, no AWT, no JSON. Types are not safe for several threads unless
 * they say so.
 */
@NullMarked
package orlop.study.sizing;

import org.jspecify.annotations.NullMarked;
