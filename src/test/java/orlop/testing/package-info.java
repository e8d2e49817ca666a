/**
 * What tests share: {@link orlop.testing.WindowTest} for tests that open windows, and
 * {@link orlop.testing.Outcome} for programs run to their end.
 */
@NullMarked
package orlop.testing;

import org.jspecify.annotations.NullMarked;
