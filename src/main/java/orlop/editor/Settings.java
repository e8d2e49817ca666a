package orlop.editor;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import orlop.desk.ConfigFolder;

/**
 * What the program remembers from one day to the next: the look, and the files that were open last. Kept in one small
 * file; if it can't be read or written, nothing is remembered and nothing else happens.
 */
final class Settings {
    private static final int RECENT = 9;

    private final @Nullable Path file;
    private final Properties properties = new Properties();

    /** @param file where to remember; null for nowhere */
    Settings(@Nullable Path file) {
        this.file = file;
        if (file != null && Files.isReadable(file)) {
            try (Reader in = Files.newBufferedReader(file)) {
                properties.load(in);
            } catch (IOException | IllegalArgumentException e) {
                properties.clear(); // what can't be read is as if it had never been written
            }
        }
    }

    /** In the usual place of this system. */
    static Settings ofUser() {
        return new Settings(folder().resolve("settings.properties"));
    }

    /** The program's own folder among the user's. */
    static Path folder() {
        return ConfigFolder.path();
    }

    /** The folder for what the program keeps for itself. */
    Path home() {
        Path folder = file == null ? null : file.toAbsolutePath().getParent();
        return folder == null ? Path.of(System.getProperty("java.io.tmpdir"), "orlop") : folder;
    }

    /** Where journals lie; empty if nothing is to be remembered. */
    Optional<Path> journals() {
        return file == null ? Optional.empty() : Optional.of(home().resolve("journals"));
    }

    /** Whether nothing was ever remembered: the program has not been used here before. */
    boolean fresh() {
        return file != null && !Files.exists(file);
    }

    boolean flag(String key, boolean otherwise) {
        return Boolean.parseBoolean(properties.getProperty(key, Boolean.toString(otherwise)));
    }

    void rememberFlag(String key, boolean flag) {
        rememberWord(key, Boolean.toString(flag));
    }

    /** A word that was remembered, or else this one. */
    String word(String key, String otherwise) {
        return properties.getProperty(key, otherwise);
    }

    /** Remembers a word. */
    void rememberWord(String key, String word) {
        properties.setProperty(key, word);
        keep();
    }

    /** A whole number that was remembered, or else this one. */
    int number(String key, int otherwise) {
        String text = properties.getProperty(key, "");
        return text.matches("-?\\d{1,9}") ? Integer.parseInt(text) : otherwise;
    }

    /** Remembers a whole number. */
    void rememberNumber(String key, int number) {
        rememberWord(key, Integer.toString(number));
    }

    void forget(String key) {
        properties.remove(key);
        keep();
    }

    /** The files that were open last, the newest first. */
    List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (int i = 1; i <= RECENT; i++) {
            String name = properties.getProperty("recent." + i);
            if (name != null) {
                files.add(Path.of(name));
            }
        }
        return files;
    }

    void opened(Path opened) {
        List<Path> files = new ArrayList<>(recent());
        Path absolute = opened.toAbsolutePath().normalize();
        files.remove(absolute);
        files.add(0, absolute);
        remember(files);
    }

    /** A file that is no more where it was stands among the last ones no longer. */
    void gone(Path file) {
        List<Path> files = new ArrayList<>(recent());
        if (files.remove(file.toAbsolutePath().normalize())) {
            remember(files);
        }
    }

    private void remember(List<Path> files) {
        for (int i = 1; i <= RECENT; i++) {
            if (i <= files.size()) {
                properties.setProperty("recent." + i, files.get(i - 1).toString());
            } else {
                properties.remove("recent." + i);
            }
        }
        keep();
    }

    private void keep() {
        if (file == null) {
            return;
        }
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            try (Writer out = Files.newBufferedWriter(file)) {
                properties.store(out, null);
            }
        } catch (IOException e) {
            // a convenience: no reason to disturb the work at the drawing
            properties.remove("unkept");
        }
    }
}
