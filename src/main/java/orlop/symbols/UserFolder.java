package orlop.symbols;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;

/** A person's own folder of symbols. Only plain files directly in it are read. */
final class UserFolder implements SymbolFolder {
    private final Path folder;

    UserFolder(Path folder) {
        this.folder = folder;
    }

    @Override
    public Set<String> drawings() throws SymbolRefusedException {
        Set<String> files = new TreeSet<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, "*.svg")) {
            for (Path entry : entries) {
                files.add(entry.getFileName().toString());
                if (files.size() > Limits.FILES) {
                    throw new Place(name(), 0).refuse(Refusal.TOO_MANY_FILES, Integer.toString(Limits.FILES));
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            throw unreadable(name(), e);
        }
        return files;
    }

    @Override
    public byte[] read(String file, int mostBytes) throws SymbolRefusedException {
        Path path = folder.resolve(file);
        if (file.equals(MANIFEST) && !Files.exists(path)) {
            throw new Place(MANIFEST, 0).refuse(Refusal.NO_MANIFEST, name());
        }
        // A pipe or a device would hang or never end.
        if (!Files.isRegularFile(path)) {
            throw new Place(file, 0).refuse(Refusal.UNREADABLE, "");
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(mostBytes + 1);
            if (bytes.length > mostBytes) {
                throw new Place(file, 0).refuse(Refusal.FILE_TOO_BIG, mostBytes / 1024 + " kB");
            }
            return bytes;
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    private String name() {
        Path last = folder.getFileName();
        return last == null ? folder.toString() : last.toString();
    }

    private static SymbolRefusedException unreadable(String file, Exception cause) {
        SymbolRefusedException refused =
                new Place(file, 0).refuse(Refusal.UNREADABLE, cause.getClass().getSimpleName());
        refused.initCause(cause);
        return refused;
    }
}
