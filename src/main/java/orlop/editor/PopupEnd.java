package orlop.editor;

import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/** Told when a popup goes away, however that came about. */
record PopupEnd(Runnable body) implements PopupMenuListener {
    @Override
    public void popupMenuWillBecomeVisible(PopupMenuEvent e) {}

    @Override
    public void popupMenuWillBecomeInvisible(PopupMenuEvent e) {
        body.run();
    }

    @Override
    public void popupMenuCanceled(PopupMenuEvent e) {
        body.run();
    }
}
