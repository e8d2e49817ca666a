package orlop.render;

import java.nio.file.Files;
import java.nio.file.Path;
import orlop.scene.Palette;
import orlop.scene.SampleSheet;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;

final class Show {
    public static void main(String[] a) throws Exception {
        Scene s = SceneBuilder.bundled().build(SampleSheet.request());
        Files.write(Path.of(a[0] + "/sheet.svg"), SvgExport.write(s, Palette.LIGHT));
        Files.write(Path.of(a[0] + "/sheet.png"), PngExport.write(s, Palette.LIGHT, 110));
        for (int i = 1; i < a.length; i++) {
            long t = System.nanoTime();
            Scene r = SceneBuilder.bundled().build(orlop.scene.RandomSheet.request(Long.parseLong(a[i])));
            System.out.println(a[i] + " " + (System.nanoTime() - t) / 1e6 + " ms");
            Files.write(Path.of(a[0] + "/r" + a[i] + ".png"), PngExport.write(r, Palette.LIGHT, 110));
        }
        Files.write(Path.of(a[0] + "/dark.png"), PngExport.write(s, Palette.DARK, 110));
    }
}
