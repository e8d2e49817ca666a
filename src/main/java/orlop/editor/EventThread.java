package orlop.editor;

import javax.swing.SwingUtilities;
import orlop.desk.UiThread;

/** The event dispatch thread, as the desk sees it. */
final class EventThread implements UiThread {
    @Override
    public boolean isCurrent() {
        return SwingUtilities.isEventDispatchThread();
    }

    @Override
    public void execute(Runnable task) {
        SwingUtilities.invokeLater(task);
    }
}
