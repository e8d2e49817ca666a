package orlop.editor;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.TransferHandler;
import orlop.drawing.Message;
import orlop.store.DrawingFile;

/** Opens the drawings that are dragged onto the window from outside. */
final class DroppedFiles extends TransferHandler {
    private static final long serialVersionUID = 1L;
    private final transient Consumer<Path> open;
    private final transient Consumer<Message> say;

    /** @param say tells what can't be opened */
    DroppedFiles(Consumer<Path> open, Consumer<Message> say) {
        this.open = open;
        this.say = say;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        try {
            List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            List<Path> all = files.stream()
                    .filter(f -> f instanceof File)
                    .map(f -> ((File) f).toPath())
                    .toList();
            List<Path> drawings = all.stream().filter(DroppedFiles::drawing).toList();
            if (drawings.size() < all.size()) {
                say.accept(Message.of(
                        "editor.say.no-drawing",
                        all.stream()
                                .filter(p -> !drawing(p))
                                .map(p -> String.valueOf(p.getFileName()))
                                .collect(Collectors.joining(", ")),
                        DrawingFile.SUFFIX));
            }
            drawings.forEach(p -> new EventThread().execute(() -> open.accept(p)));
            return !drawings.isEmpty();
        } catch (UnsupportedFlavorException | IOException e) {
            return false;
        }
    }

    private static boolean drawing(Path p) {
        return p.toString().toLowerCase(Locale.ROOT).endsWith(DrawingFile.SUFFIX);
    }
}
