package orlop.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Drawing;
import orlop.drawing.Extras;

class SaveTest {
    private static final Drawing DRAWING = RealisticDrawing.make();

    @TempDir
    private Path folder = Path.of("");

    private static FileProblem problem(Path file, AtomicFile.Steps steps) {
        return Objects.requireNonNull(
                catchThrowableOfType(FileProblem.class, () -> AtomicFile.write(file, "new".getBytes(UTF_8), steps)));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void what_is_saved_is_loaded_and_saving_again_changes_no_byte() throws Exception {
        Path file = folder.resolve("heron.orlop");

        DrawingFile.save(file, DRAWING);
        byte[] first = Files.readAllBytes(file);
        Drawing loaded = DrawingFile.load(file);
        DrawingFile.save(file, loaded);

        assertThat(loaded).isEqualTo(DRAWING);
        assertThat(Files.readAllBytes(file)).isEqualTo(first).isEqualTo(DrawingFile.write(DRAWING));
        assertThat(names()).containsExactly("heron.orlop");
    }

    /** Part of the bytes go through, as on a disk that fills up while it is written to. */
    private record FillingDisk(long free) implements AtomicFile.Steps {
        @Override
        public void write(FileChannel channel, ByteBuffer bytes) throws IOException {
            channel.write(bytes.slice(0, 1));
            throw new IOException("No space left on device");
        }

        @Override
        public long freeBytes(Path folder) {
            return free;
        }
    }

    @Test
    void a_disk_that_is_full_is_told_as_such_and_the_old_file_stays() throws Exception {
        Path file = Files.writeString(folder.resolve("a.orlop"), "old");

        FileProblem full = problem(file, new FillingDisk(2));
        FileProblem other = problem(file, new FillingDisk(1L << 30));

        assertThat(full.reason().key()).isEqualTo("store.disk-full");
        assertThat(other.reason().key()).isEqualTo("store.save-failed");
        assertThat(other.reason().arguments()).containsExactly("No space left on device");
        assertThat(Files.readString(file)).isEqualTo("old");
        assertThat(names()).containsExactly("a.orlop");
    }

    /** The system's own folder of processes: it is there, has neither room nor files of its own, and its disk isn't full. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_folder_in_which_no_file_can_be_made_is_no_full_disk() {
        FileProblem p = problem(Path.of("/proc/a.orlop"), new AtomicFile.Steps() {});

        assertThat(p.reason().key()).isIn("store.no-files-here", "store.read-only-folder", "store.read-only-disk");
    }

    @Test
    void a_disk_that_can_only_be_read_is_told_as_such() throws Exception {
        Path file = Files.writeString(folder.resolve("a.orlop"), "old");

        FileProblem p = problem(file, new AtomicFile.Steps() {
            @Override
            public boolean readOnly(Path in) {
                return true;
            }
        });

        assertThat(p.reason().key()).isEqualTo("store.read-only-disk");
        assertThat(file).hasContent("old");
    }

    @Test
    void a_new_file_has_the_mode_of_any_new_file() throws Exception {
        Path other = Files.createFile(folder.resolve("other"));
        Path file = folder.resolve("new.orlop");

        DrawingFile.save(file, DRAWING);

        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(other));
    }

    @Test
    void the_mode_of_an_existing_file_is_kept() throws Exception {
        Path file = Files.writeString(folder.resolve("a.orlop"), "old");
        for (String mode : List.of("rw-rw-r--", "rw-------", "rwxr-x---", "rw-rw-rw-")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
            DrawingFile.save(file, DRAWING);
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo(mode);
        }
    }

    @Test
    void a_symbolic_link_stays_and_its_target_is_written() throws Exception {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Path target = Files.writeString(inner.resolve("real.orlop"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.orlop"), Path.of("inner/real.orlop"));
        Path second = Files.createSymbolicLink(folder.resolve("second.orlop"), link);

        DrawingFile.save(second, DRAWING);

        assertThat(second).isSymbolicLink();
        assertThat(link).isSymbolicLink();
        assertThat(DrawingFile.load(target)).isEqualTo(DRAWING);
    }

    @Test
    void a_link_to_nothing_gets_its_target_and_a_circle_of_links_is_refused() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("link.orlop"), Path.of("later.orlop"));
        DrawingFile.save(link, DRAWING);
        assertThat(link).isSymbolicLink();
        assertThat(DrawingFile.load(folder.resolve("later.orlop"))).isEqualTo(DRAWING);

        Path a = Files.createSymbolicLink(folder.resolve("a"), Path.of("b"));
        Files.createSymbolicLink(folder.resolve("b"), Path.of("a"));
        assertThat(catchThrowableOfType(FileProblem.class, () -> DrawingFile.save(a, DRAWING)))
                .hasMessageStartingWith(a + ": the file could not be written");
    }

    static Stream<AtomicFile.Steps> failures() {
        return Stream.of(
                new AtomicFile.Steps() {
                    @Override
                    public void write(FileChannel channel, ByteBuffer bytes) throws IOException {
                        channel.write(bytes.limit(2));
                        throw new IOException("no space left");
                    }
                },
                new AtomicFile.Steps() {
                    @Override
                    public void force(FileChannel channel) throws IOException {
                        throw new IOException("disk gone");
                    }
                },
                new AtomicFile.Steps() {
                    @Override
                    public void move(Path temp, Path target) throws IOException {
                        assertThat(temp).hasSameTextualContentAs(Files.writeString(target.resolveSibling("x"), "new"));
                        Files.delete(target.resolveSibling("x"));
                        throw new IOException("no such luck");
                    }
                });
    }

    @ParameterizedTest
    @MethodSource("failures")
    void whichever_step_fails_the_old_file_is_whole_and_nothing_lies_about(AtomicFile.Steps steps) throws IOException {
        Path file = Files.writeString(folder.resolve("a.orlop"), "old");

        FileProblem p = problem(file, steps);

        assertThat(p.getMessage())
                .startsWith(file + ": the file could not be written (")
                .endsWith("); the old file is as it was: check that the disk is there and has room, or save in another"
                        + " place");
        assertThat(p.getMessage()).containsAnyOf("(no space left)", "(disk gone)", "(no such luck)");
        assertThat(file).hasContent("old");
        assertThat(names()).containsExactly("a.orlop");
    }

    @Test
    void a_folder_that_may_not_be_written_in_is_told() throws IOException {
        Path file = Files.writeString(folder.resolve("a.orlop"), "old");
        FileProblem p = problem(file, new AtomicFile.Steps() {
            @Override
            public void move(Path temp, Path target) throws IOException {
                throw new AccessDeniedException(target.toString());
            }
        });
        assertThat(p.reason().key()).isEqualTo("store.read-only-folder");
        assertThat(file).hasContent("old");
    }

    @Test
    void a_folder_in_the_place_of_the_file_and_a_missing_folder_are_told() {
        assertThat(catchThrowableOfType(FileProblem.class, () -> DrawingFile.save(folder, DRAWING)))
                .hasMessage(folder + ": this is a folder: name a file in it");
        Path lost = folder.resolve("no/such/a.orlop");
        assertThat(catchThrowableOfType(FileProblem.class, () -> DrawingFile.save(lost, DRAWING)))
                .hasMessage(lost + ": there is no such folder to write in: make the folder first, or choose another");
        assertThat(catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(folder)))
                .hasMessage(folder + ": this is a folder: name a file in it");
        assertThat(catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(lost)))
                .hasMessage(lost + ": there is no such file: check the name and the folder");
    }

    @Test
    void a_drawing_too_big_to_be_read_again_is_not_saved() throws Exception {
        Path file = folder.resolve("a.orlop");
        DrawingFile.save(file, DRAWING);
        byte[] old = Files.readAllBytes(file);
        String huge = "\"" + "x".repeat(DrawingFile.MAX_BYTES) + "\"";
        Drawing big = new Drawing(
                DRAWING.vessel(),
                DRAWING.systems(),
                DRAWING.conditions(),
                DRAWING.locations(),
                DRAWING.sheets(),
                DRAWING.components(),
                DRAWING.cables(),
                DRAWING.links(),
                DRAWING.cableways(),
                DRAWING.notes(),
                DRAWING.measurements(),
                DRAWING.accepted(),
                DRAWING.dayPlans(),
                new Extras(Map.of("huge", huge)));

        FileProblem p = catchThrowableOfType(FileProblem.class, () -> DrawingFile.save(file, big));

        assertThat(p.reason().key()).isEqualTo("store.too-big");
        assertThat(Files.readAllBytes(file)).isEqualTo(old);
    }

    @Test
    void temporary_files_that_a_crash_left_are_swept_and_no_others() throws Exception {
        FileTime old = FileTime.from(Instant.now().minus(Duration.ofMinutes(61)));
        FileTime fresh = FileTime.from(Instant.now().minus(Duration.ofMinutes(30)));
        Path stale = Files.createFile(folder.resolve(".b.orlop.orlop-8123456789abcdef.tmp"));
        Path young = Files.createFile(folder.resolve(".b.orlop.orlop-9123456789abcdef.tmp"));
        Path foreign = Files.createFile(folder.resolve(".b.orlop-notes.tmp"));
        Path visible = Files.createFile(folder.resolve("b.orlop.orlop-8123456789abcdef.tmp"));
        for (Path p : List.of(stale, foreign, visible)) {
            Files.setLastModifiedTime(p, old);
        }
        Files.setLastModifiedTime(young, fresh);

        DrawingFile.save(folder.resolve("a.orlop"), DRAWING);

        assertThat(names())
                .containsExactlyInAnyOrder(
                        young.getFileName().toString(),
                        foreign.getFileName().toString(),
                        "a.orlop",
                        visible.getFileName().toString());
    }

    @Test
    void the_temporary_name_is_one_that_is_swept() throws IOException {
        Path file = folder.resolve("a.orlop");
        String[] seen = new String[1];
        problem(file, new AtomicFile.Steps() {
            @Override
            public void move(Path temp, Path target) throws IOException {
                seen[0] = temp.getFileName().toString();
                assertThat(temp.getParent()).isEqualTo(target.getParent());
                throw new IOException("stop here");
            }
        });
        assertThat(seen[0]).matches("\\.a\\.orlop\\.orlop-[0-9a-f]{16}\\.tmp");
    }
}
