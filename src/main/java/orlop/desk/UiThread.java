package orlop.desk;

import java.util.concurrent.Executor;

/** The one thread on which a session lives: that of the window in the program, a queue in tests. */
public interface UiThread extends Executor {
    /** Whether the caller is on that thread. */
    boolean isCurrent();
}
