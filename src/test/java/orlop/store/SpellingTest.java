package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
    private static final List<String> KNOWN = List.of("id", "at", "name", "from", "lengthM", "areaMm2", "parallel");

    @ParameterizedTest
    @CsvSource({
        "lenghtM,lengthM",
        "length,lengthM",
        "lengthm,lengthM",
        "Lenghtm,lengthM",
        "areaMm,areaMm2",
        "area_mm2,areaMm2",
        "form,from",
        "fron,from",
        "nam,name",
        "ID,id",
        "paralel,parallel"
    })
    void a_slip_is_seen(String written, String meant) {
        assertThat(Spelling.meant(written, KNOWN)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"colour", "x", "ad", "it", "frame", "norm", "width", "weight", "a-very-long-key-of-somebody-else"})
    void another_word_is_another_word(String written) {
        assertThat(Spelling.meant(written, KNOWN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"a,a,0", "ab,ba,1", "abc,ac,1", "abc,abxc,1", "abc,axc,1", "kitten,sitting,3", "'',abc,3", "ca,abc,3"})
    void slips_are_counted(String a, String b, int slips) {
        assertThat(Spelling.distance(a, b)).isEqualTo(slips);
        assertThat(Spelling.distance(b, a)).isEqualTo(slips);
    }
}
