package orlop.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program of its own that works with the same files, and says what it finds. */
final class AnotherProgram {
    private AnotherProgram() {}

    /** @param args {@code claim}, the file and the user's folder; or {@code journals} and their folder */
    public static void main(String[] args) {
        if (args[0].equals("claim")) {
            System.out.print(
                    FileClaim.of(Path.of(args[1]), Path.of(args[2])).isPresent() ? "has it" : "another has it");
        } else {
            System.out.print(Journal.left(Path.of(args[1])).size() + " left");
        }
    }

    /** Runs it to its end. */
    static String says(String... args) throws IOException, URISyntaxException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classes(AnotherProgram.class) + File.pathSeparator + classes(Journal.class),
                AnotherProgram.class.getName()));
        command.addAll(List.of(args));
        Process p = new ProcessBuilder(command).redirectErrorStream(true).start();
        return new String(p.getInputStream().readAllBytes(), UTF_8);
    }

    private static Path classes(Class<?> c) throws URISyntaxException {
        return Path.of(c.getProtectionDomain().getCodeSource().getLocation().toURI());
    }
}
