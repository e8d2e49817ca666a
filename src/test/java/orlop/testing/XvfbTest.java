package orlop.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** Marks a test class that starts displays of its own by Xvfb; skipped, counted or failing as {@link WindowTest}. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(XvfbTestExtension.class)
public @interface XvfbTest {}
