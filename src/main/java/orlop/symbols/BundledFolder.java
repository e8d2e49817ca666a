package orlop.symbols;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;

/** The program's own symbols on the class path, whose list the build writes, for a jar can't be listed. */
final class BundledFolder implements SymbolFolder {
    private static final String FOLDER = "/symbols/";
    private static final String INDEX = "index.txt";

    @Override
    public Set<String> drawings() {
        Set<String> files = new LinkedHashSet<>();
        String index = new String(read(INDEX, Limits.MANIFEST_BYTES), StandardCharsets.UTF_8);
        index.lines().filter(line -> line.endsWith(".svg")).forEach(files::add);
        return files;
    }

    @Override
    public byte[] read(String file, int mostBytes) {
        try (InputStream in = SymbolLibrary.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new FileNotFoundException("missing on the class path: " + FOLDER + file);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
