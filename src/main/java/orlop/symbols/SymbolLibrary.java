package orlop.symbols;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The symbols at hand: the program's own, and a person's. Immutable; safe for use by many threads. */
public final class SymbolLibrary {
    private final Map<String, Symbol> byName;

    private SymbolLibrary(List<Symbol> symbols) {
        Map<String, Symbol> map = new LinkedHashMap<>();
        // The first of a name stands: a person's symbols come before the program's.
        symbols.forEach(symbol -> map.putIfAbsent(symbol.name(), symbol));
        byName = map;
    }

    /**
     * The program's own symbols, read once from the class path.
     *
     * @throws IllegalStateException if the program was built wrongly
     */
    public static SymbolLibrary bundled() {
        return Bundled.LIBRARY;
    }

    /**
     * This library with a person's symbols before it: one of the same name replaces ours, the others are added.
     *
     * @param folder holds {@code manifest.json} and the SVG files that it names
     * @param terminalsOfKind the terminals that a symbol of a kind must place, for every kind there is
     * @throws SymbolRefusedException for the first thing in the folder that isn't taken; then nothing of it is
     */
    public SymbolLibrary withFolder(Path folder, Map<String, Set<String>> terminalsOfKind)
            throws SymbolRefusedException {
        List<Symbol> symbols = new ArrayList<>(SymbolLoader.load(new UserFolder(folder)));
        SymbolLoader.checkTerminals(symbols, terminalsOfKind);
        symbols.addAll(byName.values());
        return new SymbolLibrary(symbols);
    }

    /** All symbols: a person's first, each in the order of its manifest. */
    public List<Symbol> all() {
        return List.copyOf(byName.values());
    }

    /** The symbol of that name, if there is one. */
    public Optional<Symbol> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** The symbol for a kind as a catalogue shows it: the first that the manifest lists. */
    public Optional<Symbol> find(String kind) {
        return find(kind, "", "");
    }

    /**
     * The symbol that fits best: of the kind; then of the variant, or else its plain form, or else any; then in the state.
     * The first listed wins where several fit alike.
     *
     * @param variant the form wanted ({@code ac3}, {@code isolating} …); empty: the plain one
     * @param state the state wanted ({@code open}, {@code closed}, a position); empty: the first listed
     * @return empty only if there is no symbol of the kind
     */
    public Optional<Symbol> find(String kind, String variant, String state) {
        return byName.values().stream()
                .filter(symbol -> symbol.kind().equals(kind))
                .min(Comparator.comparingInt((Symbol symbol) -> misfit(symbol, variant))
                        .thenComparingInt(symbol -> symbol.state().equals(state) ? 0 : 1));
    }

    private static int misfit(Symbol symbol, String variant) {
        if (symbol.variants().contains(variant)) {
            return 0;
        }
        return symbol.variants().isEmpty() ? 1 : 2;
    }

    /** Reads the program's own symbols on first use. */
    private static final class Bundled {
        static final SymbolLibrary LIBRARY = read();

        private static SymbolLibrary read() {
            try {
                return new SymbolLibrary(SymbolLoader.load(new BundledFolder()));
            } catch (SymbolRefusedException e) {
                throw new IllegalStateException("the program's own symbols are broken: " + e.getMessage(), e);
            }
        }
    }
}
