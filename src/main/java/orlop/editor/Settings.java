package orlop.editor;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import orlop.desk.ConfigFolder;
import orlop.store.FileProblem;
import orlop.store.PlainFile;

/**
 * What the program remembers from one day to the next: the look, and the files that were open last. Kept in one small
 * file, whole at every moment; if it can't be read or written, nothing is remembered and nothing else happens. Several
 * programs may run at the same time: each changes what it has to remember, and leaves the rest as it finds it.
 */
final class Settings {
    private static final int RECENT = 9;

    private final @Nullable Path file;
    private final Properties properties = new Properties();
    /** What was changed here since the file could last be written; no value for what is to be forgotten. */
    private final Map<String, Optional<String>> changed = new LinkedHashMap<>();

    private @Nullable FileProblem refusal;

    /** @param file where to remember; null for nowhere */
    Settings(@Nullable Path file) {
        this.file = file;
        read();
    }

    /** What stands in the file, if it can be read; else all stays as it is. */
    private void read() {
        if (file == null || !Files.isReadable(file)) {
            return;
        }
        try (Reader in = Files.newBufferedReader(file)) {
            Properties there = new Properties();
            there.load(in);
            properties.clear();
            properties.putAll(there);
        } catch (IOException | IllegalArgumentException e) {
            refusal = null; // what can't be read is as if it had never been written
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
        change(Map.of(key, Optional.of(word)));
    }

    /** Remembers several words in one step. */
    void rememberWords(Map<String, String> words) {
        Map<String, Optional<String>> all = new LinkedHashMap<>();
        words.forEach((key, word) -> all.put(key, Optional.of(word)));
        change(all);
    }

    /** Why what was last to be remembered will be forgotten when the program ends; empty if it won't. */
    Optional<FileProblem> refusal() {
        return Optional.ofNullable(refusal);
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
        change(Map.of(key, Optional.empty()));
    }

    /** The files that were open last, the newest first. */
    List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (int i = 1; i <= RECENT; i++) {
            path(properties.getProperty("recent." + i)).ifPresent(files::add);
        }
        return files;
    }

    /** A name written by hand, or on another system, may be none of a file here. */
    private static Optional<Path> path(@Nullable String name) {
        try {
            return Optional.ofNullable(name).map(Path::of);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    void opened(Path opened) {
        read();
        List<Path> files = new ArrayList<>(recent());
        Path absolute = opened.toAbsolutePath().normalize();
        files.remove(absolute);
        files.add(0, absolute);
        remember(files);
    }

    /** A file that is no more where it was stands among the last ones no longer. */
    void gone(Path file) {
        read();
        List<Path> files = new ArrayList<>(recent());
        if (files.remove(file.toAbsolutePath().normalize())) {
            remember(files);
        }
    }

    private void remember(List<Path> files) {
        Map<String, Optional<String>> all = new LinkedHashMap<>();
        for (int i = 1; i <= RECENT; i++) {
            all.put(
                    "recent." + i,
                    i <= files.size() ? Optional.of(files.get(i - 1).toString()) : Optional.empty());
        }
        change(all);
    }

    private void change(Map<String, Optional<String>> what) {
        changed.putAll(what);
        read();
        boolean another = false;
        for (Map.Entry<String, Optional<String>> c : changed.entrySet()) {
            String before = properties.getProperty(c.getKey());
            another |= !Optional.ofNullable(before).equals(c.getValue());
            c.getValue()
                    .ifPresentOrElse(w -> properties.setProperty(c.getKey(), w), () -> properties.remove(c.getKey()));
        }
        if (another || fresh()) {
            keep();
        } else {
            changed.clear();
            refusal = null;
        }
    }

    private void keep() {
        if (file == null) {
            return;
        }
        try {
            makeFolder(file.toAbsolutePath().getParent());
            PlainFile.write(file, text());
            changed.clear();
            refusal = null;
        } catch (FileProblem e) {
            refusal = e;
        }
    }

    private static void makeFolder(@Nullable Path folder) {
        try {
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            return; // the writing tells that the folder isn't there
        }
    }

    private byte[] text() {
        StringWriter out = new StringWriter();
        try {
            properties.store(out, null);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // there is no disk behind this writer
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }
}
