/**
 * The physics: a drawing in, every result out.
 *
 * <p>{@link orlop.study.Study} is the one façade. Its sub-rooms are pure functions: {@code flow} (currents, voltages),
 * {@code fault} (prospective currents), {@code sizing} (ampacity, drop, least area), {@code protection} (coverage).
 *
 * <p>What may not be here: AWT, JSON, Swing, a clock, a random number. A doubtful drawing never throws and never yields
 * NaN: what could not be calculated is null, and a {@link orlop.study.Remark} says why.
 *
 * <p>Signs: a cable's current is positive from {@code from} to {@code to}; loads take positive, sources give positive.
 * Null rule: a nullable result is "not known" or "does not apply". All types are immutable and safe to share.
 */
@NullMarked
package orlop.study;

import org.jspecify.annotations.NullMarked;
