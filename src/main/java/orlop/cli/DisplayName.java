package orlop.cli;

import java.net.InetSocketAddress;
import java.net.UnixDomainSocketAddress;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The name of an X display, as in {@code :0}, {@code unix:1.0}, {@code 192.0.2.7:10.0}: see the manual page X(7),
 * "Display names".
 *
 * @param host "" for this machine
 * @param number of the display, from 0
 */
record DisplayName(String host, int number) {
    private static final Pattern FORM = Pattern.compile("(?:tcp/)?\\[?([^/\\[\\]]*?)\\]?:(\\d{1,4})(?:\\.\\d+)?");
    private static final int FIRST_PORT = 6000;

    /** The parts of a name, or null for a form that only the X library itself understands. */
    static @Nullable DisplayName parse(String name) {
        Matcher form = FORM.matcher(name);
        if (!form.matches()) {
            return null;
        }
        String host = form.group(1);
        return new DisplayName(host.equals("unix") ? "" : host, Integer.parseInt(form.group(2)));
    }

    boolean isLocal() {
        return host.isEmpty();
    }

    Path socketFile() {
        return Path.of("/tmp/.X11-unix/X" + number);
    }

    /** Where the display may answer, in the order in which the X library tries them. */
    List<XServer> servers() {
        int port = FIRST_PORT + number;
        if (isLocal()) {
            return List.of(
                    new XServer(() -> UnixDomainSocketAddress.of(socketFile())),
                    new XServer(() -> new InetSocketAddress("localhost", port)));
        }
        return List.of(new XServer(() -> new InetSocketAddress(host, port)));
    }
}
