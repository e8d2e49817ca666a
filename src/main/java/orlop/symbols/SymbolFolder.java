package orlop.symbols;

import java.util.Set;

/** A place that holds symbol files and their manifest. */
interface SymbolFolder {
    String MANIFEST = "manifest.json";

    /** Names of the drawings in it, sorted. */
    Set<String> drawings() throws SymbolRefusedException;

    /** All bytes of a file, refused when there are more than {@code mostBytes} or it can't be read. */
    byte[] read(String file, int mostBytes) throws SymbolRefusedException;
}
