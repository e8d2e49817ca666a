package orlop.testing;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** See {@link XvfbTest}. */
final class XvfbTestExtension extends NeedExtension {

    /** Called by JUnit. */
    XvfbTestExtension() {
        super(requirement());
    }

    @Override
    @Nullable
    String missing() {
        String path = System.getenv().getOrDefault("PATH", "");
        boolean found = List.of(path.split(File.pathSeparator, -1)).stream()
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "Xvfb")));
        return found ? null : "no Xvfb";
    }
}
