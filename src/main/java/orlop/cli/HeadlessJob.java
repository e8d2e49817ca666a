package orlop.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;
import orlop.drawing.Sheet;
import orlop.drawing.Words;
import orlop.study.Results;

/**
 * The main job where no window can open: studies a drawing, writes each sheet as an annotated SVG and prints the table
 * and the findings.
 */
final class HeadlessJob {
    /** Set by the build, so that what it makes lies with its other results; elsewhere it is the working folder. */
    static final String FOLDER_PROPERTY = "orlop.outputFolder";

    private final PrintWriter out;

    HeadlessJob(PrintWriter out) {
        this.out = out;
    }

    /** @param file the drawing; null for the main sample */
    void run(@Nullable Path file) throws UserError {
        Opened opened = file == null ? Opened.mainSample() : Opened.file(file, 0);
        Results governing = opened.study().governing();
        out.print(new StudyTable().text(opened.drawing(), governing));
        out.println();
        out.print(new FindingsTable().text(opened.findings()));
        out.println();
        SheetFiles files = new SheetFiles(opened, governing, SheetFiles.library(null));
        boolean several = opened.drawing().sheets().size() > 1;
        for (Sheet s : opened.drawing().sheets().values()) {
            Path svg = svg(file, several ? "-" + s.id() : "");
            wrote(svg);
            for (String more : files.write(s.id(), svg, SheetFiles.PNG_DPI)) {
                Path next = svg(file, "-" + more.replace('/', '-'));
                files.write(more, next, SheetFiles.PNG_DPI);
                wrote(next);
            }
        }
        out.println(Words.english().text("cli.caution"));
        out.flush();
    }

    private void wrote(Path file) {
        out.println(Words.english().text(Message.of("cli.wrote", file.toString())));
    }

    /** Beside the file; for the sample, in the folder that the build names, else in the working folder. */
    private static Path svg(@Nullable Path file, String suffix) {
        Path source =
                file == null ? Path.of(System.getProperty(FOLDER_PROPERTY, "")).resolve(Opened.MAIN_SAMPLE) : file;
        String name = source.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return source.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + suffix + ".svg");
    }
}
