package orlop.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What tells one content of a file from another: whether somebody else has written it since it was read.
 *
 * @param digest of its bytes; "" while there is no such file, or it can't be read
 */
public record Fingerprint(String digest) {
    /** Of no file. */
    public static final Fingerprint NONE = new Fingerprint("");

    /** As the file is now. */
    public static Fingerprint of(Path file) {
        try {
            return Files.isRegularFile(file) ? of(Files.readAllBytes(file)) : NONE;
        } catch (IOException e) {
            return NONE;
        }
    }

    /** Of a file with this content. */
    public static Fingerprint of(byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return new Fingerprint(HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }
}
