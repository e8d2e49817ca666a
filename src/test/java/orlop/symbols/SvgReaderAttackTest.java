package orlop.symbols;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a hostile or careless file may hold, and that each is refused within a second and by name. */
class SvgReaderAttackTest {
    private static final Duration ONE_SECOND = Duration.ofSeconds(1);
    private static final String ROOT = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-5 -5 10 10\">";
    private static final String DOT = "<circle r=\"1\"/>";

    /** The second is for the attack, not for loading classes on a busy machine. */
    @BeforeAll
    static void warm_up() throws SymbolRefusedException {
        String good = svg("<g transform=\"scale(.5)\"><path d=\"M0 0 A1 1 0 0 1 2 2\"/></g>");
        SvgReader.read("good.svg", good.getBytes(StandardCharsets.UTF_8));
    }

    private static String svg(String body) {
        return ROOT + "\n" + body + "\n" + DOT + "</svg>";
    }

    private static Arguments attack(String name, String file, int line, Refusal refusal, String detail) {
        return Arguments.of(name, file, line, refusal, detail);
    }

    private static Arguments inside(String name, String body, Refusal refusal, String detail) {
        return attack(name, svg(body), 2, refusal, detail);
    }

    static Stream<Arguments> documents() {
        String laughs = "<!DOCTYPE svg [<!ENTITY a0 \"ha\">\n"
                + Stream.iterate(1, i -> i <= 30, i -> i + 1)
                        .map(i -> "<!ENTITY a" + i + " \"" + ("&a" + (i - 1) + ";").repeat(10) + "\">\n")
                        .reduce("", String::concat)
                + "]>\n" + ROOT + "<title>&a30;</title></svg>";
        return Stream.of(
                attack("billion laughs", laughs, 0, Refusal.DOCTYPE, "<!DOCTYPE"),
                attack(
                        "external entity",
                        "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>\n" + svg("<title>&x;</title>"),
                        0,
                        Refusal.DOCTYPE,
                        "<!DOCTYPE"),
                attack(
                        "external document type",
                        "<!DOCTYPE svg SYSTEM \"http://127.0.0.1:9/x.dtd\">\n" + svg(""),
                        0,
                        Refusal.DOCTYPE,
                        "<!DOCTYPE"),
                attack("plain document type", "<!DOCTYPE svg>\n" + svg(""), 1, Refusal.DOCTYPE, "<!DOCTYPE"),
                attack(
                        "style sheet instruction",
                        "<?xml-stylesheet href=\"file:///tmp/a.css\"?>" + svg(""),
                        1,
                        Refusal.PROCESSING_INSTRUCTION,
                        "<?xml-stylesheet"),
                attack("deep nesting", "<g>".repeat(10_000), 1, Refusal.NOT_SVG, "g"),
                attack("deep nesting in svg", svg("<g>".repeat(10_000)), 2, Refusal.TOO_DEEP, "100"),
                attack("no svg", "<html xmlns=\"http://www.w3.org/1999/xhtml\"/>", 1, Refusal.NOT_SVG, "html"),
                attack("no namespace", "<svg viewBox=\"0 0 1 1\"/>", 1, Refusal.NOT_SVG, "svg"),
                attack(
                        "no view box",
                        "<svg xmlns=\"http://www.w3.org/2000/svg\">" + DOT + "</svg>",
                        1,
                        Refusal.NO_VIEW_BOX,
                        ""),
                attack("view box of nothing", ROOT.replace("10 10", "0 0") + "</svg>", 1, Refusal.VALUE, "viewBox"),
                attack("view box not a number", ROOT.replace("-5", "NaN") + "</svg>", 1, Refusal.NUMBER, "NaN"),
                attack("view box of three", ROOT.replace("10 10", "10") + "</svg>", 1, Refusal.VALUE, "viewBox"),
                attack(
                        "another scale",
                        ROOT.replace("viewBox", "width=\"20mm\" viewBox") + DOT + "</svg>",
                        1,
                        Refusal.SCALE,
                        "width=20mm"),
                attack(
                        "pixels",
                        ROOT.replace("viewBox", "width=\"10\" viewBox") + DOT + "</svg>",
                        1,
                        Refusal.SCALE,
                        "width=10"),
                attack("cut off", ROOT + "\n<g>\n<path d=\"M0 0", 3, Refusal.NOT_WELL_FORMED, ""),
                attack("no XML", "PNG\r\n", 1, Refusal.NOT_WELL_FORMED, ""),
                attack("an empty file", "", 1, Refusal.NOT_WELL_FORMED, ""),
                attack("nothing drawn", ROOT + "<path d=\"\" stroke=\"black\"/></svg>", 0, Refusal.EMPTY, ""),
                attack("drawn outside", svg("<circle r=\"6\"/>"), 0, Refusal.OUTSIDE_VIEW_BOX, "-6.0 -6.0 12.0 12.0"));
    }

