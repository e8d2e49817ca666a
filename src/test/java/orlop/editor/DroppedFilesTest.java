package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Message;

/** Files dropped on a window. */
@Timeout(30)
class DroppedFilesTest {
    private final List<Path> opened = new ArrayList<>();
    private final List<Message> said = new ArrayList<>();
    private final DroppedFiles handler = new DroppedFiles(opened::add, said::add);

    private boolean drop(Transferable what) throws Exception {
        boolean taken = handler.importData(new TransferHandler.TransferSupport(new JPanel(), what));
        HeadlessBench.onUi(() -> {}); // they are opened a moment later
        return taken;
    }

    @Test
    void drawings_are_opened_whatever_the_letters_of_their_ending() throws Exception {
        assertThat(drop(new DraggedFiles("/tmp/a.orlop", "/tmp/B.ORLOP"))).isTrue();
        assertThat(opened).containsExactly(Path.of("/tmp/a.orlop"), Path.of("/tmp/B.ORLOP"));
        assertThat(said).isEmpty();
    }

    @Test
    void what_is_no_drawing_is_named_and_the_others_are_opened() throws Exception {
        assertThat(drop(new DraggedFiles("/tmp/photo.png", "/tmp/a.orlop"))).isTrue();
        assertThat(opened).containsExactly(Path.of("/tmp/a.orlop"));
        assertThat(Texts.of(said.get(0))).contains("photo.png").doesNotContain("a.orlop");

        assertThat(drop(new DraggedFiles("/tmp/letter.txt"))).isFalse();
        assertThat(said).hasSize(2);
    }

    @Test
    void text_is_not_taken() throws Exception {
        assertThat(drop(new StringSelection("a.orlop"))).isFalse();
        assertThat(opened).isEmpty();
    }
}
