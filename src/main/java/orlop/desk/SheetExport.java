package orlop.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import orlop.drawing.Drawing;
import orlop.drawing.Sheet;
import orlop.render.PdfExport;
import orlop.render.PngExport;
import orlop.render.SvgExport;
import orlop.scene.Annotations;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;
import orlop.store.FileProblem;
import orlop.store.PlainFile;

/**
 * Sheets as files for others to read: one PDF of all, or a file a page for the rest.
 *
 * @param sheets ids, in the order in which they are written
 * @param condition id of the operating condition whose figures stand on them, or {@link orlop.study.Results#GOVERNING}
 * @param annotations which parts of the cables' annotations stand on them
 * @param form of the files
 */
public record SheetExport(List<String> sheets, String condition, Annotations annotations, Form form) {
    private static final double PNG_DPI = 200;

    /** The forms of file. */
    public enum Form {
        PDF,
        SVG,
        PNG;

        /** The ending of its files, with the dot. */
        public String suffix() {
            return "." + name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    public SheetExport {
        sheets = List.copyOf(sheets);
    }

    /**
     * Makes and writes the files. All are made before the first is written.
     *
     * @param target the file; where there is more than one page and the form isn't PDF, {@code -NUMBER} is put before the
     *     ending
     * @return what was written; nothing if none of the sheets is there
     * @throws FileProblem if a file could not be written; no file is left half written
     */
    public List<Path> write(Review review, Path target) throws FileProblem {
        return write(review, target, () -> false);
    }

    /**
     * The same, unless it is given up before the first file is written.
     *
     * @param givenUp asked after each page
     * @throws CancellationException if it was given up: every file is as it was
     */
    public List<Path> write(Review review, Path target, BooleanSupplier givenUp) throws FileProblem {
        return write(review, target, givenUp, there -> true);
    }

    /**
     * The same, asking before it writes over files of which nobody has been told yet.
     *
     * @param mayReplace whether what stands in these files, which are not the target, may go; not asked if there are none
     * @throws CancellationException if it may not, or it was given up: every file is as it was
     */
    public List<Path> write(Review review, Path target, BooleanSupplier givenUp, Predicate<List<Path>> mayReplace)
            throws FileProblem {
        Map<Path, byte[]> files = files(review, target, givenUp);
        List<Path> there = files.keySet().stream()
                .filter(f -> !f.equals(target) && Files.exists(f))
                .toList();
        goOn(() -> !there.isEmpty() && !mayReplace.test(there));
        goOn(givenUp);
        for (Map.Entry<Path, byte[]> f : files.entrySet()) {
            PlainFile.write(f.getKey(), f.getValue());
        }
        return List.copyOf(files.keySet());
    }

    private static void goOn(BooleanSupplier givenUp) {
        if (givenUp.getAsBoolean()) {
            throw new CancellationException("the export was given up");
        }
    }

    /** The files by their names. */
    private Map<Path, byte[]> files(Review review, Path target, BooleanSupplier givenUp) {
        List<Scene> pages = pages(review, givenUp);
        Map<Path, byte[]> files = new LinkedHashMap<>();
        if (form == Form.PDF) {
            if (!pages.isEmpty()) {
                files.put(target, PdfExport.write(pages, Palette.LIGHT, OwnSymbols.library()));
            }
            return files;
        }
        for (Scene s : pages) {
            goOn(givenUp);
            byte[] bytes = form == Form.SVG
                    ? SvgExport.write(s, Palette.LIGHT, OwnSymbols.library())
                    : PngExport.write(s, Palette.LIGHT, PNG_DPI, OwnSymbols.library());
            files.put(pages.size() == 1 ? target : numbered(target, name(review.drawing(), s)), bytes);
        }
        return files;
    }

    private List<Scene> pages(Review review, BooleanSupplier givenUp) {
        SceneBuilder builder = SceneBuilder.with(OwnSymbols.library());
        Drawing d = review.drawing();
        List<Scene> all = new ArrayList<>();
        for (String sheet : sheets) {
            goOn(givenUp);
            if (d.sheets().contains(sheet)) {
                all.addAll(builder.pages(SceneRequest.paper(d, review.study().of(condition), review.findings(), sheet)
                        .withAnnotations(annotations)));
            }
        }
        return all;
    }

    /** {@code 002} for a sheet, {@code 002-F1} for a sheet of findings behind it. */
    private static String name(Drawing d, Scene s) {
        int slash = s.sheet().lastIndexOf("/F");
        String id = slash < 0 ? s.sheet() : s.sheet().substring(0, slash);
        String number = d.sheets().find(id).map(Sheet::number).orElse(id);
        String name = number.isEmpty() ? id : number;
        return slash < 0 ? name : name + "-" + s.sheet().substring(slash + 1);
    }

    private static Path numbered(Path target, String number) {
        String name = String.valueOf(target.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 ? "" : name.substring(dot);
        return target.resolveSibling(stem + "-" + number.replaceAll("[\\\\/:*?\"<>|]", "-") + ending);
    }
}
