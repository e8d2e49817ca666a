package orlop.editor;

import java.awt.HeadlessException;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;

/** The clipboard of the system; where there is none, or it is held by another program, one of our own. */
final class Clipboards {
    private String own = "";

    void put(String text) {
        own = text;
        try {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
        } catch (HeadlessException | IllegalStateException e) {
            own = text; // ours has it all the same
        }
    }

    String text() {
        try {
            Object data = Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
            return data instanceof String s ? s : own;
        } catch (HeadlessException | IllegalStateException | UnsupportedFlavorException | IOException e) {
            return own;
        }
    }
}