    static Stream<Arguments> parts() {
        return Stream.of(
                inside("undeclared entity", "<title>&x;</title>", Refusal.ENTITY, "&x;"),
                inside("image", "<image href=\"file:///etc/passwd\"/>", Refusal.ELEMENT, "image"),
                inside("use", "<use href=\"#a\"/>", Refusal.ELEMENT, "use"),
                inside("definitions", "<defs><g id=\"a\"/></defs>", Refusal.ELEMENT, "defs"),
                inside("script", "<script>alert(1)</script>", Refusal.ELEMENT, "script"),
                inside("style sheet", "<style>@import url(file:///tmp/a.css);</style>", Refusal.ELEMENT, "style"),
                inside("foreign object", "<foreignObject/>", Refusal.ELEMENT, "foreignObject"),
                inside("animation", "<g><animate attributeName=\"x\"/></g>", Refusal.ELEMENT, "animate"),
                inside("nested svg", "<svg viewBox=\"0 0 1 1\"/>", Refusal.ELEMENT, "svg"),
                inside(
                        "upright, but no group",
                        "<circle id=\"upright\" r=\"1\"/>",
                        Refusal.UPRIGHT_NO_GROUP,
                        "circle id=upright"),
                inside(
                        "upright within upright",
                        "<g id=\"upright-a\"><g><g id=\"upright-b\">" + DOT + "</g></g></g>",
                        Refusal.UPRIGHT_WITHIN,
                        "upright-b"),
                inside(
                        "upright twice",
                        "<g id=\"upright\">" + DOT + "</g><g id=\"upright\">" + DOT + "</g>",
                        Refusal.UPRIGHT_TWICE,
                        "upright"),
                inside("upright of nothing", "<g id=\"upright-m\"/>", Refusal.UPRIGHT_EMPTY, "upright-m"),
                inside("a shape in a shape", "<path d=\"M0 0\"><g/></path>", Refusal.ELEMENT, "g"),
                inside("another vocabulary", "<x:p xmlns:x=\"urn:x\"/>", Refusal.ELEMENT, "x:p"),
                inside("text element", "<text>M</text>", Refusal.ELEMENT, "text"),
                attack("loose text", svg("M"), 0, Refusal.TEXT, "M"),
                inside("onload", "<g onload=\"alert(1)\"/>", Refusal.ATTRIBUTE, "onload"),
                inside("onclick", "<path onclick=\"alert(1)\" d=\"M0 0\"/>", Refusal.ATTRIBUTE, "onclick"),
                inside("style", "<path style=\"fill:url(file:///tmp/a.svg#p)\"/>", Refusal.ATTRIBUTE, "style"),
                inside("filter", "<g filter=\"url(#f)\"/>", Refusal.ATTRIBUTE, "filter"),
                inside("href", "<path href=\"#a\"/>", Refusal.ATTRIBUTE, "href"),
                inside(
                        "linked href",
                        "<g xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"#a\"/>",
                        Refusal.ATTRIBUTE,
                        "xlink:href"),
                inside("base", "<g xml:base=\"file:///\"/>", Refusal.ATTRIBUTE, "xml:base"),
                inside("fill url", "<path fill=\"url(file:///tmp/a.svg#p)\"/>", Refusal.VALUE, "fill=url(file:///"),
                inside("colour", "<path stroke=\"red\"/>", Refusal.VALUE, "stroke=red"),
                inside("NaN", "<circle r=\"NaN\"/>", Refusal.NUMBER, "NaN"),
                inside("infinity", "<line x1=\"Infinity\"/>", Refusal.NUMBER, "Infinity"),
                inside("overflow", "<line x1=\"1e999\"/>", Refusal.NUMBER, "1e999"),
                inside("hexadecimal", "<line x1=\"0x1p3\"/>", Refusal.NUMBER, "0x1p3"),
                inside("unit", "<line x1=\"3px\"/>", Refusal.NUMBER, "3px"),
                inside("negative radius", "<circle r=\"-1\"/>", Refusal.NUMBER, "r=-1"),
                inside("far away", "<line x1=\"1001\"/>", Refusal.NUMBER, "1001"),
                inside("thick", "<path stroke=\"black\" stroke-width=\"6\" d=\"M0 0H1\"/>", Refusal.NUMBER, "stroke-w"),
                inside("NaN in a path", "<path d=\"M0 0 L NaN 1\"/>", Refusal.PATH, ""),
                inside("overflow in a path", "<path d=\"M0 0 L 1e300 1\"/>", Refusal.NUMBER, "Infinity"),
                inside("NaN in points", "<polyline points=\"0,0 NaN,1\"/>", Refusal.NUMBER, "NaN"),
                inside("odd points", "<polyline points=\"0,0 1\"/>", Refusal.VALUE, "points=0,0 1"),
                inside("path without a start", "<path d=\"L1 1\"/>", Refusal.PATH, ""),
                inside("flat transform", "<g transform=\"scale(0)\"/>", Refusal.VALUE, "transform=scale(0)"),
                inside("broken transform", "<g transform=\"url(#a)\"/>", Refusal.VALUE, "transform=url(#a)"),
                inside(
                        "growing transforms",
                        "<g transform=\"scale(1e30)\">".repeat(20) + "<path d=\"M0 0H1\"/>",
                        Refusal.VALUE,
                        "transform="),
                inside("long value", "<g id=\"" + "a".repeat(201) + "\"/>", Refusal.VALUE, "id=aaa"),
                inside("huge path", "<path d=\"M0 0" + "h1".repeat(10_000) + "\"/>", Refusal.PATH_TOO_LONG, "20004"),
                inside("many curves", "<path d=\"M0 0h" + "0 ".repeat(9_000) + "\"/>", Refusal.PATH_TOO_LONG, "5001"),
                inside("many elements", "<g/>".repeat(3_000), Refusal.TOO_MANY_ELEMENTS, "2000"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"documents", "parts"})
    void an_attack_is_refused_by_name_and_in_time(String name, String file, int line, Refusal refusal, String detail) {
        SymbolRefusedException refused = refusalOf(file.getBytes(StandardCharsets.UTF_8));

        assertThat(refused.refusal()).as(refused.getMessage()).isEqualTo(refusal);
        assertThat(refused.file()).isEqualTo("attack.svg");
        assertThat(refused.detail()).startsWith(detail).hasSizeLessThanOrEqualTo(60);
        if (line > 0) {
            assertThat(refused.line()).isEqualTo(line);
        }
    }

    @Test
    void a_use_bomb_is_refused_at_its_first_part() {
        StringBuilder bomb = new StringBuilder("<defs><g id=\"a0\"><path d=\"M0 0\"/></g>");
        for (int i = 1; i < 30; i++) {
            bomb.append("<g id=\"a").append(i).append("\">");
            bomb.append(("<use href=\"#a" + (i - 1) + "\"/>").repeat(10)).append("</g>");
        }
        bomb.append("</defs><use href=\"#a29\"/>");

        SymbolRefusedException refused = refusalOf(svg(bomb.toString()).getBytes(StandardCharsets.UTF_8));

        assertThat(refused.refusal()).isEqualTo(Refusal.ELEMENT);
        assertThat(refused.detail()).isEqualTo("defs");
    }

    @ParameterizedTest
    @ValueSource(ints = {65 * 1024, 50_000_000})
    void a_huge_file_is_refused_unread(int bytes) {
        SymbolRefusedException refused = refusalOf(new byte[bytes]);

        assertThat(refused.refusal()).isEqualTo(Refusal.FILE_TOO_BIG);
        assertThat(refused.detail()).isEqualTo("64 kB");
    }

    @Test
    void what_is_quoted_from_a_file_is_short_and_printable() {
        SymbolRefusedException refused = refusalOf(
                svg("<g fill=\"\u202E evil&#10;" + "x".repeat(150) + "\"/>").getBytes(StandardCharsets.UTF_8));

        assertThat(refused.detail()).hasSize(60).startsWith("fill=  evil xxx").endsWith("…");
    }

    /** 3,000 damaged copies of a good file: each is either read or refused; nothing else comes out. */
    @Test
    void a_damaged_file_is_read_or_refused_and_nothing_else() {
        byte[] good = svg("<g transform=\"rotate(30) scale(.5)\"><path d=\"M0 0 A1 1 0 0 1 2 2 C1 1 2 2 3 3 Z\"/>"
                        + "<rect x=\"-1\" y=\"-1\" width=\"2\" height=\"2\" rx=\".5\"/></g>")
                .getBytes(StandardCharsets.UTF_8);
        Random random = new Random(20261125);
        int refusals = 0;
        for (int i = 0; i < 3_000; i++) {
            byte[] damaged = good.clone();
            for (int k = random.nextInt(3); k >= 0; k--) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(random.nextBoolean() ? 128 : 256);
            }
            try {
                assertThat(SvgReader.read("damaged.svg", damaged).outlines()).isNotEmpty();
            } catch (SymbolRefusedException e) {
                refusals++;
            }
        }
        assertThat(refusals).isBetween(1_000, 2_999);
    }

    private static SymbolRefusedException refusalOf(byte[] bytes) {
        return assertTimeoutPreemptively(
                ONE_SECOND,
                () -> catchThrowableOfType(SymbolRefusedException.class, () -> SvgReader.read("attack.svg", bytes)));
    }
}
