package orlop.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code orlop study FILE}. */
@Command(name = "study", resourceBundle = Words.BUNDLE, description = "${bundle:cli.study}")
final class StudyCommand implements Callable<Integer> {
    enum Format {
        TABLE,
        JSON,
        CSV
    }

    @Parameters(paramLabel = "FILE", description = "${bundle:cli.file}")
    @SuppressWarnings("NullAway.Init") // set by picocli
    Path file;

    @Option(names = "--condition", paramLabel = "NAME", description = "${bundle:cli.condition}")
    @Nullable
    String condition;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "table",
            description = "${bundle:cli.study-format}")
    Format format = Format.TABLE;

    @Option(names = "--fault-ohm", paramLabel = "R", description = "${bundle:cli.fault-ohm}")
    double faultOhm;

    @Option(names = "-o", paramLabel = "OUT", description = "${bundle:cli.out}")
    @Nullable
    Path out;

    @Override
    public Integer call() throws UserError {
        throw new UserError("cli.not-yet", "study");
    }
}
