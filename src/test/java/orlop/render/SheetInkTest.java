package orlop.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Sheet;
import orlop.scene.GridDrawing;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;

/** Exported sheets, looked at by another library's geometry. */
class SheetInkTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, Integer.getInteger("seeds", 300));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothing_lies_on_anything_on_the_sheets_of_a_drawing_by_chance(long seed) throws Exception {
        GridDrawing d = GridDrawing.of(seed);
        Set<String> faults = new TreeSet<>();
        for (Sheet s : d.drawing().sheets().values()) {
            Scene scene = SceneBuilder.bundled().build(d.request(s.id()));
            InkedSheet ink = InkedSheet.read(SvgExport.write(scene, Palette.LIGHT));
            scene.routes()
                    .forEach((id, r) -> ink.ends(
                            scene.item(r.cable() ? orlop.scene.Role.CABLE : orlop.scene.Role.LINK, id)
                                    .orElseThrow()
                                    .id(),
                            r.from().toString(),
                            r.to().toString()));
            ink.faults().forEach(f -> faults.add("sheet " + s.id() + ": " + f));
        }
        assertThat(faults).isEmpty();
    }
}
