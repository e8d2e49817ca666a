package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.symbols.SymbolLibrary;

class PlacingTest {
    @TempDir
    private Path folder;

    /** A word 9 mm wide and 1 mm high, 10 mm above the origin, over a stem 1 mm wide: both filled, so without a pen. */
    private SymbolLibrary library() throws Exception {
        Files.writeString(folder.resolve("lamp.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="-15 -15 30 30">
                <rect x="-.5" y="-5" width="1" height="5"/>
                <g id="upright"><rect x="-4.5" y="-10.5" width="9" height="1"/></g></svg>""");
        Files.writeString(folder.resolve("manifest.json"), """
                {"symbols": [{"name": "lamp", "file": "lamp.svg", "kind": "lighting", "terminals": {"1": [0, 0, "down"]},
                 "texts": [{"side": "right", "at": [5, 0]}]}]}""");
        return SymbolLibrary.bundled().withFolder(folder, Map.of("lighting", Set.of("1")));
    }

    private static Rect ink(SymbolLibrary library, int degree, boolean mirrored) {
        Place at = Place.at("1", 100, 100).withRotationDegree(degree).withMirrored(mirrored);
        Drawing d = Drawing.empty("x")
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(Sheet.of("1", ""))
                .with(Component.of("E1", Kind.LIGHTING, at, List.of("24")));
        return new Placing(library).place(d, "1", null).get(0).ink();
    }

    @Test
    void the_ink_of_a_turned_symbol_reaches_around_a_wide_sign_that_stays_upright() throws Exception {
        SymbolLibrary library = library();

        assertThat(ink(library, 0, false)).isEqualTo(new Rect(95.5, 89.5, 104.5, 100));
        // The middle of the sign is 10 mm to the right of the origin now, the sign still 9 mm wide.
        assertThat(ink(library, 90, false)).isEqualTo(new Rect(100, 99.5, 114.5, 100.5));
        assertThat(ink(library, 180, false)).isEqualTo(new Rect(95.5, 100, 104.5, 110.5));
        assertThat(ink(library, 270, true)).isEqualTo(new Rect(85.5, 99.5, 100, 100.5));
    }
}
