package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.findings.Finding;

/** From finding to finding by keys, without a screen. */
@Timeout(60)
class FindingKeysTest extends OnBench {
    FindingKeysTest() {
        super(TestBoat.drawing().with(ElectricalSystem.of("230", Nature.AC1, 230)));
    }

    @Test
    void the_next_finding_is_the_next_number_on_the_sheet() throws Exception {
        List<Integer> met = new ArrayList<>();
        int all = FindingPlaces.ofSheet(on.session().state()).size();
        for (int i = 0; i <= all; i++) {
            on.run(CommandId.NEXT_FINDING);
            HeadlessBench.onUi(() ->
                    FindingPlaces.ofSheet(
                                    on.session().state(),
                                    on.bench().canvas().scene().orElseThrow())
                            .stream()
                            .filter(n ->
                                    n.finding().equals(on.bench().pointing().finding()))
                            .findFirst()
                            .ifPresent(n -> met.add(n.label())));
        }

        assertThat(all).isGreaterThan(1);
        assertThat(met.subList(0, all)).isSorted();
        assertThat(met.get(all)).as("and round again").isEqualTo(met.get(0));
    }

    @Test
    void after_a_finding_is_cured_the_next_one_is_the_one_that_took_its_number() throws Exception {
        while (on.bench().pointing().finding() == null
                || on.bench().pointing().finding().cure() == null) {
            on.run(CommandId.NEXT_FINDING);
        }
        int cured = label();
        on.run(CommandId.CURE);
        on.run(CommandId.NEXT_FINDING);

        assertThat(label()).isEqualTo(cured);
    }

    private int label() {
        return FindingPlaces.ofSheet(
                        on.session().state(), on.bench().canvas().scene().orElseThrow())
                .stream()
                .filter(n -> n.finding().equals(on.bench().pointing().finding()))
                .findFirst()
                .orElseThrow()
                .label();
    }

    @Test
    void a_finding_that_somebody_lives_with_can_be_opened_again() throws Exception {
        on.run(CommandId.NEXT_FINDING);
        Finding first = Objects.requireNonNull(on.bench().pointing().finding());
        on.answers().line = "the yard knows";
        on.run(CommandId.ACCEPT);
        Finding lived = same(first);
        HeadlessBench.onUi(() -> on.bench().pointing().at(lived));
        assertThat(lived.acceptedReason()).isEqualTo("the yard knows");

        on.run(CommandId.WITHDRAW);

        assertThat(same(first).accepted()).isFalse();
        assertThat(on.session().state().drawing().accepted()).isEqualTo(start.accepted());
    }

    private Finding same(Finding f) {
        return Objects.requireNonNull(on.session().state().review()).findings().stream()
                .filter(g -> g.rule().equals(f.rule()) && g.place().equals(f.place()))
                .findFirst()
                .orElseThrow();
    }
}
