package orlop.symbols;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import orlop.drawing.Kind;

/** The symbols of a person before those of the program. */
public final class UserSymbols {
    private UserSymbols() {}

    /**
     * The library with the symbols of this folder before our own.
     *
     * @throws SymbolRefusedException for the first thing in the folder that isn't taken; then nothing of it is
     */
    public static SymbolLibrary of(Path folder) throws SymbolRefusedException {
        Map<String, Set<String>> terminals = new LinkedHashMap<>();
        for (Kind kind : Kind.values()) {
            terminals.put(kind.word(), new TreeSet<>(kind.defaults().terminals()));
        }
        return SymbolLibrary.bundled().withFolder(folder, terminals);
    }

    /** As {@link #of}, but a folder that isn't there is one without symbols. */
    public static SymbolLibrary ifThere(Path folder) throws SymbolRefusedException {
        return Files.isDirectory(folder) ? of(folder) : SymbolLibrary.bundled();
    }
}
