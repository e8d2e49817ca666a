package planted.layout;

/** Planted violations, one a method. */
public final class StartsThread {
    static Thread thread() {
        return new Thread(StartsThread::thread);
    }

    static Thread ofOwnKind() {
        return new Thread("planted") {};
    }

    static void start(Thread thread) {
        thread.start();
    }
}
