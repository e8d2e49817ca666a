package orlop.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Words;
import orlop.findings.Finding;
import orlop.findings.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code orlop findings FILE}. */
@Command(name = "findings", resourceBundle = Main.BUNDLE, description = "${bundle:cli.findings}")
final class FindingsCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli
    private CommandSpec spec;

    enum Format {
        TABLE,
        JSON
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
            description = "${bundle:cli.findings-format}")
    Format format = Format.TABLE;

    @Option(names = "-o", paramLabel = "OUT", description = "${bundle:cli.out}")
    @Nullable
    Path out;

    @Override
    public Integer call() throws UserError, IOException {
        Opened opened = Opened.file(file, 0);
        List<Finding> findings = opened.findingsIn(opened.results(condition));
        String text = switch (format) {
            case JSON -> JsonValues.text(j -> new FindingsJson(j, Words.english()).write(findings));
            case TABLE -> new FindingsTable().text(findings);
        };
        Output.text(text, out, spec.commandLine().getOut());
        boolean grave = findings.stream().anyMatch(f -> f.severity() != Severity.ADVICE && !f.accepted());
        return grave ? Main.FOUND : Main.DONE;
    }
}
