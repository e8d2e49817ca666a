package orlop.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.findings.Checker;
import orlop.findings.Finding;
import orlop.layout.Rect;
import orlop.scene.Palette;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneItem;
import orlop.scene.SceneRequest;
import orlop.store.DrawingFile;
import orlop.study.Results;
import orlop.study.Study;
import orlop.symbols.SymbolLibrary;

/** What stands on the sheets of the samples stays where it is when something is drawn in a far corner: by their SVG. */
class SheetStabilityTest {
    private static final Set<Role> DRAWN =
            Set.of(Role.COMPONENT, Role.BAR, Role.CABLE, Role.LINK, Role.LABEL, Role.FINDING, Role.PROPOSED, Role.NOTE);

    static Stream<Path> samples() throws Exception {
        return SheetInkTest.samples();
    }

    /** The groups of an exported sheet as they are written, by id. */
    private static Map<String, String> groups(Scene scene) throws Exception {
        Element root = DrawnSheet.parse(SvgExport.write(scene, Palette.LIGHT, SymbolLibrary.bundled(), false))
                .getDocumentElement();
        Map<String, String> groups = new LinkedHashMap<>();
        for (Element g : DrawnSheet.elements(root, "g")) {
            if (!g.getAttribute("id").isEmpty()) {
                groups.put(g.getAttribute("id"), written(g));
            }
        }
        return groups;
    }

    private static String written(Element g) throws Exception {
        Transformer plain = TransformerFactory.newDefaultInstance().newTransformer();
        plain.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
        StringWriter out = new StringWriter();
        plain.transform(new DOMSource(g), new StreamResult(out));
        return out.toString();
    }

    /** The emptiest corner of the field. */
    private static Point corner(Scene scene) {
        Rect f = scene.drawable();
        return Stream.of(
                        new Point(f.minX() + 10, f.minY() + 12.5),
                        new Point(f.maxX() - 15, f.minY() + 17.5),
                        new Point(f.minX() + 10, f.maxY() - 15),
                        new Point(f.maxX() - 15, f.maxY() - 15))
                .min(Comparator.comparingLong(p -> scene.items().stream()
                        .filter(i -> DRAWN.contains(i.role()))
                        .filter(i -> i.bounds().overlaps(Rect.around(p, p).grown(20)))
                        .count()))
                .orElseThrow();
    }

    /** Ids of what was moved or changed by a lamp in a corner, far from it. */
    private static List<String> moved(Drawing d, Results r, List<Finding> findings, String sheet) throws Exception {
        Scene before = SceneBuilder.bundled().build(SceneRequest.paper(d, r, findings, sheet));
        Point at = corner(before);
        String system = d.systems().stream().findFirst().orElseThrow().id();
        Component lamp = Component.of("Z1", Kind.LIGHTING, Place.at(sheet, at.xMm(), at.yMm()), List.of(system));
        Scene after = SceneBuilder.bundled().build(SceneRequest.paper(d.with(lamp), r, findings, sheet));
        assertThat(after.item(Role.COMPONENT, "Z1")).isPresent();
        return moved(before, after, Rect.around(at, at).grown(30));
    }

    private static List<String> moved(Scene before, Scene after, Rect near) throws Exception {
        Map<String, String> were = groups(before);
        Map<String, String> are = groups(after);
        List<String> moved = new ArrayList<>();
        assertThat(were).isNotEmpty();
        for (SceneItem i : before.items()) {
            boolean line = i.role() == Role.CABLE || i.role() == Role.LINK;
            boolean far = DRAWN.contains(i.role()) && (line || !i.bounds().overlaps(near));
            if (far && !Objects.equals(were.get(i.id()), are.get(i.id()))) {
                moved.add(i.id());
            }
        }
        return moved;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_lamp_in_a_far_corner_moves_no_other_text_and_no_line_in_any_condition(Path file) throws Exception {
        Drawing d = DrawingFile.load(file);
        Study study = Study.of(d);
        List<Finding> findings = Checker.check(study);
        List<Results> all = new ArrayList<>(study.byCondition().values());
        all.add(study.governing());
        for (Sheet s : d.sheets().values()) {
            for (Results r : all) {
                assertThat(moved(d, r, findings, s.id()))
                        .as("sheet " + s.id() + ", " + r.condition())
                        .isEmpty();
            }
        }
    }

    @Test
    void the_measuring_itself_finds_what_is_moved() throws Exception {
        Drawing d = DrawingFile.load(Path.of("sample-drawings", "coastal-sloop.orlop"));
        Study study = Study.of(d);
        Component pump = d.components().require("MA2");
        Place lower = pump.place().withAt(pump.place().at().plus(0, 5));
        Scene before = SceneBuilder.bundled().build(SceneRequest.paper(d, study.governing(), List.of(), "1"));
        Scene after = SceneBuilder.bundled()
                .build(SceneRequest.paper(d.with(pump.withPlace(lower)), study.governing(), List.of(), "1"));

        assertThat(moved(before, after, new Rect(0, 0, 1, 1))).contains("component-MA2", "label-MA2", "cable-W11");
    }
}
