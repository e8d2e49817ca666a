package orlop.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Acceptance;
import orlop.drawing.Component;
import orlop.drawing.Edits;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Vessel;
import orlop.study.Sketch;

/** What a person has accepted, with a reason, and what comes to it later. */
@SuppressWarnings("NullAway") // a null fails the test
class AcceptedFindingsTest {
    @Test
    void an_accepted_finding_is_marked_and_stays() {
        Sketch s = CheckerTest.sound().power("E2", 60).cable("W2", "GB1.1", "E2.1", 5, 2.5);
        s.change(d -> Edits.accept(
                        new Acceptance("A1", "missing-fuse", "W2", "bilge pump", "owner", "", List.of(), Extras.NONE))
                .applyTo(d));

        assertThat(CheckerTest.only(s, "missing-fuse").acceptedReason()).isEqualTo("bilge pump");
    }

    @Test
    void what_is_accepted_is_what_was_said_then_and_nothing_said_later() {
        Sketch s = CheckerTest.sound();
        s.change(d -> d.with(Component.of("Q1", Kind.ISOLATOR, Place.at("1", 9, 9), List.of("24"))));
        Finding first = only(s, "assumed", "");
        assertThat(first.messageKeys()).containsExactly("study.assumed.device-ohm");
        Acceptance a = new Acceptance("A1", "assumed", "", "not bought", "", "", first.messageKeys(), Extras.NONE);
        s.change(d -> Edits.accept(a).applyTo(d));
        assertThat(only(s, "assumed", "").accepted()).isTrue();

        s.change(d -> d.withVessel(Vessel.named("")));
        Finding second = only(s, "assumed", "");
        assertThat(second.messageKeys()).contains("study.assumed.rule-set", "study.assumed.device-ohm");
        assertThat(second.accepted()).isFalse();
        assertThat(second.cure()).isNotNull();

        Acceptance both = new Acceptance("A2", "assumed", "", "both", "", "", second.messageKeys(), Extras.NONE);
        s.change(d -> Edits.accept(both).applyTo(d));
        assertThat(only(s, "assumed", "").acceptedReason()).isEqualTo("both");
    }

    private static Finding only(Sketch s, String rule, String item) {
        List<Finding> found = CheckerTest.check(s).stream()
                .filter(f -> f.rule().equals(rule) && f.place().item().equals(item))
                .toList();
        assertThat(found).as(rule).hasSize(1);
        return found.get(0);
    }
}
