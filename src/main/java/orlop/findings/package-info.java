/**
 * Rules over a study: what is missing or wrong, where, why, and what would cure it.
 *
 * <p>Each rule is one small class with an id, a severity and a clause. A cure is an intent (which device of which
 * rating where, which area): the desk turns it into one edit. What may not be here: AWT, positions on paper.
 */
@NullMarked
package orlop.findings;

import org.jspecify.annotations.NullMarked;
