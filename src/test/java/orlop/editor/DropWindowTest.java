package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.TransferHandler;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import orlop.drawing.Drawing;
import orlop.store.DrawingFile;
import orlop.testing.WindowTest;

/** A file that is dragged out of another window by the mouse and let go over the sheet, in real windows. */
@WindowTest
class DropWindowTest extends InWindow {
    @TempDir
    Path folder;

    DropWindowTest() {
        super(TestBoat.drawing());
    }

    /** A window with a list of files that can be dragged, as the file manager of a system has it. */
    private static final class Dragged extends TransferHandler {
        private static final long serialVersionUID = 1L;
        private final transient List<File> files;

        Dragged(Path file) {
            files = List.of(file.toFile());
        }

        @Override
        public int getSourceActions(JComponent c) {
            return COPY;
        }

        @Override
        protected Transferable createTransferable(JComponent c) {
            return new DraggedFiles(files);
        }
    }

    private JFrame files(Path file) {
        return GuiActionRunner.execute(() -> {
            JList<String> list = new JList<>(new String[] {String.valueOf(file.getFileName())});
            list.setName("files");
            list.setDragEnabled(true);
            list.setSelectedIndex(0);
            list.setTransferHandler(new Dragged(file));
            JFrame frame = new JFrame("files");
            frame.add(list);
            frame.setBounds(700, 500, 200, 120);
            frame.setAlwaysOnTop(true);
            frame.setVisible(true);
            return frame;
        });
    }

    private void drag(JFrame from) {
        JComponent list = (JComponent) from.getContentPane().getComponent(0);
        on.until("the files are there", list::isShowing);
        on.robot().pressMouse(list, new Point(20, 8), MouseButton.LEFT_BUTTON);
        for (int i = 1; i <= 4; i++) {
            on.robot().moveMouse(list, new Point(20 + 8 * i, 8));
        }
        for (int i = 0; i < 6; i++) { // the system asks the window below at each step whether it takes it
            on.robot().moveMouse(on.canvas(), new Point(200 + 10 * i, 200));
        }
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);
    }

    @Test
    void a_drawing_is_opened() throws Exception {
        Path file = folder.resolve("boat with spaces.orlop");
        Drawing other = start.withCables(start.cables().without("W16"));
        DrawingFile.save(file, other);
        JFrame from = files(file);
        try {
            drag(from);

            on.until("the drawing is open", () -> file.equals(on.state().file()));
            assertThat(on.drawing().cables().contains("W16")).isFalse();
        } finally {
            GuiActionRunner.execute(from::dispose);
        }
    }

    @Test
    void what_is_no_drawing_is_named_and_nothing_changes() {
        JFrame from = files(folder.resolve("list.txt"));
        try {
            drag(from);

            on.until("it is said", () -> on.state().notice() != null);
            assertThat(Texts.of(java.util.Objects.requireNonNull(on.state().notice())))
                    .contains("list.txt");
            assertThat(on.drawing()).isSameAs(start);
        } finally {
            GuiActionRunner.execute(from::dispose);
        }
    }
}
