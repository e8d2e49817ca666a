package orlop.editor;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.WindowConstants;
import orlop.desk.Session;
import orlop.drawing.Message;

/** The frame around a {@link Workbench}. */
final class MainWindow {
    private static final int MOST_ASIDE = 12;

    private final JFrame frame = new JFrame();
    private final Session session;
    private final Workbench bench;

    /** @param onGone told when the window is gone */
    MainWindow(Session session, Settings settings, Desks desks, Consumer<MainWindow> onGone) {
        this.session = session;
        frame.setName("orlop");
        bench = new Workbench(
                session,
                new SwingPrompts(frame),
                settings,
                desks,
                MainWindow::apart,
                Menus.menuKey(),
                this::retitle,
                () -> {
                    session.close();
                    frame.dispose();
                    onGone.accept(this);
                });
        frame.setJMenuBar(Menus.bar(bench.commands(), settings::recent, bench.files()::open, bench.locker()::take));
        frame.setContentPane(bench.panel());
        frame.setTransferHandler(
                new DroppedFiles(bench.files()::open, bench.canvas().session()::say));
        frame.setIconImages(AppIcon.images());
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent e) {
                bench.files().close();
            }

            @Override
            public void windowActivated(WindowEvent e) {
                bench.catchUp();
                new EventThread().execute(bench.files()::lookOutside);
            }
        });
        session.listen((before, after) -> {
            if (before.dirty() != after.dirty() || before.file() != after.file()) {
                retitle();
            }
        });
        retitle();
    }

    /** On a thread that keeps the program alive until it is done, even when its windows are closed. */
    private static void apart(Runnable task) {
        new Thread(task, "orlop-export").start();
    }

    private void retitle() {
        frame.setTitle(bench.title());
        frame.getRootPane()
                .putClientProperty("Window.documentModified", session.state().dirty());
    }

    void show() {
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setMinimumSize(new Dimension(Math.min(860, screen.width), Math.min(520, screen.height)));
        frame.setSize(begin(1440, screen.width), begin(900, screen.height));
        frame.setLocationRelativeTo(null);
        aside(screen);
        frame.setVisible(true);
        bench.canvas().requestFocusInWindow();
        // Some window managers leave the keys with the window in which something was typed last.
        EventQueue.invokeLater(() -> {
            if (frame.isShowing() && !frame.isActive()) {
                toFront();
            }
        });
    }

    /**
     * Not right over a window that lies there already: one sees that there are two. It stays on the screen, smaller if
     * need be: a window manager would push back what hangs over the rim, and would not say so.
     */
    private void aside(Rectangle screen) {
        int step = Look.px(28);
        Dimension least = frame.getMinimumSize();
        for (int i = 0; i < MOST_ASIDE && taken(frame.getLocation()); i++) {
            Rectangle next = frame.getBounds();
            next.translate(step, step);
            Rectangle room = next.intersection(screen);
            if (room.width < least.width || room.height < least.height) {
                return;
            }
            frame.setBounds(room);
        }
    }

    private boolean taken(Point at) {
        return Stream.of(Frame.getFrames())
                .anyMatch(f -> f != frame && f.isShowing() && f.getLocation().distance(at) < Look.px(14));
    }

    /** At first a window has a size in which one can work, and two thirds of a large screen. */
    private static int begin(int usual, int screen) {
        return Math.min(Math.max(Look.px(usual), screen * 2 / 3), screen);
    }

    void toFront() {
        frame.setExtendedState(frame.getExtendedState() & ~Frame.ICONIFIED);
        frame.toFront();
        Component last = frame.getMostRecentFocusOwner();
        boolean within = last != null && last != frame && last.isShowing();
        (within ? last : bench.canvas()).requestFocus(); // a frame itself does nothing with a key
    }

    void tellThatItIsACopy(Path file) {
        session.say(Message.of("editor.say.copy", String.valueOf(file.getFileName())));
    }

    /** Whether what is not saved is in the journal: the title says so if it isn't. */
    void inJournal(boolean is) {
        bench.inJournal(is);
        retitle();
    }

    /** In the line at the foot. */
    void tell(Message m) {
        session.say(m);
    }

    JFrame frame() {
        return frame;
    }

    Workbench bench() {
        return bench;
    }
}
