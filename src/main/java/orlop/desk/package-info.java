/**
 * The session at work: the drawing and its history, what is selected and shown, the newest results, files, and the
 * edits behind a person's gestures and behind the cures of findings.
 *
 * <p>{@link orlop.desk.Session} is the one place that changes anything; it tells its listeners with two immutable
 * {@link orlop.desk.SessionState}s, before and after. {@link orlop.desk.Recalculator} works the results out on another
 * thread and hands them back to the thread of the window.
 *
 * <p>What may not be here: Swing, AWT events, pixels, a sentence of a language. Null rule: nothing is null unless it is
 * marked {@code @Nullable}.
 */
@NullMarked
package orlop.desk;

import org.jspecify.annotations.NullMarked;
