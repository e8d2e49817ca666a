package orlop.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import orlop.desk.WorkingLines;
import orlop.drawing.Words;
import orlop.findings.Finding;
import orlop.study.Results;
import orlop.study.StudyOptions;
import orlop.study.Workings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code orlop study FILE}. */
@Command(name = "study", resourceBundle = Main.BUNDLE, description = "${bundle:cli.study}")
final class StudyCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli
    private CommandSpec spec;

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

    @Option(names = "--working", paramLabel = "TAG", description = "${bundle:cli.working}")
    @Nullable
    String working;

    @Option(names = "-o", paramLabel = "OUT", description = "${bundle:cli.out}")
    @Nullable
    Path out;

    @Override
    public Integer call() throws UserError, IOException {
        Opened opened = Opened.file(file, faultOhm);
        if (working != null) {
            Output.text(workingText(opened, working), out, spec.commandLine().getOut());
            return Main.DONE;
        }
        Results results = opened.results(condition);
        List<Finding> findings = opened.findingsIn(results);
        String text = switch (format) {
            case JSON -> JsonValues.text(j -> new StudyJson(j).write(opened.study(), results, findings));
            case CSV -> new StudyCsv().text(results);
            case TABLE -> new StudyTable().text(opened.drawing(), results);
        };
        Output.text(text, out, spec.commandLine().getOut());
        return Main.DONE;
    }

    /** How the figures of a cable or load came about, as text whatever the format. */
    private String workingText(Opened opened, String tag) throws UserError {
        Results results = opened.results(condition);
        Workings workings = Workings.of(opened.drawing(), new StudyOptions(faultOhm), () -> false);
        String text = new WorkingLines(Words.english()).text(workings.of(results.condition(), tag));
        if (text.isEmpty()) {
            throw new UserError("cli.no-working", tag);
        }
        return text;
    }
}
