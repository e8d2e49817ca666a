package orlop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The fitted growth of times. */
class GrowthTest {
    @Test
    void what_grows_with_a_power_has_that_exponent() {
        List<Growth.Timing> timings =
                List.of(new Growth.Timing(1_000, 3), new Growth.Timing(4_000, 24), new Growth.Timing(16_000, 192));

        assertThat(Growth.exponent(timings)).isCloseTo(1.5, within(1e-12));
    }

    @Test
    void one_size_alone_or_a_time_of_nothing_tells_no_growth() {
        List<Growth.Timing> one = List.of(new Growth.Timing(1_000, 3), new Growth.Timing(1_000, 4));
        List<Growth.Timing> nothing = List.of(new Growth.Timing(1_000, 0), new Growth.Timing(2_000, 4));

        assertThatThrownBy(() -> Growth.exponent(one)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Growth.exponent(nothing)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_results_of_a_run_are_summed_up_series_by_series_without_the_smallest_size() throws IOException {
        String json = "["
                + result("study", 200, 0, 9) + "," + result("study", 1_000, 0, 2) + "," + result("study", 10_000, 0, 20)
                + "," + result("study", 1_000, 5, 2) + "]";

        assertThat(Growth.summary(new ObjectMapper().readTree(json)))
                .isEqualTo("study, mesh 0 %                    growth exponent 1.000  1000: 2.00 ms  10000: 20.0 ms\n");
    }

    private static String result(String name, int cables, int mesh, double score) {
        return "{\"benchmark\":\"orlop.bench.B." + name + "\",\"params\":{\"cables\":\"" + cables
                + "\",\"meshPercent\":\"" + mesh + "\"},\"primaryMetric\":{\"score\":" + score + "}}";
    }
}
