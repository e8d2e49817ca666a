package orlop.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import orlop.scene.Palette;
import orlop.scene.RandomSheet;
import orlop.scene.Role;
import orlop.scene.SampleSheet;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneItem;

class SvgExportTest {
    private static final Scene SCENE = SceneBuilder.bundled().build(SampleSheet.request());
    private static final byte[] SVG = SvgExport.write(SCENE, Palette.LIGHT);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 50);
    }

    @Test
    void the_file_is_well_formed_without_a_document_type_and_true_to_size() throws Exception {
        Document d = DrawnSheet.parse(SVG);

        assertThat(new String(SVG, StandardCharsets.UTF_8)).doesNotContain("<!DOCTYPE", "<!ENTITY");
        assertThat(d.getDocumentElement().getAttribute("width")).isEqualTo("420mm");
        assertThat(d.getDocumentElement().getAttribute("height")).isEqualTo("297mm");
        assertThat(d.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 420 297");
    }

    @Test
    void every_item_is_a_group_with_a_unique_id_a_title_and_its_values() throws Exception {
        Document d = DrawnSheet.parse(SVG);
        List<Element> groups = DrawnSheet.elements(d.getDocumentElement(), "g");
        List<String> ids = new ArrayList<>();
        groups.forEach(g -> ids.add(g.getAttribute("id")));
        DrawnSheet.elements(d.getDocumentElement(), "symbol").forEach(s -> ids.add(s.getAttribute("id")));

        assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.matches("[A-Za-z][A-Za-z0-9_-]*"));
        assertThat(groups).hasSameSizeAs(SCENE.items());
        for (int i = 0; i < groups.size(); i++) {
            SceneItem item = SCENE.items().get(i);
            Element g = groups.get(i);
            assertThat(DrawnSheet.elements(g, "title").get(0).getTextContent())
                    .isEqualTo(item.title())
                    .isNotBlank();
            item.data()
                    .forEach((k, v) -> assertThat(g.getAttribute("data-" + k)).isEqualTo(v));
        }
    }

    @Test
    void ids_stay_safe_and_unique_for_tags_that_differ_in_odd_characters_alone() throws Exception {
        Scene odd =
                new Scene("1", "odd", 10, 10, SCENE.drawable(), List.of(), List.of(), List.of(), java.util.Map.of());
        assertThat(DrawnSheet.parse(SvgExport.write(odd, Palette.LIGHT))).isNotNull();
        assertThat(SCENE.items().stream().map(SceneItem::id)).doesNotHaveDuplicates();
        assertThat(SCENE.item(Role.LINK, "GC1.1~QB2.1").orElseThrow().id()).isEqualTo("link-GC1_2e_1_7e_QB2_2e_1");
    }

    @Test
    void every_symbol_that_is_used_is_defined_once() throws Exception {
        Element root = DrawnSheet.parse(SVG).getDocumentElement();
        List<String> defined = DrawnSheet.elements(root, "symbol").stream()
                .map(e -> "#" + e.getAttribute("id"))
                .toList();

        assertThat(DrawnSheet.elements(root, "use"))
                .isNotEmpty()
                .allSatisfy(u -> assertThat(defined).containsOnlyOnce(u.getAttribute("xlink:href")));
    }

    @Test
    void the_same_scene_gives_the_same_bytes_in_every_locale() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                Scene again = SceneBuilder.bundled().build(SampleSheet.request());
                assertThat(SvgExport.write(again, Palette.LIGHT)).isEqualTo(SVG);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void cautions_stand_on_the_sheet_and_in_the_description() throws Exception {
        Element root = DrawnSheet.parse(SVG).getDocumentElement();
        String desc = DrawnSheet.elements(root, "desc").get(0).getTextContent();

        assertThat(desc).contains("Design aid").contains("Local codes prevail").contains("licensed person");
        assertThat(SCENE.items()).anyMatch(i -> i.role() == Role.CAUTION);
    }

    @Test
    void the_font_inside_has_the_characters_of_the_sheet() throws Exception {
        String css = DrawnSheet.elements(DrawnSheet.parse(SVG).getDocumentElement(), "style")
                .get(0)
                .getTextContent();
        String base64 = css.substring(css.indexOf("base64,") + 7, css.indexOf(")"));
        byte[] file = java.util.Base64.getDecoder().decode(base64);
        java.awt.Font font =
                java.awt.Font.createFont(java.awt.Font.TRUETYPE_FONT, new java.io.ByteArrayInputStream(file));

        assertThat(font.canDisplayUpTo("2×6mm²·14")).isEqualTo(-1);
        assertThat(font.canDisplay('Ж')).isFalse();
        assertThat(file.length).isLessThan(100_000);
    }

    @Test
    void no_text_lies_on_a_text_a_symbol_or_a_line_of_the_sample() throws Exception {
        assertThat(DrawnSheet.read(SVG).overlaps()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_text_lies_on_a_text_a_symbol_or_a_line_of_a_random_sheet(long seed) throws Exception {
        Scene scene = SceneBuilder.bundled().build(RandomSheet.request(seed));

        assertThat(DrawnSheet.read(SvgExport.write(scene, Palette.LIGHT)).overlaps())
                .isEmpty();
    }

    @Test
    void the_overlap_test_itself_finds_an_overlap() throws Exception {
        String svg = new String(SVG, StandardCharsets.UTF_8);
        String moved = svg.replaceFirst(
                "(<g class=\"label\"[^>]*id=\"label-W5\"[^>]*><title>[^<]*</title><text[^>]*) x=\"[^\"]*\"",
                "$1 x=\"86\"");

        assertThat(moved).isNotEqualTo(svg);
        assertThat(DrawnSheet.read(moved.getBytes(StandardCharsets.UTF_8)).overlaps())
                .isNotEmpty();
    }
}
