package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import orlop.desk.Same;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/** A cable that is let go on another ends there in a junction, as one step of the history. */
class BranchTest extends OnBench {
    BranchTest() {
        super(TestBoat.drawing()
                .with(Component.of("E900", Kind.LIGHTING.defaults(), Place.at("1", 330, 200), List.of("24"))));
    }

    private String said() {
        return ((JLabel) on.named("status").orElseThrow()).getText();
    }

    private TerminalSpot terminal(String name) {
        return on.bench().canvas().scene().orElseThrow().terminals().stream()
                .filter(t -> t.terminal().toString().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The middle of its longest leg. */
    private Spot middle(String cable) {
        Scene scene = on.bench().canvas().scene().orElseThrow();
        Route route = Objects.requireNonNull(scene.routes().get(cable));
        List<Point> p = route.points();
        int longest = 0;
        for (int i = 0; i + 1 < p.size(); i++) {
            longest = length(p, i) > length(p, longest) ? i : longest;
        }
        return Spot.at(
                (p.get(longest).xMm() + p.get(longest + 1).xMm()) / 2,
                (p.get(longest).yMm() + p.get(longest + 1).yMm()) / 2,
                on.bench().canvas().viewport());
    }

    private static double length(List<Point> p, int leg) {
        return Math.hypot(
                p.get(leg + 1).xMm() - p.get(leg).xMm(),
                p.get(leg + 1).yMm() - p.get(leg).yMm());
    }

    private void drag(String from, Spot to) {
        TerminalSpot t = terminal(from);
        CableGesture g = new CableGesture(
                on.bench().canvas(),
                t,
                Spot.at(t.xMm(), t.yMm(), on.bench().canvas().viewport()));
        g.dragged(to);
        assertThat(on.session().state().drawing()).isSameAs(start);
        g.released(to);
    }

    @Test
    void a_cable_let_go_on_another_branches_off_it() throws Exception {
        HeadlessBench.onUi(() -> {
            drag("E900.1", middle("W12"));

            Drawing d = on.session().state().drawing();
            String id = on.session().state().soleSelection().orElseThrow();
            Cable branch = d.cables().require(id);
            Component junction = d.components().require(branch.to().component());
            assertThat(branch.from().toString()).isEqualTo("E900.1");
            assertThat(junction.kind()).isEqualTo(Kind.JUNCTION);
            assertThat(d.cables().stream()
                            .filter(w -> w.from().component().equals(junction.id())
                                    || w.to().component().equals(junction.id())))
                    .hasSize(3);
            double parts = d.cables().stream()
                    .filter(w -> !w.id().equals(id)
                            && (w.from().component().equals(junction.id())
                                    || w.to().component().equals(junction.id())))
                    .mapToDouble(w -> Objects.requireNonNull(w.lengthM()))
                    .sum();
            assertThat(parts).isEqualTo(start.cables().require("W12").lengthM());
            assertThat(said()).contains(junction.id(), "W12");
            on.session().undo();
            assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
        });
    }

    @Test
    void on_its_own_cable_it_is_none() throws Exception {
        HeadlessBench.onUi(() -> {
            Cable w = start.cables().require("W12");
            drag(w.to().toString(), middle("W12"));

            assertThat(on.session().state().drawing()).isSameAs(start);
            assertThat(said()).startsWith("No cable");
        });
    }
}
