package orlop.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Where a command's result goes: a file that was asked for, or the screen. */
final class Output {
    private Output() {}

    /** Writes a text to {@code file}, or to {@code screen} if there is none. */
    static void text(String text, @Nullable Path file, PrintWriter screen) throws UserError {
        if (file == null) {
            screen.print(text);
            screen.flush();
        } else {
            bytes(text.getBytes(StandardCharsets.UTF_8), file);
        }
    }

    /** Writes bytes to a file. */
    static void bytes(byte[] bytes, Path file) throws UserError {
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file) || folder == null || !Files.isDirectory(folder)) {
            throw new UserError("cli.no-folder", file.toString());
        }
        try {
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UserError("cli.cannot-write", file.toString());
        }
    }
}
