package orlop.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The last resort of {@link Display}: AWT itself tries the display, in a Java of its own. */
final class DisplayTrial {
    private static final String CHECK = "orlop.cli.DisplayCheck";
    private static final int LIMIT_SECONDS = 10;

    private DisplayTrial() {}

    /** Runs the check and waits for it, at most 10 seconds. */
    static Display.State run(Map<String, String> env) {
        try {
            return succeeds(env) ? Display.State.LIVE : Display.State.DEAD;
        } catch (IOException | URISyntaxException e) {
            return Display.State.DEAD; // what can't be tried can't be trusted
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Display.State.DEAD;
        }
    }

    private static boolean succeeds(Map<String, String> env)
            throws IOException, URISyntaxException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        // Not the class path property: inside a build tool that is the tool's own.
        Path classes = Path.of(DisplayTrial.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        ProcessBuilder builder =
                new ProcessBuilder(List.of(java, "-Djava.awt.headless=false", "-cp", classes.toString(), CHECK));
        builder.environment().clear();
        builder.environment().putAll(env);
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        Process process = builder.start();
        try {
            return process.waitFor(LIMIT_SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
        } finally {
            process.destroyForcibly();
        }
    }
}
