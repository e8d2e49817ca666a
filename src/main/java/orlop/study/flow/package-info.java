/**
 * Currents and voltages of direct- and alternating-current networks in steady state.
 *
 * <p>A sub-room of {@code orlop.study}: pure functions, no AWT, no JSON. Types are not safe for several threads unless
 * they say so.
 */
@NullMarked
package orlop.study.flow;

import org.jspecify.annotations.NullMarked;
