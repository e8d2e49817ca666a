/**
 * Prospective fault currents of direct- and alternating-current networks.
 *
 * <p>A sub-room of {@code orlop.study}: pure functions, no AWT, no JSON. Types are not safe for several threads unless
 * they say so.
 */
@NullMarked
package orlop.study.fault;

import org.jspecify.annotations.NullMarked;
