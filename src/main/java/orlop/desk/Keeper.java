package orlop.desk;

import java.nio.file.Path;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.store.FileProblem;
import orlop.store.Journal;

/**
 * Sees to it that a crash loses no more than the last second: whatever is not saved goes into the journal soon after it
 * was changed. While that can't be done it is tried again and again.
 *
 * <p>The first change after a rest is written {@value #AFTER_MS} ms later, with all that came in between: a drag makes
 * one writing, and steady work some six a second.
 */
public final class Keeper {
    static final int AFTER_MS = 150;
    /** How long it waits before it tries once more what could not be written. */
    private static final int AGAIN_MS = 2000;

    /** What is to be written next; drawing and file belong together. */
    private record Work(Drawing drawing, @Nullable Path file) {}

    private final Session session;
    private final Journal journal;
    private final ScheduledExecutorService clock;
    private final UiThread ui;
    private @Nullable Work waiting;
    private @Nullable Future<?> next;
    private boolean failing;
    private boolean closed;
    private Consumer<Boolean> onKept = kept -> {};

    /**
     * Begins to keep what a session does. On the session's thread.
     *
     * @param clock writes in the background, one thing after the other
     */
    public Keeper(Session session, Journal journal, ScheduledExecutorService clock, UiThread ui) {
        this.session = session;
        this.journal = journal;
        this.clock = clock;
        this.ui = ui;
        session.listen(this::changed);
        if (session.state().dirty()) {
            keep(session.state());
        }
    }

    /** @param told on the session's thread: no when the journal can't be written, yes when it can again */
    public void onKept(Consumer<Boolean> told) {
        onKept = told;
    }

    @SuppressWarnings("ReferenceEquality") // another drawing is another object
    private void changed(SessionState before, SessionState after) {
        boolean another = before.drawing() != after.drawing() || before.file() != after.file();
        if (after.dirty() && (another || !before.dirty())) {
            keep(after);
        } else if (!after.dirty() && before.dirty()) {
            rest();
        }
    }

    private void keep(SessionState s) {
        synchronized (this) {
            boolean asleep = waiting == null;
            waiting = new Work(s.drawing(), s.file());
            if (asleep && !closed) {
                next = clock.schedule(this::write, AFTER_MS, TimeUnit.MILLISECONDS);
            }
        }
    }

    /** Saved, or back at what is saved. */
    private void rest() {
        synchronized (this) {
            waiting = null;
        }
        clock.execute(() -> {
            synchronized (this) {
                if (waiting == null) {
                    journal.clear();
                }
            }
        });
    }

    private void write() {
        Work work;
        synchronized (this) {
            work = waiting;
            waiting = null;
        }
        if (work == null) {
            return;
        }
        try {
            journal.write(work.drawing(), work.file());
            ui.execute(this::well);
        } catch (FileProblem e) {
            again(work);
            ui.execute(() -> tell(e));
        }
    }

    /** A disk that is full now may have room in a while, even if nothing is drawn meanwhile. */
    private synchronized void again(Work work) {
        if (waiting == null && !closed) {
            waiting = work;
            next = clock.schedule(this::write, AGAIN_MS, TimeUnit.MILLISECONDS);
        }
    }

    /** Said once: somebody whose disk is full needn't hear it six times a second. */
    private void tell(FileProblem e) {
        if (!failing) {
            failing = true;
            session.say(Message.of("desk.no-journal", e.reason()));
            onKept.accept(false);
        }
    }

    private void well() {
        if (failing) {
            failing = false;
            session.say(Message.of("desk.journal-again"));
            onKept.accept(true);
        }
    }

    /** Writes at once what is not saved. Any thread; used when the program is about to fall. */
    public void writeNow() {
        write();
    }

    /** Writes nothing more; the journal is closed. On the session's thread. */
    public void close() {
        synchronized (this) {
            closed = true;
            waiting = null;
            if (next != null) {
                next.cancel(false);
            }
        }
        journal.close();
    }
}
