package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.contentOf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.testing.Outcome;

/** The runnable jar, copied to an empty folder: nothing of the checkout is near it. */
@Timeout(120)
class LauncherJarTest {
    private static final Path BUILT = Path.of(Objects.requireNonNull(System.getProperty("orlop.jar")));
    private static final Path LIBRARIES = Path.of(Objects.requireNonNull(System.getProperty("orlop.libraries")));
    private static final Map<String, String> NO_DISPLAY = Map.of("DISPLAY", "", "WAYLAND_DISPLAY", "");
    private static final Map<String, String> DEAD_DISPLAY = Map.of("DISPLAY", ":987");

    @TempDir
    private Path folder;

    private Path jar = BUILT;

    @BeforeEach
    void copy() throws IOException {
        jar = Files.copy(BUILT, folder.resolve("orlop.jar"));
    }

    @Test
    void says_its_version() throws Exception {
        assertSays(NO_DISPLAY, "orlop \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?", "--version");
    }

    @Test
    void says_how_to_use_it() throws Exception {
        Outcome outcome = run(NO_DISPLAY, List.of(), "--help");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out()).startsWith("Usage: orlop ").contains("study", "findings", "export", "design aid");
        assertThat(outcome.err()).isEmpty();
    }

    @Test
    void with_no_display_says_so() throws Exception {
        Outcome outcome = run(NO_DISPLAY, List.of());

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .startsWith("No display, so the editor cannot open.")
                .contains("Oskerrin", "W7", "Wrote pilot-cutter-1.svg");
        assertThat(contentOf(folder.resolve("pilot-cutter-1.svg").toFile(), StandardCharsets.UTF_8))
                .contains("<svg", "W7");
    }

    @Test
    void with_a_dead_display_says_so() throws Exception {
        Outcome outcome = run(DEAD_DISPLAY, List.of());

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .startsWith("The display :987 does not answer, so the editor cannot open.")
                .contains("Wrote pilot-cutter-1.svg");
        assertThat(folder.resolve("pilot-cutter-1.svg")).isRegularFile();
    }

    @Test
    void refuses_what_it_does_not_know_with_one_line() throws Exception {
        Outcome outcome = run(NO_DISPLAY, List.of(), "study", "a.orlop", "--nope");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).isEqualToIgnoringNewLines("orlop: Unknown option: '--nope'");
    }

    @Test
    void with_a_dead_display_no_class_that_opens_one_is_loaded() throws Exception {
        Outcome outcome = run(DEAD_DISPLAY, List.of("-Xlog:class+load:stdout"));

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out().lines().filter(line -> line.contains(" orlop.cli.XServer ")))
                .as("the log names the classes")
                .hasSize(1);
        assertThat(outcome.out()
                        .lines()
                        .filter(line -> line.matches(".* (sun\\.awt\\.X11|java\\.awt\\.Window|javax\\.swing).*")))
                .isEmpty();
    }

    @Test
    void the_manifest_names_the_main_class_and_nothing_is_signed() throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            assertThat(file.getManifest().getMainAttributes().getValue("Main-Class"))
                    .isEqualTo("orlop.cli.Main");
            assertThat(file.isMultiRelease()).isTrue();
            assertThat(file.stream().map(JarEntry::getName))
                    .doesNotHaveDuplicates()
                    .noneMatch(name -> name.matches("META-INF/[^/]*\\.(SF|RSA|DSA)"))
                    .noneMatch(name -> name.endsWith("module-info.class"));
        }
    }

    @Test
    void the_folders_carry_the_list_of_their_files() throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            for (String name : new String[] {"symbols/", "sample-drawings/"}) {
                List<String> inside = file.stream()
                        .filter(entry -> entry.getName().startsWith(name) && !entry.isDirectory())
                        .map(entry -> entry.getName().substring(name.length()))
                        .filter(entry -> !entry.equals("index.txt"))
                        .sorted()
                        .toList();
                assertThat(linesOf(file, name + "index.txt")).as(name).isEqualTo(inside);
            }
        }
    }

    @Test
    void every_library_has_its_licence_inside() throws IOException {
        List<String> missing = new ArrayList<>();
        try (JarFile file = new JarFile(jar.toFile())) {
            List<String> listed = linesOf(file, "META-INF/licences/libraries.txt");
            for (String library : libraries()) {
                boolean found = listed.stream()
                        .filter(line -> line.startsWith(library + " | "))
                        .map(line -> line.substring(line.lastIndexOf('|') + 2))
                        .anyMatch(text -> file.getEntry(text) != null);
                if (!found) {
                    missing.add(library);
                }
            }
            assertThat(missing)
                    .as("libraries without a line in META-INF/licences/libraries.txt, or without the file it names")
                    .isEmpty();
            assertThat(linesOf(file, "META-INF/LICENSE").get(0)).contains("Apache License");
            assertThat(linesOf(file, "META-INF/NOTICE").get(0)).isEqualTo("Orlop");
        }
    }

    /** Group and name of each library, from the list that the build wrote. */
    private static List<String> libraries() {
        List<String> found = contentOf(LIBRARIES.toFile(), StandardCharsets.UTF_8)
                .lines()
                .map(String::strip)
                .filter(line -> line.matches("[\\w.-]+:[\\w.-]+:jar:.*"))
                .map(line -> line.substring(0, line.indexOf(":jar:")))
                .toList();
        assertThat(found).contains("info.picocli:picocli");
        return found;
    }

    private static List<String> linesOf(JarFile file, String name) throws IOException {
        JarEntry entry = file.getJarEntry(name);
        assertThat(entry).as(name).isNotNull();
        try (InputStream in = file.getInputStream(entry)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .toList();
        }
    }

    private void assertSays(Map<String, String> env, String pattern, String... args) throws Exception {
        Outcome outcome = run(env, List.of(), args);

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out()).matches(pattern + "\\R");
        assertThat(outcome.exitCode()).isZero();
        assertThat(folder).as("nothing is left behind").isDirectoryNotContaining(path -> !path.equals(jar));
    }

    private Outcome run(Map<String, String> env, List<String> javaOptions, String... args) throws Exception {
        List<String> command = new ArrayList<>(List.of(Outcome.java()));
        command.addAll(javaOptions);
        command.addAll(List.of("-jar", "orlop.jar"));
        command.addAll(List.of(args));
        return Outcome.of(command, folder, env);
    }
}
