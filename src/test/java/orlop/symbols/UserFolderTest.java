package orlop.symbols;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UserFolderTest {
    private static final Map<String, Set<String>> KINDS =
            Map.of("fuse", Set.of("1", "2"), "lighting", Set.of("1"), "heater", Set.of("1"));
    private static final String LAMP = """
            {"name": "lamp", "file": "lamp.svg", "kind": "lighting", "terminals": {"1": [0, -5, "up"]},
             "texts": [{"side": "right", "at": [5, 0]}]}""";

    @TempDir
    Path folder;

    /** The second is for the attack, not for loading classes and our own symbols on a busy machine. */
    @BeforeAll
    static void warm_up() {
        assertThat(SymbolLibrary.bundled().all()).isNotEmpty();
    }

    private void manifest(String entries) throws Exception {
        Files.writeString(folder.resolve("manifest.json"), "{\"symbols\": [" + entries + "]}");
    }

    private void drawing(String name) throws Exception {
        Files.writeString(folder.resolve(name), """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="-5 -5 10 10" fill="none" stroke="black" stroke-width=".25">
                <path d="M0 -4.8 V4.8"/></svg>""");
    }

    private SymbolRefusedException refusal() {
        return assertTimeoutPreemptively(
                Duration.ofSeconds(1),
                () -> catchThrowableOfType(
                        SymbolRefusedException.class,
                        () -> SymbolLibrary.bundled().withFolder(folder, KINDS)));
    }

    private void assertRefused(Refusal refusal, String file, String detail) {
        SymbolRefusedException refused = refusal();
        assertThat(refused.refusal()).as(refused.getMessage()).isEqualTo(refusal);
        assertThat(refused.file()).isEqualTo(file);
        assertThat(refused.detail()).isEqualTo(detail);
    }

    @Test
    void an_own_symbol_is_added_and_stands_before_ours_of_the_same_kind() throws Exception {
        manifest(LAMP);
        drawing("lamp.svg");

        SymbolLibrary library = SymbolLibrary.bundled().withFolder(folder, KINDS);

        assertThat(library.find("lighting")).map(Symbol::name).contains("lamp");
        assertThat(library.named("lamp")).map(Symbol::titleKey).contains("symbols.title.own");
        assertThat(library.named("lamp")).map(Symbol::provenance).contains("own");
        assertThat(library.all()).hasSize(SymbolLibrary.bundled().all().size() + 1);
        assertThat(SymbolLibrary.bundled().named("lamp")).isEmpty();
    }

    @Test
    void an_own_symbol_may_have_letters_that_stay_upright() throws Exception {
        manifest(LAMP);
        Files.writeString(folder.resolve("lamp.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="-5 -5 10 10" fill="none" stroke="black" stroke-width=".25">
                <path d="M0 -4.8 V4.8"/><g id="upright"><path d="M1 -1 V1 H2"/></g></svg>""");

        Symbol lamp =
                SymbolLibrary.bundled().withFolder(folder, KINDS).named("lamp").orElseThrow();

        assertThat(lamp.hasUprights()).isTrue();
        assertThat(lamp.bounds(new Turn(90, false))).isEqualTo(new Bounds(-4.925, -0.125, 4.925, 2.625));
    }

    @Test
    void an_own_symbol_of_the_same_name_replaces_ours() throws Exception {
        manifest(LAMP.replace("\"lamp\"", "\"lighting\""));
        drawing("lamp.svg");

        SymbolLibrary library = SymbolLibrary.bundled().withFolder(folder, KINDS);

        assertThat(library.all()).hasSameSizeAs(SymbolLibrary.bundled().all());
        assertThat(library.named("lighting")).map(Symbol::provenance).contains("own");
    }

    @Test
    void a_symbol_that_leaves_out_a_terminal_of_its_kind_is_refused_by_name() throws Exception {
        manifest(LAMP.replace("lighting", "fuse"));
        drawing("lamp.svg");

        assertRefused(Refusal.TERMINAL_MISSING, "manifest.json", "lamp.2");
    }

    @Test
    void a_symbol_of_an_unknown_kind_is_refused() throws Exception {
        manifest(LAMP.replace("lighting", "lightning"));
        drawing("lamp.svg");

        assertRefused(Refusal.UNKNOWN_KIND, "manifest.json", "lamp: lightning");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[0, -5, \"up\"]          | [0, -4, \"up\"]         | TERMINAL_OFF_GRID | lamp.1",
                "[0, -5, \"up\"]          | [0, -7.5, \"up\"]       | TERMINAL_OUTSIDE  | lamp.1",
                "[0, -5, \"up\"]          | [0, -5, \"north\"]      | MANIFEST_FIELD    | lamp.terminals.1",
                "[0, -5, \"up\"]          | [0, \"-5\", \"up\"]     | MANIFEST_FIELD    | lamp.terminals.1",
                "[0, -5, \"up\"]          | [0, 1e400, \"up\"]      | MANIFEST_FIELD    | lamp.terminals.1",
                "\"lamp.svg\"             | \"../lamp.svg\"         | MANIFEST_FIELD    | lamp.file",
                "\"lamp.svg\"             | \"/etc/passwd\"         | MANIFEST_FIELD    | lamp.file",
                "\"lamp.svg\"             | \"other.svg\"           | NO_FILE           | other.svg",
                "\"kind\"                 | \"kynd\"                | MANIFEST_FIELD    | lamp.kynd",
                "\"name\": \"lamp\",      | ''                      | MANIFEST_FIELD    | ?.name",
                "\"side\"                 | \"seite\"               | MANIFEST_FIELD    | lamp.texts",
                "[{\"side\": \"right\", \"at\": [5, 0]}] | []       | MANIFEST_FIELD    | lamp.texts",
            })
    void a_wrong_entry_is_refused(String from, String to, Refusal refusal, String detail) throws Exception {
        assertThat(LAMP).contains(from);
        manifest(LAMP.replace(from, to));
        drawing("lamp.svg");

        assertRefused(refusal, "manifest.json", detail);
    }

    @Test
    void two_symbols_of_one_name_are_refused() throws Exception {
        manifest(LAMP + "," + LAMP);
        drawing("lamp.svg");

        assertRefused(Refusal.NAME_TWICE, "manifest.json", "lamp");
    }

    @Test
    void a_drawing_without_an_entry_is_refused() throws Exception {
        manifest(LAMP);
        drawing("lamp.svg");
        drawing("stray.svg");

        assertRefused(Refusal.NO_ENTRY, "stray.svg", "");
    }

    @Test
    void a_folder_without_a_manifest_is_refused() {
        assertRefused(Refusal.NO_MANIFEST, "manifest.json", folder.getFileName().toString());
    }

    @Test
    void a_folder_that_is_not_there_is_refused() {
        folder = folder.resolve("nowhere");
        assertRefused(Refusal.NO_MANIFEST, "manifest.json", "nowhere");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"symbols\": [}                         | MANIFEST_NOT_JSON",
                "{\"symbols\": [], \"symbols\": []}       | MANIFEST_NOT_JSON",
                "{\"symbols\": []} {}                     | MANIFEST_NOT_JSON",
                "[]                                       | MANIFEST_FIELD",
                "''                                       | MANIFEST_FIELD",
                "{\"symbols\": {}}                        | MANIFEST_FIELD",
            })
    void a_broken_manifest_is_refused(String text, Refusal refusal) throws Exception {
        Files.writeString(folder.resolve("manifest.json"), text);

        assertThat(refusal().refusal()).isEqualTo(refusal);
        assertThat(refusal().file()).isEqualTo("manifest.json");
    }

    @Test
    void a_deep_or_huge_manifest_is_refused() throws Exception {
        Files.writeString(folder.resolve("manifest.json"), "[".repeat(100_000));
        assertThat(refusal().refusal()).isEqualTo(Refusal.MANIFEST_NOT_JSON);

        Files.writeString(folder.resolve("manifest.json"), " ".repeat(300_000));
        assertThat(refusal().refusal()).isEqualTo(Refusal.FILE_TOO_BIG);
    }

    @Test
    void a_drawing_of_two_gigabytes_is_refused_unread() throws Exception {
        manifest(LAMP);
        try (RandomAccessFile huge =
                new RandomAccessFile(folder.resolve("lamp.svg").toFile(), "rw")) {
            huge.setLength(2L << 30);
        }

        assertRefused(Refusal.FILE_TOO_BIG, "lamp.svg", "64 kB");
    }

    @Test
    void what_is_no_plain_file_is_refused() throws Exception {
        manifest(LAMP);
        Files.createDirectory(folder.resolve("lamp.svg"));

        assertRefused(Refusal.UNREADABLE, "lamp.svg", "");
    }

    @Test
    void a_hostile_drawing_is_refused_with_its_file_and_line() throws Exception {
        manifest(LAMP);
        Files.writeString(folder.resolve("lamp.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="-5 -5 10 10">
                <image href="file:///etc/passwd"/></svg>""");

        assertRefused(Refusal.ELEMENT, "lamp.svg", "image");
        assertThat(refusal().line()).isEqualTo(2);
    }
}
