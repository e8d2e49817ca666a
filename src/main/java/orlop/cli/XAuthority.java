package orlop.cli;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads the file in which a login leaves the keys to its displays: see the manual page Xsecurity(7). */
final class XAuthority {
    static final byte[] NO_COOKIE = {};
    private static final String COOKIE_PROTOCOL = "MIT-MAGIC-COOKIE-1";
    /** A login has one key for a display or two; more would only make the probe slow. */
    private static final int MOST = 4;

    private XAuthority() {}

    static Path file(Map<String, String> env) {
        String named = env.get("XAUTHORITY");
        return named != null ? Path.of(named) : Path.of(env.getOrDefault("HOME", ""), ".Xauthority");
    }

    /**
     * The keys for a display of this number, whatever its host: showing a wrong one does no harm.
     *
     * @return empty if the file is missing, unreadable or damaged before the first fitting key
     */
    static List<byte[]> cookies(Path file, int displayNumber) {
        List<byte[]> found = new ArrayList<>();
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
            while (in.available() > 0 && found.size() < MOST) {
                in.readUnsignedShort(); // family of the address
                counted(in); // address
                String number = new String(counted(in), StandardCharsets.US_ASCII);
                String protocol = new String(counted(in), StandardCharsets.US_ASCII);
                byte[] cookie = counted(in);
                boolean fits = number.isEmpty() || number.equals(Integer.toString(displayNumber));
                if (fits && protocol.equals(COOKIE_PROTOCOL)) {
                    found.add(cookie);
                }
            }
        } catch (IOException e) {
            return found; // what could be read may still do
        }
        return found;
    }

    private static byte[] counted(DataInputStream in) throws IOException {
        byte[] bytes = new byte[in.readUnsignedShort()];
        in.readFully(bytes);
        return bytes;
    }
}
