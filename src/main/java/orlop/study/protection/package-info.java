/**
 * Where overcurrent protection is missing or does not do.
 *
 * <p>A sub-room of {@code orlop.study}: pure functions, no AWT, no JSON. Types are not safe for several threads unless
 * they say so.
 */
@NullMarked
package orlop.study.protection;

import org.jspecify.annotations.NullMarked;
