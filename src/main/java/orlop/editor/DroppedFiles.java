package orlop.editor;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.TransferHandler;
import orlop.store.DrawingFile;

/** Opens the drawings that are dragged onto the window from outside. */
final class DroppedFiles extends TransferHandler {
    private static final long serialVersionUID = 1L;
    private final transient Consumer<Path> open;

    DroppedFiles(Consumer<Path> open) {
        this.open = open;
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
            List<Path> drawings = files.stream()
                    .filter(f -> f instanceof File)
                    .map(f -> ((File) f).toPath())
                    .filter(p -> p.toString().toLowerCase(Locale.ROOT).endsWith(DrawingFile.SUFFIX))
                    .toList();
            drawings.forEach(p -> new EventThread().execute(() -> open.accept(p)));
            return !drawings.isEmpty();
        } catch (UnsupportedFlavorException | IOException e) {
            return false;
        }
    }
}
