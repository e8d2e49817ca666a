package orlop.symbols;

import java.util.List;
import java.util.Map;

/** One entry of a manifest, as it stands there; the parts as in {@link Symbol}. */
record ManifestEntry(
        String name,
        String file,
        String kind,
        List<String> variants,
        String state,
        Map<String, Terminal> terminals,
        List<TextPlace> textPlaces,
        String standard,
        String provenance,
        String titleKey) {

    Symbol with(SvgDrawing drawing) {
        return new Symbol(
                name,
                kind,
                variants,
                state,
                drawing.outlines(),
                drawing.extent(),
                terminals,
                textPlaces,
                standard,
                provenance,
                titleKey);
    }
}
