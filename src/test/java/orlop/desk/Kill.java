package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import orlop.drawing.Drawing;
import orlop.store.DrawingFile;
import orlop.store.Journal;
import orlop.store.LeftJournal;

/** One kill of a program at work, and what is found afterwards. */
final class Kill {
    private static final int SECOND_MS = 1_000;

    private Kill() {}

    /** Lets a program work, kills it at a moment of chance, and checks what it has left behind. */
    static void at(Path folder, long seed) throws Exception {
        Random random = new Random(seed);
        Process p = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WorkThatIsKilled.class.getName(),
                        folder.toString(),
                        String.valueOf(seed))
                .redirectError(folder.resolve("errors").toFile())
                .redirectOutput(folder.resolve("edits").toFile())
                .start();
        while (p.isAlive() && Files.size(folder.resolve("edits")) == 0) {
            pause(p, 20);
        }
        boolean ended = pause(p, random.nextInt(2_500));
        assertThat(ended).as("it works until it is killed").isFalse();
        long killed = System.currentTimeMillis();
        p.destroyForcibly().waitFor();
        assertThat(folder.resolve("errors")).isEmptyFile();
        String edits = Files.readString(folder.resolve("edits"));
        check(folder, edits.substring(0, edits.lastIndexOf('\n')).lines().toList(), killed);
    }

    private static boolean pause(Process p, int ms) throws InterruptedException {
        return p.waitFor(ms, TimeUnit.MILLISECONDS);
    }

    private static void check(Path folder, List<String> lines, long killed) throws Exception {
        int done = number(lines.get(lines.size() - 1));
        int least = lines.stream()
                .filter(line -> Long.parseLong(line.substring(0, line.indexOf(' '))) <= killed - SECOND_MS)
                .mapToInt(Kill::number)
                .max()
                .orElse(0);

        int found = found(folder);

        assertThat(found).as("edit found after the kill").isBetween(least, done + 1);
        DrawingFile.load(folder.resolve("boat.orlop"));
    }

    private static int number(String line) {
        return Integer.parseInt(line.substring(line.indexOf(' ') + 1));
    }

    /** The number of the last edit that a person gets back: from the journal if there is one, else from the file. */
    private static int found(Path folder) throws Exception {
        List<LeftJournal> left = Journal.left(folder.resolve("journals"));
        assertThat(left).hasSizeLessThanOrEqualTo(1);
        Drawing d = left.isEmpty()
                ? DrawingFile.load(folder.resolve("boat.orlop"))
                : left.get(0).read().drawing();
        String name = d.components().find("EA1").orElseThrow().name();
        return name.isEmpty() ? 0 : Integer.parseInt(name);
    }

    static void many(Path folder, int from, int kills) throws IOException {
        java.util.stream.IntStream.range(from, from + kills).parallel().forEach(seed -> {
            try {
                at(Files.createDirectory(folder.resolve("kill" + seed)), seed);
            } catch (Exception e) {
                throw new AssertionError("kill of seed " + seed, e);
            }
        });
    }
}
