package orlop.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import orlop.study.Results;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code orlop export FILE -o OUT}. */
@Command(name = "export", resourceBundle = Main.BUNDLE, description = "${bundle:cli.export}")
final class ExportCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "${bundle:cli.file}")
    @SuppressWarnings("NullAway.Init") // set by picocli
    Path file;

    @Option(names = "-o", required = true, paramLabel = "OUT", description = "${bundle:cli.export-out}")
    @SuppressWarnings("NullAway.Init") // set by picocli
    Path out;

    @Option(names = "--sheet", paramLabel = "NAME", description = "${bundle:cli.sheet}")
    @Nullable
    String sheet;

    @Option(names = "--condition", paramLabel = "NAME", description = "${bundle:cli.condition}")
    @Nullable
    String condition;

    @Override
    public Integer call() throws UserError {
        Opened opened = Opened.file(file, 0);
        Results results = opened.results(condition);
        SheetFiles.write(opened, results, opened.sheet(sheet), out);
        return Main.DONE;
    }
}
