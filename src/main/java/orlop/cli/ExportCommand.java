package orlop.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;
import orlop.drawing.Words;
import orlop.render.PngExport;
import orlop.study.Results;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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

    @Option(names = "--dpi", paramLabel = "DOTS", description = "${bundle:cli.dpi}")
    double dpi = SheetFiles.PNG_DPI;

    @Option(names = "--symbols", paramLabel = "FOLDER", description = "${bundle:cli.symbols-folder}")
    @Nullable
    Path symbols;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli
    private CommandSpec spec;

    @Override
    public Integer call() throws UserError {
        Opened opened = Opened.file(file, 0);
        Results results = opened.results(condition);
        if (!(dpi >= PngExport.LEAST_DPI && dpi <= PngExport.MOST_DPI)) {
            throw new UserError("cli.bad-dpi", Double.toString(dpi));
        }
        SheetFiles files = new SheetFiles(opened, results, SheetFiles.library(symbols));
        List<String> more = files.write(sheet, out, dpi);
        if (!more.isEmpty()) {
            String line = Words.english().text(Message.of("cli.goes-on", String.join(", ", more)));
            spec.commandLine().getOut().println(line);
        }
        return Main.DONE;
    }
}
