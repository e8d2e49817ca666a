package orlop.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.desk.OpenFile;
import orlop.drawing.Drawing;

/** No other windows; what would be opened in one is remembered. */
final class NoDesks implements Desks {
    final List<Drawing> opened = new ArrayList<>();
    final List<String> asked = new ArrayList<>();

    @Override
    public boolean show(Path file) {
        return false;
    }

    @Override
    public void open(Drawing drawing, @Nullable OpenFile file) {
        opened.add(drawing);
    }

    @Override
    public void quit() {
        asked.add("quit");
    }
}
