package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.Timer;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;

/**
 * The blink of an eye after an edit in which the fresh figures mostly come. So long the sheet, its notes and the conditions
 * stay as they are: a picture of the drawing before with the figures that belong to it. Only if it takes longer, the
 * drawing is shown as it is now, with the old figures in grey.
 *
 * <p>On the event thread. It hears of a change before those that ask it.
 */
final class Blink implements SessionListener {
    /** Less than two pictures of a screen that shows 60 a second. */
    static final int LONGEST_MS = 25;

    /** In a large drawing: what the window would make meanwhile, without the figures, would keep it for longer. */
    static final int LONGEST_OF_LARGE_MS = 120;

    /** So many times it is waited for as long again, if the picture is nearly there. */
    private static final int MOST_MORE = 4;

    private final Session session;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Clock clock;
    private Predicate<Drawing> coming = d -> false;
    private boolean waits;
    private int more;

    /** Rings once, some time after it was started last. */
    interface Clock {
        void start(int ms);

        void stop();
    }

    Blink(Session session) {
        this(session, Blink::timer);
    }

    /** @param clock makes the clock that ends a blink, of what it does when it rings */
    Blink(Session session, Function<Runnable, Clock> clock) {
        this.session = session;
        this.clock = clock.apply(this::rung);
        session.listen(this);
    }

    private static Clock timer(Runnable ring) {
        Timer timer = new Timer(LONGEST_MS, e -> ring.run());
        timer.setRepeats(false);
        return new Clock() {
            @Override
            public void start(int ms) {
                timer.setInitialDelay(ms);
                timer.restart();
            }

            @Override
            public void stop() {
                timer.stop();
            }
        };
    }

    /** @param listener told when the blink is over and the figures have not come */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** @param asked whether the picture of this drawing is nearly made, and worth being waited for a while longer */
    void coming(Predicate<Drawing> asked) {
        coming = asked;
    }

    private void rung() {
        if (waits && more < MOST_MORE && coming.test(session.state().drawing())) {
            more++;
            clock.start(LONGEST_OF_LARGE_MS);
        } else {
            end();
        }
    }

    /** Whether fresh figures are about to come, and the window stays as it is until then. */
    boolean waits() {
        return waits;
    }

    /** The drawing is to be shown as it is, even if its figures are old. */
    void end() {
        clock.stop();
        if (waits) {
            waits = false;
            if (!session.state().fresh()) {
                listeners.forEach(Runnable::run);
            }
        }
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // another drawing is another object
    public void changed(SessionState before, SessionState after) {
        boolean edited = before.drawing() != after.drawing();
        boolean looksTheSame = before.sheet().equals(after.sheet())
                && before.condition().equals(after.condition())
                && before.preview() == after.preview();
        if (after.fresh() || after.review() == null || !looksTheSame) {
            clock.stop();
            waits = false;
        } else if (edited && before.fresh()) {
            waits = true;
            more = 0;
            boolean large = ShownScene.large(after.drawing());
            clock.start(large ? LONGEST_OF_LARGE_MS : LONGEST_MS);
        }
    }
}
