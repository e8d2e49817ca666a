package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The options of the command {@code export} that change the picture. */
class ExportOptionsTest {
    private static final String SAMPLE = "sample-drawings/coastal-sloop.orlop";

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int export(String out, String... options) {
        List<String> args = new ArrayList<>(
                List.of("export", SAMPLE, "-o", folder.resolve(out).toString()));
        args.addAll(List.of(options));
        return Main.run(
                args.toArray(String[]::new),
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> Display.State.NONE);
    }

    private BufferedImage png(String dots) throws Exception {
        assertThat(export("sheet.png", "--dpi", dots))
                .as(err.toString(StandardCharsets.UTF_8))
                .isZero();
        return ImageIO.read(folder.resolve("sheet.png").toFile());
    }

    /** A3 is 420 mm by 297 mm, an inch 25.4 mm. */
    @ParameterizedTest
    @ValueSource(strings = {"50", "100"})
    void the_dots_of_an_inch_give_the_size_of_the_picture(String dots) throws Exception {
        BufferedImage image = png(dots);

        assertThat((double) image.getWidth())
                .isBetween(
                        Math.floor(420 / 25.4 * Double.parseDouble(dots)),
                        Math.ceil(420 / 25.4 * Double.parseDouble(dots)));
        assertThat((double) image.getHeight())
                .isBetween(
                        Math.floor(297 / 25.4 * Double.parseDouble(dots)),
                        Math.ceil(297 / 25.4 * Double.parseDouble(dots)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5", "601", "NaN"})
    void dots_beyond_the_limits_are_refused_in_one_line(String dots) {
        assertThat(export("sheet.png", "--dpi", dots)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).strip()).contains(dots).doesNotContain("\n");
        assertThat(folder.resolve("sheet.png")).doesNotExist();
    }

    private Path symbols(String drawing) throws Exception {
        Path own = Files.createDirectories(folder.resolve("own"));
        Files.writeString(own.resolve("manifest.json"), """
                {"symbols": [{"name": "my-lamp", "file": "lamp.svg", "kind": "lighting",
                 "terminals": {"1": [0, -5, "up"]}, "texts": [{"side": "below", "at": [0, 6]}]}]}""");
        Files.writeString(own.resolve("lamp.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="-5 -5 10 10" fill="none" stroke="black" stroke-width=".25">
                """ + drawing + "</svg>");
        return own;
    }

    @Test
    void an_own_symbol_stands_on_the_sheet_in_place_of_ours() throws Exception {
        Path own = symbols("<path d=\"M0 -4.8 V4.8 M-3 3 H3\"/>");

        assertThat(export("sheet.svg", "--symbols", own.toString()))
                .as(err.toString(StandardCharsets.UTF_8))
                .isZero();

        assertThat(Files.readString(folder.resolve("sheet.svg")))
                .contains("symbol-my-lamp")
                .doesNotContain("symbol-lighting");
    }

    @Test
    void an_own_symbol_that_could_do_harm_is_refused_in_one_line() throws Exception {
        Path own = symbols("<script>1</script>");

        assertThat(export("sheet.svg", "--symbols", own.toString())).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).strip())
                .contains("lamp.svg")
                .doesNotContain("\n");
        assertThat(folder.resolve("sheet.svg")).doesNotExist();
    }
}
