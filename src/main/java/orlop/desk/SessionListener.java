package orlop.desk;

/** Told of every change of a session, on the session's own thread. */
@FunctionalInterface
public interface SessionListener {
    /** A listener compares the parts that it shows by {@code ==}. */
    void changed(SessionState before, SessionState after);
}
