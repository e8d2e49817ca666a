package orlop.editor;

import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.SwingUtilities;
import orlop.drawing.Edits;

/** A window with an unsaved edit in it, made to be killed. */
final class WindowThatIsKilled {
    static final String NAME = "renamed before the kill";

    private WindowThatIsKilled() {}

    /** @param args the file of the settings, and a file that is made when there is something to lose */
    public static void main(String[] args) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            MainWindow w = EditorApp.window(TestBoat.drawing(), null, new Settings(Path.of(args[0])));
            w.show();
            var session = w.bench().canvas().session();
            session.apply(Edits.change(
                    session.state().drawing().components().require("MA2").withName(NAME)));
        });
        Thread.sleep(2_500); // the journal promises a second
        Files.createFile(Path.of(args[1]));
        Thread.sleep(60_000); // should nobody kill it, it ends by itself
        System.exit(1);
    }
}
