package orlop.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Marks a test class that needs other programs that show SVG, {@code rsvg-convert} and {@code chromium}; its name must end in
 * {@code ViewerTest}. Skipped, counted or failing as {@link WindowTest}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsViewersExtension.class)
public @interface NeedsViewers {}
