package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import orlop.drawing.Consumer;
import orlop.drawing.Drawing;
import orlop.study.CableResult;
import orlop.study.Results;
import orlop.study.Study;

@SuppressWarnings("NullAway") // a null fails the test
class PathProfileTest {
    private static final Study STUDY = Study.of(boat());

    private static Drawing boat() {
        Drawing d = SmallBoat.drawing();
        var lamp = d.components().find("EA1").orElseThrow();
        Consumer.Lighting light = (Consumer.Lighting) lamp.particulars();
        return d.with(lamp.withParticulars(RecordParts.with(light, "powerW", 60.0)));
    }

    private static PathProfile profile(String condition) {
        return PathProfile.of(STUDY, condition, "EA1").orElseThrow();
    }

    private static double dropV(String cable) {
        CableResult w = Objects.requireNonNull(STUDY.of("sail").cables().get(cable));
        return Objects.requireNonNull(w.dropV());
    }

    @Test
    void the_path_goes_from_the_source_to_the_load_without_gaps() {
        List<PathProfile.Station> stations = profile("sail").stations();

        assertThat(stations).extracting(PathProfile.Station::item).containsExactly("GB1", "W1", "QB1", "W2", "EA1");
        for (int i = 1; i < stations.size(); i++) {
            assertThat(stations.get(i).fromM()).isEqualTo(stations.get(i - 1).toM());
            assertThat(stations.get(i).fromV()).isCloseTo(stations.get(i - 1).toV(), within(1e-9));
        }
    }

    @Test
    void lengths_and_drops_add_up_to_those_of_the_cables() {
        PathProfile p = profile("sail");
        assertThat(p.lengthM()).isCloseTo(8.5, within(1e-9)); // 2 m and 6.5 m of the drawing
        double fall = p.stations().get(0).toV() - p.stations().get(4).toV();
        assertThat(fall).isPositive().isCloseTo(dropV("W1") + dropV("W2"), within(1e-9));
    }

    @Test
    void the_governing_profile_is_that_of_the_condition_with_the_greatest_drop() {
        assertThat(profile(Results.GOVERNING).condition()).isEqualTo("Under sail");
        assertThat(profile(Results.GOVERNING).dropPercent())
                .isEqualTo(Objects.requireNonNull(STUDY.of("sail").components().get("EA1"))
                        .dropFromSourcePercent());
    }

    @Test
    void a_device_that_is_bolted_to_the_source_does_not_hide_it() {
        Drawing d = SmallBoat.put(boat(), "FC1", orlop.drawing.Kind.FUSE, 50, 130);
        d = orlop.drawing.Edits.delete(java.util.Set.of("W1")).applyTo(d);
        d = d.with(orlop.drawing.Link.of(
                orlop.drawing.TerminalRef.parse("GB1.1", "from"), orlop.drawing.TerminalRef.parse("FC1.1", "to")));
        d = SmallBoat.run(d, "W1", "FC1.2", "QB1.2", 2);

        PathProfile p = PathProfile.of(Study.of(d), "sail", "EA1").orElseThrow();

        assertThat(p.stations())
                .extracting(PathProfile.Station::item)
                .containsExactly("GB1", "FC1", "W1", "QB1", "W2", "EA1");
        assertThat(p.stations().get(0).toV()).isCloseTo(p.stations().get(1).fromV(), within(1e-9));
    }

    /** A limit of 3 % of 24 V is 0.72 V, and it counts from the bar: the battery before it is being charged. */
    @Test
    void the_limit_counts_from_where_the_voltage_is_highest() {
        List<PathProfile.Station> charging = List.of(
                new PathProfile.Station("GB1", 0, 0, 26.6, 26.6, false),
                new PathProfile.Station("W1", 0, 3, 26.6, 26.7, true),
                new PathProfile.Station("W2", 3, 9, 26.7, 26.1, true));

        assertThat(new PathProfile("EA1", "", charging, 24, 2.5, 3.0).limitV()).isCloseTo(26.7 - 0.72, within(1e-9));
        assertThat(new PathProfile("EA1", "", charging, 24, 2.5, null).limitV()).isNaN();
        assertThat(new PathProfile("EA1", "", charging, 12, 2.5, 3.0).limitV()).isNaN(); // behind a converter
    }

    @Test
    void what_no_source_feeds_has_no_profile() {
        Drawing parted = orlop.drawing.Edits.delete(java.util.Set.of("W1")).applyTo(boat());

        assertThat(PathProfile.of(Study.of(parted), "sail", "EA1")).isEmpty();
        assertThat(PathProfile.of(STUDY, "sail", "no such thing")).isEmpty();
    }
}
