package orlop.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Sheet;
import orlop.findings.Checker;
import orlop.findings.Finding;
import orlop.store.DrawingFile;
import orlop.store.FileProblem;
import orlop.study.Results;
import orlop.study.Study;
import orlop.study.StudyOptions;

/**
 * A drawing that a command has opened, studied and checked.
 *
 * @param drawing as it is in the file
 * @param study of all its conditions
 * @param findings of that study
 */
record Opened(Drawing drawing, Study study, List<Finding> findings) {
    /** The sample that the program starts with. */
    static final String MAIN_SAMPLE = "pilot-cutter.orlop";

    Opened {
        findings = List.copyOf(findings);
    }

    static Opened file(Path file, double faultOhm) throws UserError {
        if (!(faultOhm >= 0) || Double.isInfinite(faultOhm)) {
            throw new UserError("cli.bad-fault-ohm", Double.toString(faultOhm));
        }
        return of(load(file), faultOhm);
    }

    static Drawing load(Path file) throws UserError {
        try {
            return DrawingFile.load(file);
        } catch (FileProblem e) {
            throw new UserError(e);
        }
    }

    static Opened mainSample() throws UserError {
        return of(mainSampleDrawing(), 0);
    }

    static Drawing mainSampleDrawing() throws UserError {
        try (InputStream in = Opened.class.getResourceAsStream("/sample-drawings/" + MAIN_SAMPLE)) {
            if (in == null) {
                throw new IOException(MAIN_SAMPLE + " is not in the class path");
            }
            return DrawingFile.loadShipped(in.readAllBytes(), MAIN_SAMPLE);
        } catch (IOException e) {
            throw new IllegalStateException("the main sample cannot be read", e);
        } catch (FileProblem e) {
            throw new UserError(e);
        }
    }

    private static Opened of(Drawing drawing, double faultOhm) {
        Study study = Study.of(drawing, new StudyOptions(faultOhm), () -> false);
        return new Opened(drawing, study, Checker.check(study));
    }

    /**
     * The results of the condition that was asked for, by id or by name; the governing ones for null.
     *
     * @throws UserError if there is no such condition
     */
    Results results(@Nullable String condition) throws UserError {
        if (condition == null || condition.equalsIgnoreCase(Results.GOVERNING)) {
            return study.governing();
        }
        Results exact = study.byCondition().get(condition);
        if (exact != null) {
            return exact;
        }
        String asked = condition.toLowerCase(Locale.ROOT);
        for (OperatingCondition c : drawing.conditions().values()) {
            if (c.title().toLowerCase(Locale.ROOT).equals(asked)) {
                return study.of(c.id());
            }
        }
        throw new UserError(
                "cli.no-condition",
                condition,
                String.join(", ", study.byCondition().keySet()) + ", " + Results.GOVERNING);
    }

    /** The findings that hold in these results' condition; all of them for the governing ones. */
    List<Finding> findingsIn(Results r) {
        return r.condition().equals(Results.GOVERNING)
                ? findings
                : findings.stream()
                        .filter(f -> f.conditions().isEmpty() || f.conditions().contains(r.condition()))
                        .toList();
    }

    /** Whether a sheet has this id, number or title. */
    boolean has(String name) {
        return drawing.sheets().stream().anyMatch(s -> isCalled(s, name));
    }

    private static boolean isCalled(Sheet s, String name) {
        return s.id().equals(name) || s.number().equals(name) || s.title().equalsIgnoreCase(name);
    }

    /**
     * The sheet that was asked for, by id, number, title or place in the register; the first for null.
     *
     * @throws UserError if there is no such sheet, or none at all
     */
    Sheet sheet(@Nullable String name) throws UserError {
        int position = 0;
        for (Sheet s : drawing.sheets().values()) {
            if (name == null || isCalled(s, name)) {
                return s;
            }
        }
        for (Sheet s : drawing.sheets().values()) {
            if (Integer.toString(++position).equals(name)) {
                return s;
            }
        }
        List<String> names = drawing.sheets().stream().map(Sheet::id).toList();
        throw name == null
                ? new UserError("cli.no-sheets")
                : new UserError("cli.no-sheet", name, String.join(", ", names));
    }
}
