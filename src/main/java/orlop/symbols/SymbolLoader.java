package orlop.symbols;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Reads a whole folder: manifest and drawings, each checked against the other. */
final class SymbolLoader {
    private SymbolLoader() {}

    /** All symbols of a folder in the order of its manifest. */
    static List<Symbol> load(SymbolFolder folder) throws SymbolRefusedException {
        List<ManifestEntry> entries = Manifest.read(folder.read(SymbolFolder.MANIFEST, Limits.MANIFEST_BYTES));
        Set<String> unnamed = new TreeSet<>(folder.drawings());
        Set<String> present = Set.copyOf(unnamed);
        Set<String> names = new HashSet<>();
        List<Symbol> symbols = new ArrayList<>();
        for (ManifestEntry entry : entries) {
            Place manifest = new Place(SymbolFolder.MANIFEST, 0);
            if (!names.add(entry.name())) {
                throw manifest.refuse(Refusal.NAME_TWICE, entry.name());
            }
            if (!present.contains(entry.file())) {
                throw manifest.refuse(Refusal.NO_FILE, entry.file());
            }
            unnamed.remove(entry.file());
            symbols.add(symbol(entry, folder));
        }
        if (!unnamed.isEmpty()) {
            throw new Place(unnamed.iterator().next(), 0).refuse(Refusal.NO_ENTRY, "");
        }
        return symbols;
    }

    private static Symbol symbol(ManifestEntry entry, SymbolFolder folder) throws SymbolRefusedException {
        SvgDrawing drawing = SvgReader.read(entry.file(), folder.read(entry.file(), Limits.SVG_BYTES));
        for (Terminal terminal : entry.terminals().values()) {
            String detail = entry.name() + "." + terminal.id();
            if (!terminal.onGrid()) {
                throw new Place(SymbolFolder.MANIFEST, 0).refuse(Refusal.TERMINAL_OFF_GRID, detail);
            }
            Bounds point = new Bounds(terminal.xMm(), terminal.yMm(), terminal.xMm(), terminal.yMm());
            if (!drawing.viewBox().contains(point, 0)) {
                throw new Place(SymbolFolder.MANIFEST, 0).refuse(Refusal.TERMINAL_OUTSIDE, detail);
            }
        }
        return entry.with(drawing);
    }

    /** Refuses a symbol whose kind is unknown, or which leaves a terminal of its kind without a place. */
    static void checkTerminals(List<Symbol> symbols, Map<String, Set<String>> terminalsOfKind)
            throws SymbolRefusedException {
        Place manifest = new Place(SymbolFolder.MANIFEST, 0);
        for (Symbol symbol : symbols) {
            Set<String> wanted = terminalsOfKind.get(symbol.kind());
            if (wanted == null) {
                throw manifest.refuse(Refusal.UNKNOWN_KIND, symbol.name() + ": " + symbol.kind());
            }
            for (String id : wanted) {
                if (!symbol.terminals().containsKey(id)) {
                    throw manifest.refuse(Refusal.TERMINAL_MISSING, symbol.name() + "." + id);
                }
            }
        }
    }
}
