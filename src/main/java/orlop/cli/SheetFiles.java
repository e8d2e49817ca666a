package orlop.cli;

import java.nio.file.Path;
import java.util.Locale;
import orlop.drawing.Sheet;
import orlop.render.PngExport;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;
import orlop.study.Results;

/** Writes sheets as files, the form by the name's ending. */
final class SheetFiles {
    /** Dots per inch of a PNG: A3 gives 3,307 × 2,339 dots. */
    private static final double PNG_DPI = 200;

    private SheetFiles() {}

    static void write(Opened opened, Results results, Sheet sheet, Path out) throws UserError {
        Path fileName = out.getFileName();
        String name = fileName == null ? "" : fileName.toString().toLowerCase(Locale.ROOT);
        Scene scene = SceneBuilder.bundled()
                .build(SceneRequest.paper(opened.drawing(), results, opened.findings(), sheet.id()));
        if (name.endsWith(".svg")) {
            Output.bytes(SvgExport.write(scene, Palette.LIGHT), out);
        } else if (name.endsWith(".png")) {
            Output.bytes(PngExport.write(scene, Palette.LIGHT, PNG_DPI), out);
        } else {
            throw new UserError("cli.export-ending", out.toString());
        }
    }
}
