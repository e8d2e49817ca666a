package orlop.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * What a program left when it had ended.
 *
 * @param exitCode as the system gave it
 * @param out its standard output, UTF-8
 * @param err its error output, UTF-8
 */
public record Outcome(int exitCode, String out, String err) {
    private static final int LIMIT_SECONDS = 60;

    /**
     * Runs a program to its end, at most a minute.
     *
     * @param folder where it runs
     * @param env changes to our own environment; an empty value takes the variable away
     * @throws AssertionError if it doesn't end
     */
    public static Outcome of(List<String> command, Path folder, Map<String, String> env)
            throws IOException, InterruptedException {
        Path out = Files.createTempFile("out", ".txt");
        Path err = Files.createTempFile("err", ".txt");
        try {
            ProcessBuilder builder = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile());
            env.forEach((name, value) -> {
                builder.environment().put(name, value);
                builder.environment().values().removeIf(String::isEmpty);
            });
            Process process = builder.start();
            try {
                if (!process.waitFor(LIMIT_SECONDS, TimeUnit.SECONDS)) {
                    throw new AssertionError(command + " did not end within " + LIMIT_SECONDS + " s");
                }
            } finally {
                process.destroyForcibly();
            }
            return new Outcome(process.exitValue(), Files.readString(out), Files.readString(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    /** The Java that runs this test. */
    public static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }
}
