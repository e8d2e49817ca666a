package orlop.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;

/** The text of a journal: one line about the file, then the drawing as a file holds it. */
final class JournalText {
    private static final int VERSION = 1;

    private JournalText() {}

    static byte[] of(Drawing drawing, @Nullable Path file) {
        JsonOut head = new JsonOut().open().key("journal").raw(Integer.toString(VERSION));
        if (file != null) {
            head.key("file").text(file.toAbsolutePath().toString());
        }
        byte[] first = (head.close() + "\n").getBytes(UTF_8);
        byte[] text = DrawingFile.write(drawing);
        byte[] all = Arrays.copyOf(first, first.length + text.length);
        System.arraycopy(text, 0, all, first.length, text.length);
        return all;
    }

    static LeftJournal.Content read(byte[] bytes, String name) throws FileProblem {
        int end = 0;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        Drawing drawing =
                DrawingFile.load(Arrays.copyOfRange(bytes, Math.min(end + 1, bytes.length), bytes.length), name);
        return new LeftJournal.Content(drawing, file(new String(bytes, 0, end, UTF_8)));
    }

    /** A first line that can't be read costs the name of the file and nothing else. */
    private static @Nullable Path file(String head) {
        try {
            JsonNode file = JsonTree.read(head.toCharArray()).path("file");
            return file.isTextual() ? Path.of(file.textValue()) : null;
        } catch (Trouble | InvalidPathException e) {
            return null;
        }
    }
}
