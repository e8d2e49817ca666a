package orlop.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import orlop.desk.ConfigFolder;
import orlop.drawing.Message;
import orlop.drawing.Sheet;
import orlop.drawing.Words;
import orlop.render.PdfExport;
import orlop.render.PngExport;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;
import orlop.study.Results;
import orlop.symbols.SymbolLibrary;
import orlop.symbols.SymbolRefusedException;
import orlop.symbols.UserSymbols;

/** Writes sheets, and the sheets of findings behind them, as files; the form by the name's ending. */
final class SheetFiles {
    /** Dots per inch of a PNG: A3 gives 3,307 × 2,339 dots. */
    static final double PNG_DPI = 200;

    private final Opened opened;
    private final Results results;
    private final SymbolLibrary library;
    private final SceneBuilder builder;

    SheetFiles(Opened opened, Results results, SymbolLibrary library) {
        this.opened = opened;
        this.results = results;
        this.library = library;
        this.builder = SceneBuilder.with(library);
    }

    /**
     * The program's symbols, and before them those of this folder, or of the user's own one.
     *
     * @throws UserError if something in the folder is refused
     */
    static SymbolLibrary library(@Nullable Path folder) throws UserError {
        Path used = folder == null ? ConfigFolder.symbols() : folder;
        try {
            return folder == null ? UserSymbols.ifThere(used) : UserSymbols.of(used);
        } catch (SymbolRefusedException e) {
            throw new UserError("cli.symbols", used.toString(), what(e));
        }
    }

    private static String what(SymbolRefusedException e) {
        Words words = Words.english();
        String key = e.refusal().key();
        String text = words.text(Message.of(key, e.file(), e.line(), e.detail()));
        return text + " " + words.pattern(e.refusal().cureKey()).orElse("");
    }

    /** The sheet of this name and what goes on behind it. */
    List<Scene> pages(Sheet sheet) {
        return builder.pages(SceneRequest.paper(opened.drawing(), results, opened.findings(), sheet.id()));
    }

    /**
     * Writes what was asked for.
     *
     * @param name of a sheet, or of a sheet of findings ({@code 1/F1}); null for the first, in a PDF for all
     * @return names of the sheets of findings that go on behind the one that was written; empty for a PDF
     */
    List<String> write(@Nullable String name, Path out, double dpi) throws UserError {
        Path fileName = out.getFileName();
        String ending = fileName == null ? "" : fileName.toString().toLowerCase(Locale.ROOT);
        if (ending.endsWith(".pdf")) {
            Output.bytes(PdfExport.write(document(name), Palette.LIGHT, library), out);
            return List.of();
        }
        List<Scene> pages = named(name);
        Scene scene = pages.get(0);
        if (ending.endsWith(".svg")) {
            Output.bytes(SvgExport.write(scene, Palette.LIGHT, library), out);
        } else if (ending.endsWith(".png")) {
            Output.bytes(PngExport.write(scene, Palette.LIGHT, dpi, library), out);
        } else {
            throw new UserError("cli.export-ending", out.toString());
        }
        return pages.subList(1, pages.size()).stream().map(Scene::sheet).toList();
    }

    private List<Scene> document(@Nullable String name) throws UserError {
        if (name != null) {
            return named(name);
        }
        opened.sheet(null); // says so if there is none
        List<Scene> all = new ArrayList<>();
        for (Sheet s : opened.drawing().sheets().values()) {
            all.addAll(pages(s));
        }
        return all;
    }

    /** The page of this name and those behind it. */
    private List<Scene> named(@Nullable String name) throws UserError {
        int slash = name == null ? -1 : name.lastIndexOf("/F");
        if (name == null || slash < 0 || opened.has(name)) {
            return pages(opened.sheet(name));
        }
        List<Scene> pages = pages(opened.sheet(name.substring(0, slash)));
        for (int i = 1; i < pages.size(); i++) {
            if (name.substring(slash).equals("/F" + i)) {
                return pages.subList(i, pages.size());
            }
        }
        throw new UserError(
                "cli.no-sheet",
                name,
                String.join(", ", pages.stream().map(Scene::sheet).toList()));
    }
}
