package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Sheet;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.symbols.SymbolLibrary;
import orlop.testing.Dots;
import orlop.testing.NeedsViewers;
import orlop.testing.Outcome;

/**
 * Two viewers that share no code, rsvg-convert and Chromium, show every sheet of the samples alike.
 *
 * <p>A dot differs where no dot within one of it in the other picture comes near in grey, looked
 * at both ways ({@link Dots}). Measured with librsvg 2.54 and Chromium 156
 * at 4 dots a millimetre: 0.00014 to 0.00068 of the dots over twelve sheets of four samples; the limit leaves half as
 * much again.
 */
@NeedsViewers
class SameInViewersViewerTest {
    private static final int DOTS_PER_MM = 4;
    private static final double LIMIT = 0.001;

    @TempDir
    private Path folder;

    static Stream<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sample-drawings"))) {
            return files.filter(f -> f.toString().endsWith(".orlop")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void two_viewers_show_every_sheet_alike(Path file) throws Exception {
        Opened opened = Opened.file(file, 0);
        SheetFiles files = new SheetFiles(opened, opened.study().governing(), SymbolLibrary.bundled());
        List<String> shares = new ArrayList<>();
        for (Sheet s : opened.drawing().sheets().values()) {
            for (Scene scene : files.pages(s)) {
                double share = share(scene, SvgExport.write(scene, Palette.LIGHT));
                System.out.printf("%s, sheet %s: %.6f of the dots differ%n", file.getFileName(), scene.sheet(), share);
                shares.add(scene.sheet());
                assertThat(share).as(file + ", sheet " + scene.sheet()).isLessThan(LIMIT);
            }
        }
        assertThat(shares).isNotEmpty();
    }

    /** Components with letters and signs in all eight ways: each way is a symbol of its own in the file. */
    @Test
    void two_viewers_show_turned_letters_alike() throws Exception {
        List<String> components = new ArrayList<>();
        List<String> kinds = List.of("motor", "generator", "meter", "insulation-monitor", "neutral-earth-link");
        for (int row = 0; row < kinds.size(); row++) {
            for (int i = 0; i < 8; i++) {
                components.add("""
                        {"id": "%s%d", "kind": "%s", "sheet": "1", "at": [%d, %d], "rotationDegree": %d, "mirrored": %b,
                         "system": "230"}""".formatted(
                                "ABCDE".charAt(row), i, kinds.get(row), 40 + 35 * i, 35 + 35 * row, i % 4 * 90, i > 3));
            }
        }
        Path file = Files.writeString(folder.resolve("turned.orlop"), """
                {"orlop": 1, "vessel": {"name": "turned", "ruleSet": "iec60364"},
                 "systems": [{"id": "230", "nature": "ac1", "nominalV": 230}], "sheets": [{"id": "1", "number": "001"}],
                 "components": [%s]}""".formatted(String.join(",\n", components)));
        Opened opened = Opened.file(file, 0);
        Scene scene = new SheetFiles(opened, opened.study().governing(), SymbolLibrary.bundled())
                .pages(opened.sheet(null))
                .get(0);
        byte[] svg = SvgExport.write(scene, Palette.LIGHT);

        assertThat(new String(svg, java.nio.charset.StandardCharsets.UTF_8)).contains("\"#symbol270m-meter\"");
        assertThat(share(scene, svg)).isLessThan(LIMIT);
    }

    /** Two shifted texts must not pass: else the limit would say nothing. */
    @Test
    void a_sheet_whose_texts_are_moved_by_a_letter_is_seen_to_differ() throws Exception {
        Opened opened = Opened.mainSample();
        SheetFiles files = new SheetFiles(opened, opened.study().governing(), SymbolLibrary.bundled());
        Scene scene = files.pages(opened.sheet(null)).get(0);
        byte[] svg = SvgExport.write(scene, Palette.LIGHT);
        String other = new String(svg, java.nio.charset.StandardCharsets.UTF_8)
                .replace(" lengthAdjust=\"spacingAndGlyphs\"", "")
                .replaceAll(" textLength=\"[0-9.]+\"", " letter-spacing=\"0.3\"");
        assertThat(other).contains("letter-spacing").doesNotContain("textLength");

        BufferedImage a = rsvg(scene, svg);
        BufferedImage b = chromium(scene, other.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        assertThat(Dots.differing(a, b)).isGreaterThan(3 * LIMIT);
    }

    private double share(Scene scene, byte[] svg) throws Exception {
        BufferedImage a = rsvg(scene, svg);
        BufferedImage b = chromium(scene, svg);
        assertThat(a.getWidth()).isEqualTo(b.getWidth());
        assertThat(a.getHeight()).isEqualTo(b.getHeight());
        return Dots.differing(a, b);
    }

    private static int width(Scene scene) {
        return (int) Math.round(scene.widthMm() * DOTS_PER_MM);
    }

    private static int height(Scene scene) {
        return (int) Math.round(scene.heightMm() * DOTS_PER_MM);
    }

    private BufferedImage rsvg(Scene scene, byte[] svg) throws Exception {
        Path in = Files.write(folder.resolve("sheet.svg"), svg);
        Path out = folder.resolve("rsvg.png");
        run(List.of(
                "rsvg-convert",
                "-w",
                Integer.toString(width(scene)),
                "-h",
                Integer.toString(height(scene)),
                "-o",
                out.toString(),
                in.toString()));
        return ImageIO.read(out.toFile());
    }

    /** On a page of its own in its own size: a browser shows an SVG file alone in the dots of a screen. */
    private BufferedImage chromium(Scene scene, byte[] svg) throws Exception {
        Files.write(folder.resolve("sheet.svg"), svg);
        String page =
                "<!DOCTYPE html><html><body style=\"margin:0\"><img src=\"sheet.svg\" style=\"display:block\" width=\""
                        + width(scene) + "\" height=\"" + height(scene) + "\"></body></html>";
        Path html = Files.writeString(folder.resolve("sheet.html"), page);
        Path out = folder.resolve("chromium.png");
        run(List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--hide-scrollbars",
                "--force-device-scale-factor=1",
                "--user-data-dir=" + folder.resolve("profile"),
                "--window-size=" + width(scene) + "," + height(scene),
                "--screenshot=" + out,
                html.toUri().toString()));
        return ImageIO.read(out.toFile());
    }

    private void run(List<String> command) throws Exception {
        Outcome outcome = Outcome.of(command, folder, Map.of());
        assertThat(outcome.exitCode()).as(command.get(0) + ": " + outcome.err()).isZero();
    }
}
