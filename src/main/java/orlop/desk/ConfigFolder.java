package orlop.desk;

import java.nio.file.Path;
import java.util.Locale;

/** The program's own folder among the user's: settings, and symbols of the user's own. */
public final class ConfigFolder {
    private ConfigFolder() {}

    /** Where this system keeps such things. It need not be there. */
    public static Path path() {
        String os = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home", "."));
        String roaming = System.getenv("APPDATA");
        if (os.contains("win") && roaming != null) {
            return Path.of(roaming, "Orlop");
        }
        if (os.contains("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Orlop");
        }
        String config = System.getenv("XDG_CONFIG_HOME");
        return (config == null || config.isEmpty() ? home.resolve(".config") : Path.of(config)).resolve("orlop");
    }

    /** The folder of the user's own symbols. */
    public static Path symbols() {
        return path().resolve("symbols");
    }
}
