package orlop.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Marks a test class that opens windows; its name must end in {@code WindowTest}, since only those run without
 * {@code java.awt.headless}. Without a live display its tests are skipped and counted in one line at the end of the
 * run; with {@code ORLOP_WINDOW_TESTS=required} in the environment a missing display is a failure.
 *
 * <p>A test or {@code @BeforeEach} method that takes an {@code org.assertj.swing.core.Robot} gets the one robot of this
 * test, cleaned up afterwards. Take it before opening the first frame. Touching Swing off its own thread fails the test.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(WindowTestExtension.class)
public @interface WindowTest {}
