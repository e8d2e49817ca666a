package orlop.symbols;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgReaderTest {
    private static SvgDrawing read(String body) throws SymbolRefusedException {
        String svg = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><!-- a comment -->"
                + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"20mm\" height=\"20mm\" viewBox=\"-10 -10 20 20\""
                + " fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.5\"><title>Ω &amp; co</title>" + body
                + "</svg>";
        return SvgReader.read("test.svg", svg.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<path d='M-2 -3 H4 V5 Z'/>                                     | -2 -3 4 5",
                "<path d='m-2,-3 6 0 0 8z'/>                                    | -2 -3 4 5",
                "<path d='M-3 0 A3 3 0 0 1 0 -3 A3 3 0 0 1 3 0'/>                | -3 -3 3 0",
                "<path d='M0 0 Q2 -4 4 0 T8 0'/>                                |  0 -2 8 2",
                "<line x1='-1' y1='2' x2='3' y2='-4'/>                          | -1 -4 3 2",
                "<polyline points='0,0 1,2 3 -1'/>                              |  0 -1 3 2",
                "<polygon points='0 0 1 2 3 -1'/>                               |  0 -1 3 2",
                "<rect x='1' y='2' width='3' height='4'/>                       |  1  2 4 6",
                "<rect x='1' y='2' width='3' height='4' rx='1'/>                |  1  2 4 6",
                "<circle cx='1' cy='2' r='3'/>                                  | -2 -1 4 5",
                "<ellipse cx='1' cy='2' rx='3' ry='1'/>                         | -2  1 4 3",
                "<g transform='translate(1 2)'><circle r='3'/></g>              | -2 -1 4 5",
                "<g transform='rotate(90)'><line x2='4' y2='1'/></g>            | -1  0 0 4",
                "<g transform='scale(2)'><g transform='translate(1,0)'><line x2='1'/></g></g> | 2 0 4 0",
            })
    void each_shape_covers_what_it_should(String element, String expected) throws SymbolRefusedException {
        Outline outline = read(element).outlines().get(0);
        Bounds bounds = Bounds.around(outline.shape(), 0);

        double[] box = Numbers.list(expected, new Place("test", 0));
        assertThat(new double[] {bounds.minXMm(), bounds.minYMm(), bounds.maxXMm(), bounds.maxYMm()})
                .containsExactly(box, within(0.006));
    }

    @Test
    void a_line_is_stroked_with_the_inherited_width_and_its_bounds_count_the_ink() throws SymbolRefusedException {
        SvgDrawing drawing = read("<path d='M-5 0 H5'/>");

        assertThat(drawing.outlines()).hasSize(1);
        assertThat(drawing.outlines().get(0).strokeWidthMm()).isEqualTo(0.5);
        assertThat(drawing.ink()).isEqualTo(new Bounds(-5.25, -0.25, 5.25, 0.25));
    }

    @Test
    void an_area_may_be_filled_stroked_or_both() throws SymbolRefusedException {
        assertThat(read("<circle r='1' fill='black' stroke='none'/>").outlines())
                .extracting(Outline::strokeWidthMm)
                .containsExactly(0.0);
        assertThat(read("<g fill='#000'><circle r='1'/></g>").outlines())
                .extracting(Outline::filled)
                .containsExactly(true, false);
    }

    @Test
    void a_scaled_line_has_a_scaled_width() throws SymbolRefusedException {
        assertThat(read("<path transform='scale(2)' d='M0 0H1'/>")
                        .outlines()
                        .get(0)
                        .strokeWidthMm())
                .isEqualTo(1.0, within(1e-12));
    }

    @Test
    void coordinates_carry_no_tail_of_a_float() throws SymbolRefusedException {
        double[] at = new double[6];
        read("<path d='M.1 -.7 H1'/>")
                .outlines()
                .get(0)
                .shape()
                .getPathIterator(null)
                .currentSegment(at);

        assertThat(at[0]).isEqualTo(0.1);
        assertThat(at[1]).isEqualTo(-0.7);
    }

    @Test
    void what_stands_in_an_upright_group_moves_with_its_middle_and_is_not_turned() throws SymbolRefusedException {
        SvgDrawing drawing = read("<g id='upright-a' transform='translate(1 0)'><g><path d='M4 -1 H7'/></g>"
                + "<path d='M4 1 H5'/></g><g id='upright-b'><path d='M-2 0 V2'/></g><path id='other' d='M0 0 H1'/>");

        assertThat(drawing.outlines())
                .extracting(o -> o.upright() == null ? "" : o.upright().id())
                .containsExactly("upright-a", "upright-a", "upright-b", "");
        Upright a = drawing.outlines().get(0).upright();
        assertThat(a).isNotNull().isEqualTo(drawing.outlines().get(1).upright());
        assertThat(a.ink()).isEqualTo(new Bounds(4.75, -1.25, 8.25, 1.25));
        // The middle 6.5, 0 of a goes to 0, 6.5; b's -2, 1 to -1, -2.
        assertThat(a.ink(new Turn(90, false))).isEqualTo(new Bounds(-1.75, 5.25, 1.75, 7.75));
        assertThat(drawing.extent().at(new Turn(90, false))).isEqualTo(new Bounds(-1.75, -3.25, 1.75, 7.75));
        assertThat(drawing.ink()).isEqualTo(new Bounds(-2.25, -1.25, 8.25, 2.25));
    }

    @Test
    void a_symbol_may_be_one_sign() throws SymbolRefusedException {
        SvgDrawing drawing = read("<g id='upright'><path d='M2 0 H4'/></g>");

        assertThat(drawing.extent().at(new Turn(0, true))).isEqualTo(new Bounds(-4.25, -0.25, -1.75, 0.25));
        assertThat(drawing.extent().at(new Turn(270, false))).isEqualTo(new Bounds(-1.25, -3.25, 1.25, -2.75));
    }
}
