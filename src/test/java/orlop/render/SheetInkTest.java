package orlop.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.findings.Checker;
import orlop.findings.Finding;
import orlop.layout.Rect;
import orlop.scene.BarSpan;
import orlop.scene.GridDrawing;
import orlop.scene.Palette;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneItem;
import orlop.scene.SceneRequest;
import orlop.store.DrawingFile;
import orlop.study.CableResult;
import orlop.study.Results;
import orlop.study.Study;
import orlop.symbols.SymbolLibrary;

/** Exported sheets, looked at by another library's geometry. */
@SuppressWarnings("NullAway") // a null fails the test
class SheetInkTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 300);
    }

    static LongStream fewSeeds() {
        return LongStream.rangeClosed(1, 50);
    }

    static Stream<Path> samples() throws Exception {
        try (Stream<Path> files = Files.list(Path.of("sample-drawings"))) {
            List<Path> all =
                    files.filter(p -> p.toString().endsWith(".orlop")).sorted().toList();
            assertThat(all).isNotEmpty();
            return all.stream();
        }
    }

    private static byte[] svg(Scene scene) {
        return SvgExport.write(scene, Palette.LIGHT, SymbolLibrary.bundled(), false);
    }

    private static InkedSheet ink(Scene scene) throws Exception {
        InkedSheet ink = InkedSheet.read(svg(scene));
        for (Route r : scene.routes().values()) {
            SceneItem item =
                    scene.item(r.cable() ? Role.CABLE : Role.LINK, r.id()).orElseThrow();
            ink.ends(item.id(), r.from().toString(), r.to().toString());
        }
        return ink;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothing_lies_on_anything_on_the_sheets_of_a_drawing_by_chance(long seed) throws Exception {
        GridDrawing d = GridDrawing.of(seed);
        Set<String> faults = new TreeSet<>();
        for (Sheet s : d.drawing().sheets().values()) {
            SceneRequest request = d.request(s.id());
            Scene scene = SceneBuilder.bundled().build(request);
            InkedSheet ink = ink(scene);
            ink.faults().forEach(f -> faults.add("sheet " + s.id() + ": " + f));
            missing(request, ink).forEach(f -> faults.add("sheet " + s.id() + ": " + f));
            crossed(scene).forEach(f -> faults.add("sheet " + s.id() + ": " + f));
        }
        assertThat(faults).isEmpty();
    }

    /** Lines that leave one bar leave it in such an order that they don't cross one another. */
    private static List<String> crossed(Scene scene) {
        List<String> crossed = new ArrayList<>();
        for (BarSpan bar : scene.bars()) {
            List<Route> taps = scene.routes().values().stream()
                    .filter(r -> r.from().component().equals(bar.component())
                            || r.to().component().equals(bar.component()))
                    .toList();
            for (int i = 0; i < taps.size(); i++) {
                for (int j = 0; j < i; j++) {
                    if (InkedSheet.line(taps.get(i).points())
                            .crosses(InkedSheet.line(taps.get(j).points()))) {
                        crossed.add("taps of " + bar.component() + " cross: "
                                + taps.get(j).id() + " and " + taps.get(i).id());
                    }
                }
            }
        }
        return crossed;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void nothing_lies_on_anything_on_the_sheets_of_a_sample_in_any_condition(Path file) throws Exception {
        Drawing d = DrawingFile.load(file);
        Study study = Study.of(d);
        List<Finding> findings = Checker.check(study);
        List<Results> all = new ArrayList<>(study.byCondition().values());
        all.add(study.governing());
        Set<String> faults = new TreeSet<>();
        for (Sheet s : d.sheets().values()) {
            for (Results r : all) {
                SceneRequest request = SceneRequest.paper(d, r, findings, s.id());
                Scene scene = SceneBuilder.bundled().build(request);
                InkedSheet ink = ink(scene);
                ink.faults().forEach(f -> faults.add("sheet " + s.id() + ", " + r.condition() + ": " + f));
                crossed(scene).forEach(f -> faults.add("sheet " + s.id() + ": " + f));
                missing(request, ink).forEach(f -> faults.add("sheet " + s.id() + ": " + f));
            }
        }
        assertThat(faults).isEmpty();
    }

    /** Every component says its tag; every cable its tag, area, length and, where it is live, its three figures. */
    private static List<String> missing(SceneRequest request, InkedSheet ink) {
        Drawing d = request.drawing();
        List<String> missing = new ArrayList<>();
        Set<String> here = new HashSet<>();
        for (Component c : d.components().values()) {
            if (c.place().sheet().equals(request.sheet())) {
                here.add(c.id());
                if (!ink.text("label", c.id()).startsWith(c.id())) {
                    missing.add("no label of " + c.id());
                }
            }
        }
        for (Cable c : d.cables().values()) {
            if (here.contains(c.from().component()) && here.contains(c.to().component())) {
                String text = ink.text("label", c.id());
                CableResult r = request.results().cables().get(c.id());
                boolean live = r != null && r.live() && r.currentA() != null && r.dropPercent() != null;
                if (!text.startsWith(c.id()) || !text.contains("mm²") || !text.contains(" m")) {
                    missing.add("no tag, area or length of " + c.id() + ": " + text);
                } else if (live && !(text.contains(" A") && text.contains(" %"))) {
                    missing.add("no current or drop of " + c.id() + ": " + text);
                } else if (live && r.faultTo().maxA() != null && !text.contains("Ik ")) {
                    missing.add("no fault current of " + c.id() + ": " + text);
                }
            }
        }
        return missing;
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void a_component_in_a_far_corner_moves_no_other_text_and_no_cable(long seed) {
        GridDrawing d = GridDrawing.of(seed);
        Scene before = SceneBuilder.bundled().build(d.request("1"));
        Rect room = before.drawable();
        Place corner = Place.at("1", room.maxX() - 5, room.maxY() - 12.5);
        Drawing more = d.drawing().with(Component.of("Z1", Kind.LIGHTING, corner, List.of("24")));

        Scene after = SceneBuilder.bundled().build(d.request(more, "1"));

        assertThat(after.routes()).isEqualTo(before.routes());
        Rect near = Rect.of(corner.at().xMm(), corner.at().yMm(), 0, 0).grown(40);
        for (SceneItem i : before.items()) {
            boolean text = i.role() == Role.LABEL || i.role() == Role.FINDING || i.role() == Role.PROPOSED;
            if (text && !i.bounds().overlaps(near)) {
                assertThat(after.item(i.role(), i.subject())).as(i.id()).contains(i);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void a_sheet_that_was_laid_out_before_is_laid_out_alike_after_an_edit(long seed) {
        GridDrawing d = GridDrawing.of(seed);
        SceneBuilder builder = SceneBuilder.bundled();
        builder.build(d.request("1"));
        Drawing edited = d.drawing();
        int n = 0;
        for (Component c : d.drawing().components().values()) {
            boolean bar = c.kind() == Kind.BUSBAR || c.kind() == Kind.DISTRIBUTION_BOARD;
            if (c.place().sheet().equals("1") && !bar && n++ % 7 == seed % 7 && n < 30) {
                double dx = n % 2 == 0 ? 5 : -2.5;
                Place moved = c.place().withAt(c.place().at().plus(dx, n % 3 == 0 ? 2.5 : 0));
                edited = edited.with(c.withPlace(moved));
                assertThat(builder.build(d.request(edited, "1")))
                        .isEqualTo(SceneBuilder.bundled().build(d.request(edited, "1")));
            }
        }
        assertThat(builder.build(d.request("1")))
                .isEqualTo(SceneBuilder.bundled().build(d.request("1")));
        assertThat(n).isPositive();
    }

    @Test
    void the_measuring_itself_finds_what_is_wrong() throws Exception {
        GridDrawing d = GridDrawing.of(2);
        Scene scene = SceneBuilder.bundled().build(d.request("1"));
        String good = new String(svg(scene), StandardCharsets.UTF_8);
        Route cable = scene.routes().values().stream()
                .filter(r -> r.cable() && r.lengthMm() > 15)
                .findFirst()
                .orElseThrow();
        String copy = good.replace(
                "</svg>",
                "<g id=\"cable-copy\" class=\"cable\"><polyline points=\"" + points(cable)
                        + "\" stroke-width=\"0.7\"/></g><g id=\"label-odd\" class=\"label\"><text x=\"1\" y=\"9\""
                        + " font-size=\"2.5\" textLength=\"4\">odd</text></g></svg>");

        assertThat(InkedSheet.read(copy.getBytes(StandardCharsets.UTF_8)).faults())
                .anyMatch(f -> f.startsWith("lines on one another"))
                .anyMatch(f -> f.startsWith("line through symbol"))
                .anyMatch(f -> f.startsWith("text on LINE"))
                .anyMatch(f -> f.startsWith("outside the frame"));
    }

    private static String points(Route r) {
        List<String> all = new ArrayList<>();
        all.add(r.points().get(0).xMm() + "," + (r.points().get(0).yMm() - 12));
        r.points().forEach(p -> all.add(p.xMm() + "," + p.yMm()));
        return String.join(" ", all);
    }

    @Test
    void bars_over_one_another_are_drawn_and_it_is_said() {
        GridDrawing d = GridDrawing.of(2);
        Component bar = d.drawing().components().stream()
                .filter(c -> c.kind() == Kind.BUSBAR && c.place().sheet().equals("1"))
                .findFirst()
                .orElseThrow();
        Drawing two = d.drawing().with(Component.of("ZZ", Kind.BUSBAR, bar.place(), bar.systems()));

        Scene scene = SceneBuilder.bundled().build(d.request(two, "1"));

        assertThat(scene.item(Role.BAR, "ZZ")).isPresent();
        assertThat(scene.items())
                .filteredOn(i -> i.role() == Role.LABEL && i.subject().equals("ZZ"))
                .allMatch(i -> i.title().contains("drawn over " + bar.id()))
                .hasSize(1);
        assertThat(scene.items())
                .anyMatch(i -> i.role() == Role.MARGIN
                        && Objects.equals(i.data().get("rule"), "scene-drawn-over")
                        && i.title().contains("ZZ"));
    }
}
