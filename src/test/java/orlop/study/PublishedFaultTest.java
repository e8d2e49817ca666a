package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import orlop.drawing.Distribution;
import orlop.drawing.Excitation;
import orlop.drawing.Nature;
import orlop.drawing.Source;
import orlop.standards.PublishedCase;

/** Fault currents of published examples; sources and evidence stand in {@code published.json}. */
@SuppressWarnings("NullAway") // a null fails the test
class PublishedFaultTest {
    private static Distribution.Impedance transformer(JsonNode t, double c) {
        double va = t.get("kva").asDouble() * 1_000;
        double volts = t.get("lv_v").asDouble();
        double base = volts * volts / va;
        double z = t.get("uk_pct").asDouble() / 100 * base;
        double r = t.get("pkr_w").asDouble() / va * base;
        double x = Math.sqrt(z * z - r * r);
        double k = 0.95 * c / (1 + 0.6 * x / base); // IEC 60909-0, correction of network transformers
        return new Distribution.Impedance(k * r, k * x);
    }

    private static void line(Sketch s, String id, String from, String to, JsonNode line) {
        double km =
                line.get("length_m").asDouble() / 1_000 / line.path("parallel").asInt(1);
        JsonNode z = line.get("z_ohm_per_km");
        AcSketch.impedance(
                s, id, from, to, km * z.get(0).asDouble(), km * z.get(1).asDouble());
    }

    /** S01: the low-voltage example of IEC TR 60909-4: two transformers in parallel. */
    @Test
    void two_transformers_feed_a_fault_at_the_busbar_and_behind_a_cable_and_a_line() {
        PublishedCase p = PublishedCase.of("S01");
        JsonNode in = p.inputs();
        JsonNode q = in.get("network_feeder");
        double c = in.get("c").asDouble();
        double ratio = in.get("T1").get("lv_v").asDouble()
                / 1_000
                / in.get("T1").get("hv_kv").asDouble();
        double z = q.get("c").asDouble()
                * q.get("un_kv").asDouble()
                / Math.sqrt(3)
                / q.get("ikss_ka").asDouble()
                * ratio
                * ratio;
        double x = z / Math.hypot(1, q.get("r_over_x").asDouble());
        double emf = c * in.get("un_v").asDouble() / Math.sqrt(3);
        Sketch s = AcSketch.of(Nature.AC3, in.get("un_v").asDouble());
        s.add("Q", new Source.Supply(emf, 0, q.get("r_over_x").asDouble() * x, x, false));
        s.add("T1", transformer(in.get("T1"), c)).add("T2", transformer(in.get("T2"), c));
        s.bar("F1").bar("F2").bar("F3").bar("L3L4");
        s.link("Q.1", "T1.1").link("Q.1", "T2.1").link("T1.2", "F1.t1");
        line(s, "L1", "T2.2", "F2.l1", in.get("L1")); // the second transformer feeds the second section
        line(s, "L2", "F1.l2", "F2.l2", in.get("L2"));
        line(s, "L3", "F2.l3", "L3L4.l3", in.get("L3"));
        line(s, "L4", "L3L4.l4", "F3.l4", in.get("L4"));
        Results r = s.study().governing();

        assertThat(r.points().get("F1").fault().maxA() / 1_000)
                .isCloseTo(
                        p.expected().get("ikss_f1_ka").asDouble(),
                        within(p.tolerance().get("f1_ka").asDouble()));
        assertThat(r.points().get("F3").fault().maxA() / 1_000)
                .isCloseTo(
                        p.expected().get("ikss_f3_ka").asDouble(),
                        within(p.tolerance().get("f3_ka").asDouble()));
    }

    /** S02: two alternators in parallel, their reactances alone. */
    @Test
    void two_alternators_feed_a_fault_together() {
        PublishedCase p = PublishedCase.of("S02");
        Sketch s = AcSketch.of(Nature.AC3, p.inputs().get("v_line").asDouble()).bar("B");
        int n = 0;
        for (JsonNode g : p.inputs().get("gens")) {
            double kva = g.get("kva").asDouble();
            double percent = g.get("x_pct").asDouble();
            s.add("G" + ++n, new Source.Generator(kva, 0.8, 4, percent, percent, Excitation.SELF, null));
            s.link("G" + n + ".1", "B.g" + n);
        }

        assertThat(s.study().governing().points().get("B").fault().maxA())
                .isCloseTo(
                        p.expected().get("isc_a").asDouble(),
                        within(p.tolerance().get("a").asDouble()));
    }
}
