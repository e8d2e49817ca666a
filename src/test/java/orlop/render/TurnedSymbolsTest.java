package orlop.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import orlop.scene.Ink;
import orlop.scene.Palette;
import orlop.symbols.Bounds;
import orlop.symbols.Symbol;
import orlop.symbols.SymbolLibrary;
import orlop.symbols.Turn;
import orlop.testing.Dots;

/**
 * All symbols in all eight ways, as every backend draws them. The sheets stand in {@code target/gallery/} for a draughtsman
 * to look at.
 */
class TurnedSymbolsTest {
    private static final int ROWS = 12;
    /** Share of the dots; measured: none. A letter that lies on its side is more than a hundred
     * times as much. */
    private static final double LIMIT = 0.000_005;

    private static final Path FILES = Path.of("symbols");

    @TempDir
    private Path folder;

    static Stream<Integer> pages() {
        return Stream.iterate(0, i -> i * ROWS < SymbolLibrary.bundled().all().size(), i -> i + 1);
    }

    private static TurnedSheet page(SymbolLibrary library, int page) {
        List<Symbol> all = new ArrayList<>(library.all());
        all.sort(Comparator.comparingDouble(TurnedSheet::reachMm));
        return new TurnedSheet(library, all.subList(page * ROWS, Math.min((page + 1) * ROWS, all.size())));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void screen_svg_and_pdf_show_what_the_files_say(int page) throws Exception {
        TurnedSheet sheet = page(SymbolLibrary.bundled(), page);
        BufferedImage files = sheet.shown(SymbolFiles.sheet(sheet, FILES, Palette.LIGHT.rgb(Ink.INK)));
        Path gallery = Files.createDirectories(Path.of("target", "gallery"));
        ImageIO.write(
                sheet.raster(true),
                "png",
                gallery.resolve("symbols-turned-" + page + ".png").toFile());
        BufferedImage svg = sheet.shown(sheet.svg());
        ImageIO.write(
                svg,
                "png",
                gallery.resolve("symbols-turned-svg-" + page + ".png").toFile());

        assertThat(Dots.differing(files, sheet.raster(false))).as("Graphics2D").isLessThan(LIMIT);
        assertThat(Dots.differing(files, svg)).as("SVG").isLessThan(LIMIT);
        assertThat(Dots.differing(files, sheet.pdf())).as("PDF").isLessThan(LIMIT);
    }

    /** The same files without the word: what the pictures would be if a letter were turned like the rest. */
    @Test
    void a_letter_that_is_turned_is_seen_to_differ() throws Exception {
        for (String file : List.of("motor-dc.svg", "meter-current.svg")) {
            String text = Files.readString(FILES.resolve(file));
            Files.writeString(folder.resolve(file), text.replace("id=\"upright", "id=\"turning"));
        }
        Files.writeString(folder.resolve("manifest.json"), """
                {"symbols": [
                {"name": "motor-dc", "file": "motor-dc.svg", "kind": "motor", "terminals": {"1": [0, -5, "up"]},
                 "texts": [{"side": "right", "at": [6, 0]}]},
                {"name": "meter-current", "file": "meter-current.svg", "kind": "meter",
                 "terminals": {"1": [0, -5, "up"], "2": [0, 5, "down"]}, "texts": [{"side": "right", "at": [5, 0]}]}]}""");
        SymbolLibrary library =
                SymbolLibrary.bundled().withFolder(folder, Map.of("motor", Set.of("1"), "meter", Set.of("1", "2")));

        for (String name : List.of("motor-dc", "meter-current")) {
            TurnedSheet sheet =
                    new TurnedSheet(library, List.of(library.named(name).orElseThrow()));
            BufferedImage files = sheet.shown(SymbolFiles.sheet(sheet, FILES, Palette.LIGHT.rgb(Ink.INK)));
            assertThat(Dots.differing(files, sheet.raster(false))).isGreaterThan(20 * LIMIT);
            assertThat(Dots.differing(files, sheet.shown(sheet.svg()))).isGreaterThan(20 * LIMIT);
            assertThat(Dots.differing(files, sheet.pdf())).isGreaterThan(20 * LIMIT);
        }
    }

    /**
     * Every dark dot lies within what is reckoned as ink, but for a quarter of a millimetre: the tip of an arrow stands out by
     * 0.15 mm, since half the width of a line is counted at its corners, and a dot is 0.17 mm wide.
     */
    @ParameterizedTest
    @MethodSource("pages")
    void no_ink_leaves_the_bounds_that_are_reckoned(int page) throws Exception {
        TurnedSheet sheet = page(SymbolLibrary.bundled(), page);
        BufferedImage raster = sheet.raster(false);
        for (int row = 0; row < sheet.names().size(); row++) {
            Symbol symbol =
                    SymbolLibrary.bundled().named(sheet.names().get(row)).orElseThrow();
            for (int column = 0; column < TurnedSheet.turns().size(); column++) {
                Turn turn = TurnedSheet.turns().get(column);
                Bounds ink = sheet.ink(raster, row, column);
                assertThat(symbol.bounds(turn).contains(ink, 0.25))
                        .as(symbol.name() + " " + turn + " " + ink)
                        .isTrue();
            }
        }
    }

    @Test
    void a_turned_letter_has_a_definition_of_its_own_only_where_it_is_used() throws Exception {
        Symbol motor = SymbolLibrary.bundled().named("motor-dc").orElseThrow();
        Symbol fuse = SymbolLibrary.bundled().named("fuse").orElseThrow();
        TurnedSheet sheet = new TurnedSheet(SymbolLibrary.bundled(), List.of(motor, fuse));
        byte[] svg = sheet.svg();
        List<String> ids = new ArrayList<>();
        Map<String, String> uses = new HashMap<>();
        Element root = DrawnSheet.parse(svg).getDocumentElement();
        DrawnSheet.elements(root, "symbol").forEach(s -> ids.add(s.getAttribute("id")));
        DrawnSheet.elements(root, "use")
                .forEach(u -> uses.merge(u.getAttribute("xlink:href"), u.getAttribute("transform"), (a, b) -> a + b));

        assertThat(ids)
                .containsExactly(
                        "symbol-motor-dc",
                        "symbol90-motor-dc",
                        "symbol180-motor-dc",
                        "symbol270-motor-dc",
                        "symbol0m-motor-dc",
                        "symbol90m-motor-dc",
                        "symbol180m-motor-dc",
                        "symbol270m-motor-dc",
                        "symbol-fuse");
        assertThat(uses).hasSize(ids.size());
        assertThat(uses.get("#symbol90m-motor-dc")).startsWith("translate(").doesNotContain("rotate", "scale");
        assertThat(uses.get("#symbol-fuse")).contains("rotate(270) scale(-1 1)");
        assertThat(sheet.svg()).isEqualTo(svg);
        assertThat(new TurnedSheet(SymbolLibrary.bundled(), List.of(fuse)).svg())
                .isNotEqualTo(svg);
    }
}
