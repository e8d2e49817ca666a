package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Areas that are left to us, and least areas of all cables. */
@SuppressWarnings("NullAway") // a null fails the test
class SizingTest {
    private static CableResult cable(Study s, String id) {
        return s.governing().cables().get(id);
    }

    private static Sketch circuit(double watts, double lengthM) {
        return Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .fuse("F1", "iso8820-c", 10)
                .power("E1", watts)
                .link("GB1.1", "F1.1")
                .auto("W1", "F1.2", "E1.1", lengthM);
    }

    @Test
    void a_short_thin_circuit_takes_the_least_area_for_strength() {
        CableResult w = cable(circuit(24, 2).study(), "W1");

        assertThat(w.areaMm2()).isEqualTo(1); // ISO 10133:2012 7.7: single conductors at least 1 mm²
        assertThat(w.governedBy()).isEqualTo(GovernedBy.MECHANICAL);
    }

    @Test
    void a_long_circuit_is_governed_by_its_drop_and_stays_within_the_limit() {
        Study s = circuit(120, 25).study();
        ComponentResult load = s.governing().components().get("E1");

        assertThat(cable(s, "W1").governedBy()).isEqualTo(GovernedBy.DROP);
        assertThat(load.dropFromSourcePercent()).isLessThanOrEqualTo(load.dropLimitPercent());
    }

    @Test
    void one_size_less_would_be_too_thin() {
        Study s = circuit(120, 25).study();
        double area = cable(s, "W1").areaMm2();
        double smaller = area == 4 ? 2.5 : area == 6 ? 4 : area == 2.5 ? 1.5 : Double.NaN;
        Sketch thin = circuit(120, 25);
        thin.change(d -> d.with(d.cables().require("W1").withAreaMm2(smaller)));
        ComponentResult load = thin.study().governing().components().get("E1");

        assertThat(load.dropFromSourcePercent()).isGreaterThan(load.dropLimitPercent());
        assertThat(cable(thin.study(), "W1").leastAreaMm2()).isEqualTo(area);
    }

    @Test
    void the_fuse_in_front_of_a_circuit_governs_where_it_is_large() {
        Study s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .fuse("F1", "iso8820-e", 60)
                .power("E1", 24)
                .link("GB1.1", "F1.1")
                .auto("W1", "F1.2", "E1.1", 1)
                .study();

        assertThat(cable(s, "W1").governedBy()).isEqualTo(GovernedBy.DEVICE);
        assertThat(cable(s, "W1").ampacityA()).isGreaterThanOrEqualTo(60);
    }

    @Test
    void a_final_circuit_is_never_sized_below_its_load_whatever_the_simultaneity() {
        Study s = circuit(192, 2).condition("a").load("a", "E1", true, 0.25).study();

        assertThat(cable(s, "W1").currentA()).isLessThan(2.2);
        assertThat(cable(s, "W1").designCurrentA()).isCloseTo(8, within(1e-9));
    }

    @Test
    void an_installed_area_is_a_fact() {
        Sketch s = circuit(120, 25);
        s.change(d -> d.with(d.cables().require("W1").withAreaMm2(1.0)));
        CableResult w = cable(s.study(), "W1");

        assertThat(w.areaMm2()).isEqualTo(1.0);
        assertThat(w.auto()).isFalse();
        assertThat(w.leastAreaMm2()).isGreaterThan(1.0);
    }

    @Test
    void the_worst_condition_governs_and_is_named() {
        Study s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .bar("B")
                .power("E1", 600)
                .power("E2", 600)
                .auto("W0", "GB1.1", "B.a", 2)
                .cable("W1", "B.b", "E1.1", 2, 16)
                .cable("W2", "B.c", "E2.1", 2, 16)
                .condition("quiet")
                .condition("busy")
                .load("quiet", "E1", false, 1)
                .load("quiet", "E2", false, 1)
                .study();

        assertThat(cable(s, "W0").governingCondition()).isEqualTo("busy");
        assertThat(s.of("quiet").cables().get("W0").currentA()).isCloseTo(0, within(1e-9));
        assertThat(cable(s, "W0").currentA()).isGreaterThan(48);
        assertThat(cable(s, "W0").areaMm2())
                .isEqualTo(s.of("quiet").cables().get("W0").areaMm2());
    }

    @Test
    void a_common_feeder_is_thickened_where_copper_saves_most() {
        Sketch s = Sketch.dc(12, "abyc").supply("GB1", 12.6, 0.005).bar("B").auto("W0", "GB1.1", "B.a", 8);
        for (int i = 1; i <= 6; i++) {
            s.power("E" + i, 60).auto("W" + i, "B.t" + i, "E" + i + ".1", 3);
        }
        Study study = s.study();

        for (int i = 1; i <= 6; i++) {
            ComponentResult e = study.governing().components().get("E" + i);
            assertThat(e.dropFromSourcePercent()).isLessThanOrEqualTo(e.dropLimitPercent() + 1e-6);
        }
        assertThat(cable(study, "W0").areaMm2())
                .isGreaterThan(cable(study, "W1").areaMm2());
    }

    @Test
    void without_a_rule_set_one_is_taken_and_said() {
        Study s = Sketch.dc(24, "").supply("G", 25, 0.1).study();

        assertThat(s.governing().remarks()).extracting(r -> r.message().key()).contains("study.assumed.rule-set");
    }

    @Test
    void the_conductor_warms_with_its_current() {
        Study s = Sketch.dc(24, "iec60364")
                .supply("GB1", 25, 0.001)
                .current("E1", 30)
                .cable("W1", "GB1.1", "E1.1", 5, 4)
                .study();
        CableResult w = cable(s, "W1");
        double load = 30 / w.ampacityA();
        double expectedC = 30 + 60 * load * load; // θa + (θmax − θa)(I/Iz)²

        assertThat(w.conductorC()).isCloseTo(expectedC, within(1e-6));
        assertThat(w.dropV()).isCloseTo(30 * 2 * 4.95e-3 * 5 * (1 + 0.00393 * (expectedC - 20)), within(1e-6));
    }
}
