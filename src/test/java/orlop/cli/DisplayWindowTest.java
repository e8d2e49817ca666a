package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.testing.Outcome;
import orlop.testing.XvfbTest;

/** The probe against real X servers, started and stopped here. */
@XvfbTest
@Timeout(60)
class DisplayWindowTest {
    private static final byte[] KEY = {16, 15, 14, 13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1};

    @TempDir
    private Path folder;

    @Test
    void a_real_display_is_live_and_dead_once_it_is_gone() throws Exception {
        Map<String, String> env = new HashMap<>(Map.of("XAUTHORITY", "/nowhere"));
        try (Xvfb xvfb = Xvfb.start(List.of())) {
            env.put("DISPLAY", xvfb.name());
            assertThat(probe(env)).isEqualTo(Display.State.LIVE);
        }
        assertThat(probe(env)).isEqualTo(Display.State.DEAD);
    }

    @Test
    void awt_agrees_that_it_is_live() throws Exception {
        try (Xvfb xvfb = Xvfb.start(List.of())) {
            assertThat(DisplayTrial.run(Map.of("DISPLAY", xvfb.name()))).isEqualTo(Display.State.LIVE);
        }
    }

    @Test
    void a_guarded_display_is_live_for_those_who_have_the_key() throws Exception {
        Path keys = folder.resolve("keys");
        XAuthorityTest.add(keys, "", KEY);
        try (Xvfb xvfb = Xvfb.start(List.of("-auth", keys.toString()))) {
            assertThat(probe(Map.of("DISPLAY", xvfb.name(), "XAUTHORITY", keys.toString())))
                    .isEqualTo(Display.State.LIVE);
        }
    }

    @Test
    void the_default_command_opens_the_editor_on_a_live_display_and_stays() throws Exception {
        try (Xvfb xvfb = Xvfb.start(List.of())) {
            Path said = folder.resolve("said.txt");
            ProcessBuilder builder = new ProcessBuilder(
                            Outcome.java(), "-cp", System.getProperty("java.class.path"), "orlop.cli.Main")
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile());
            builder.environment().put("DISPLAY", xvfb.name());
            Process editor = builder.start();
            try {
                assertThat(editor.waitFor(10, TimeUnit.SECONDS))
                        .as("it has ended")
                        .isFalse();
                assertThat(said).as("it has something to say").isEmptyFile();
            } finally {
                editor.destroyForcibly().waitFor();
            }
        }
    }

    private static Display.State probe(Map<String, String> env) {
        return Display.probe(
                new Display.Surroundings(env, "Linux", "", System.getProperty("sun.boot.library.path", "")));
    }

    /** One X server on the first free display number. */
    private record Xvfb(Process process, String name) implements AutoCloseable {

        static Xvfb start(List<String> options) throws IOException {
            ProcessBuilder builder = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "640x480x24");
            builder.command().addAll(options);
            Process process =
                    builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
            String number = process.inputReader().readLine(); // said once it listens
            assertThat(number).as("display number of Xvfb").isNotNull();
            return new Xvfb(process, ":" + number.strip());
        }

        @Override
        public void close() {
            process.destroy();
            process.onExit().join();
        }
    }
}
