package planted.layout;

/** A planted violation. */
public final class StartsThread {
    static Thread thread() {
        return new Thread(StartsThread::thread);
    }
}
