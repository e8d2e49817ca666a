package orlop.testing;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** See {@link NeedsViewers}. */
final class NeedsViewersExtension extends NeedExtension {
    private static final List<String> PROGRAMS = List.of("rsvg-convert", "chromium");

    /** Called by JUnit. */
    NeedsViewersExtension() {
        super(requirement());
    }

    @Override
    @Nullable
    String missing() {
        return PROGRAMS.stream()
                .filter(p -> !isThere(p))
                .findFirst()
                .map(p -> "no " + p)
                .orElse(null);
    }

    private static boolean isThere(String program) {
        String path = System.getenv().getOrDefault("PATH", "");
        return List.of(path.split(File.pathSeparator, -1)).stream()
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }
}
