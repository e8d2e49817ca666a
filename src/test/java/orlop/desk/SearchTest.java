package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Words;

class SearchTest {
    private final Drawing d = Sample.of("pilot-cutter");
    private final QueueUi ui = new QueueUi();
    private final Session session = new Session(d, null, Review::of, Runnable::run, ui, e -> {
        throw new AssertionError(e);
    });

    private List<Search.Hit> find(String typed) {
        return new Search(Words.english()).find(session.state(), typed);
    }

    @Test
    void the_very_tag_comes_first() {
        assertThat(find("w1").get(0).item()).isEqualTo("W1");
        assertThat(find("w1")).extracting(Search.Hit::item).contains("W10");
    }

    @Test
    void names_and_kinds_are_found_on_every_sheet() {
        List<Search.Hit> fuses = find("fuse");

        assertThat(fuses).isNotEmpty().allSatisfy(h -> assertThat(h.sheet()).isNotEmpty());
        assertThat(fuses.stream().map(Search.Hit::sheet).distinct().count()).isGreaterThan(1);
        assertThat(find("windlass")).isNotEmpty();
    }

    @Test
    void a_value_is_found_by_its_number_with_comma_or_point_and_by_another_unit() {
        assertThat(find("2,5 mm2"))
                .isNotEmpty()
                .isEqualTo(find("2.5 mm²"))
                .allSatisfy(
                        h -> assertThat(d.cables().require(h.item()).areaMm2()).isEqualTo(2.5));
        assertThat(find("0.0025 km")).isEmpty();
        assertThat(find("1,5 kW")).isEqualTo(find("1500 W"));
    }

    @Test
    void words_of_a_standard_type_and_of_a_kind_may_be_mixed() {
        assertThat(find("class-t"))
                .isNotEmpty()
                .allSatisfy(h -> assertThat(h.item()).startsWith("F"));
    }

    @Test
    void words_of_a_finding_lead_to_its_item() {
        Drawing sketch = Sample.of("pilot-cutter-first-sketch");
        session.open(sketch, null);
        ui.runAll();
        var finding = java.util.Objects.requireNonNull(session.state().review()).findings().stream()
                .filter(f -> !f.accepted() && !f.place().item().isEmpty())
                .findFirst()
                .orElseThrow();

        assertThat(find(Words.english().text(finding.title())))
                .anySatisfy(h -> assertThat(h.finding()).isSameAs(finding));
    }

    @Test
    void nothing_is_found_for_blanks_and_nonsense() {
        assertThat(find("  ")).isEmpty();
        assertThat(find("zzzz")).isEmpty();
    }
}
