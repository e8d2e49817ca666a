package orlop.editor;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.util.List;

/** Files on their way from another program, as it hands them over. */
final class DraggedFiles implements Transferable {
    private final List<File> files;

    DraggedFiles(List<File> files) {
        this.files = files;
    }

    DraggedFiles(String... names) {
        this(List.of(names).stream().map(File::new).toList());
    }

    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {DataFlavor.javaFileListFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
        return flavor.equals(DataFlavor.javaFileListFlavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) {
        return files;
    }
}
