package orlop.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Says whether windows can be shown, without loading an AWT class: AWT that has once met a dead display is of no use
 * for the rest of the process, not even for drawing into a picture. Safe for use by several threads.
 */
public final class Display {

    /** What was found. */
    public enum State {
        /** Nowhere to show a window: no display is named, or this Java was told or built to do without. */
        NONE,
        /** A display is named, but nothing usable answers there. */
        DEAD,
        /** Windows can be shown. */
        LIVE
    }

    private static final Duration ANSWER_LIMIT = Duration.ofSeconds(2);
    private static final Path ABSTRACT_SOCKETS = Path.of("/proc/net/unix");

    private Display() {}

    /**
     * Probes the display of this process: some milliseconds where one answers or none is named, at most 4 seconds where
     * nothing answers, and at most 10 more where only a Java of its own can tell.
     *
     * @return what was found; never throws
     */
    public static State probe() {
        return probe(Surroundings.ofThisProcess());
    }

    static State probe(Surroundings surroundings) {
        if (surroundings.headless()) {
            return State.NONE;
        }
        if (surroundings.ownWindowSystem()) {
            // A remote login to such a machine may have no access to its screen, and nothing but AWT can tell.
            return surroundings.env().containsKey("SSH_CONNECTION") ? DisplayTrial.run(surroundings.env()) : State.LIVE;
        }
        String name = surroundings.env().getOrDefault("DISPLAY", "").strip();
        if (name.isEmpty() || !surroundings.hasWindowLibrary()) {
            return State.NONE;
        }
        DisplayName parsed = DisplayName.parse(name);
        return parsed == null ? DisplayTrial.run(surroundings.env()) : probe(parsed, surroundings.env());
    }

    private static State probe(DisplayName name, Map<String, String> env) {
        for (XServer server : name.servers()) {
            XServer.Answer answer = server.knock(XAuthority.NO_COOKIE, ANSWER_LIMIT);
            if (answer == XServer.Answer.ACCEPTED) {
                return State.LIVE;
            }
            if (answer == XServer.Answer.REFUSED) {
                return knowsUs(server, name, env) ? State.LIVE : DisplayTrial.run(env);
            }
        }
        return name.isLocal() && hasAbstractSocket(name) ? DisplayTrial.run(env) : State.DEAD;
    }

    private static boolean knowsUs(XServer server, DisplayName name, Map<String, String> env) {
        return XAuthority.cookies(XAuthority.file(env), name.number()).stream()
                .anyMatch(cookie -> server.knock(cookie, ANSWER_LIMIT) == XServer.Answer.ACCEPTED);
    }

    /** Linux servers may listen on a socket without a file, which Java can't reach, but AWT can. */
    private static boolean hasAbstractSocket(DisplayName name) {
        String wanted = " @" + name.socketFile();
        try {
            List<String> lines = Files.readAllLines(ABSTRACT_SOCKETS);
            return lines.stream().anyMatch(line -> line.endsWith(wanted));
        } catch (IOException e) {
            return false; // not Linux: there is no such thing
        }
    }

    /**
     * What the answer depends on.
     *
     * @param env the environment
     * @param osName as in the system property {@code os.name}
     * @param headlessProperty as in the system property {@code java.awt.headless}, "" if not set
     * @param libraryPath folders with Java's own native libraries
     */
    record Surroundings(Map<String, String> env, String osName, String headlessProperty, String libraryPath) {

        static Surroundings ofThisProcess() {
            return new Surroundings(
                    System.getenv(),
                    System.getProperty("os.name", ""),
                    System.getProperty("java.awt.headless", ""),
                    System.getProperty("sun.boot.library.path", ""));
        }

        boolean headless() {
            return headlessProperty.equals("true");
        }

        boolean ownWindowSystem() {
            String name = osName.toLowerCase(Locale.ROOT);
            return name.startsWith("windows") || name.startsWith("mac");
        }

        /** False for a Java that is packaged for machines without a screen. */
        boolean hasWindowLibrary() {
            for (String folder : libraryPath.split(File.pathSeparator, -1)) {
                if (Files.exists(Path.of(folder, "libawt_xawt.so"))) {
                    return true;
                }
            }
            return false;
        }
    }
}
