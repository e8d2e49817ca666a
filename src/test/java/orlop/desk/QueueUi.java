package orlop.desk;

import java.util.ArrayDeque;
import java.util.Queue;

/** A window's thread for tests: what is handed to it waits until the test lets it run. */
public final class QueueUi implements UiThread {
    private final Thread mine = Thread.currentThread();
    private final Queue<Runnable> waiting = new ArrayDeque<>();

    @Override
    public boolean isCurrent() {
        return Thread.currentThread() == mine;
    }

    @Override
    public synchronized void execute(Runnable task) {
        waiting.add(task);
    }

    /** Runs what waits, and what that brings about. */
    public int runAll() {
        int n = 0;
        for (Runnable r = next(); r != null; r = next()) {
            r.run();
            n++;
        }
        return n;
    }

    private synchronized Runnable next() {
        return waiting.poll();
    }
}
