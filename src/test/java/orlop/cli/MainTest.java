package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    @BeforeEach
    void write_into_an_empty_folder() {
        System.setProperty(HeadlessJob.FOLDER_PROPERTY, folder.toString());
    }

    @AfterEach
    void forget_the_folder() {
        System.clearProperty(HeadlessJob.FOLDER_PROPERTY);
    }

    @Test
    void without_a_display_the_default_command_says_so_and_studies_the_main_sample() {
        assertThat(run(MainTest::noDisplay)).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8))
                .startsWith(line("No display, so the editor cannot open."))
                .contains("Oskerrin", "W7", "Wrote", "A design aid");
        assertThat(err.size()).isZero();
        for (int sheet = 1; sheet <= 4; sheet++) {
            assertThat(folder.resolve("pilot-cutter-" + sheet + ".svg")).isRegularFile();
        }
    }

    @Test
    void a_dead_display_is_said_to_be_dead() {
        assertThat(run(() -> Display.State.DEAD)).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8).lines().findFirst())
                .hasValueSatisfying(first -> assertThat(first).contains("does not answer"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"study", "findings", "export -o x.svg"})
    void the_commands_want_a_file(String command) {
        assertThat(run(MainTest::noDisplay, command.split(" "))).isEqualTo(2);

        assertThat(err).hasToString(line("orlop: Missing required parameter: 'FILE'"));
        assertThat(out.size()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "--nope, orlop: Unknown option: '--nope'",
        "study a b, orlop: Unmatched argument at index 2: 'b'",
        "export a, orlop: Missing required option: '-o=OUT'",
        "study a --fault-ohm x, orlop: Invalid value for option '--fault-ohm': 'x' is not a double",
    })
    void mistyped_commands_get_one_line_and_exit_code_2(String typed, String expected) {
        assertThat(run(MainTest::noDisplay, typed.split(" "))).isEqualTo(2);

        assertThat(err).hasToString(line(expected));
    }

    @Test
    void an_unexpected_error_is_one_line() {
        assertThat(run(MainTest::fail)).isEqualTo(2);

        assertThat(err).hasToString(line("orlop: an unexpected error, rats; with --trace it says where"));
    }

    @Test
    void an_unexpected_error_says_where_with_trace() {
        assertThat(run(MainTest::fail, "--trace")).isEqualTo(2);

        assertThat(err.toString(StandardCharsets.UTF_8))
                .startsWith("orlop: an unexpected error, rats")
                .contains("at orlop.cli.MainTest.fail");
    }

    @Test
    void running_out_of_stack_is_one_line_too() {
        assertThat(run(() -> {
                    throw new StackOverflowError();
                }))
                .isEqualTo(2);

        assertThat(err).hasToString(line("orlop: an unexpected error, StackOverflowError; with --trace it says where"));
    }

    @Test
    void help_of_every_command_carries_the_caution() {
        for (String command : new String[] {"", "study ", "findings ", "export "}) {
            out.reset();
            assertThat(run(MainTest::noDisplay, (command + "--help").split(" ")))
                    .isZero();
            assertThat(out.toString(StandardCharsets.UTF_8))
                    .as(command)
                    .contains("A design aid: local codes prevail")
                    .doesNotContain("null")
                    .doesNotContain("${");
        }
    }

    @Test
    void the_version_is_the_one_of_the_build() {
        assertThat(run(MainTest::noDisplay, "--version")).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8)).matches("orlop \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\\R");
    }

    private static Display.State noDisplay() {
        return Display.State.NONE;
    }

    private static Display.State fail() {
        throw new IllegalStateException("rats\nand more rats");
    }

    private int run(Supplier<Display.State> display, String... args) {
        return Main.run(args, stream(out), stream(err), display);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private static String line(String text) {
        return text + System.lineSeparator();
    }
}
