/** JMH benchmarks of the main job. */
@NullMarked
package orlop.bench;

import org.jspecify.annotations.NullMarked;
