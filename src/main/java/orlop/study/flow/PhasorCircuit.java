package orlop.study.flow;

import java.util.ArrayList;
import java.util.List;
import orlop.study.linear.Complex;
import orlop.study.linear.Patterns;

/**
 * An alternating-current circuit of one phase in r.m.s. phasors: nodes, the reference (number −1), parts between them.
 * Currents count from a through the part to b. Values can be changed, the structure can't once it is solved.
 */
public final class PhasorCircuit {
    /**
     * A part.
     *
     * @param kind {@link Part#RESISTOR} (an impedance), {@link Part#EMF} or a load
     * @param value electromotive force; of loads the active and, lagging, the reactive part: watts and var, amperes in
     *     and across the load's own voltage, siemens of the conductance and of the inductive susceptance
     * @param z impedance in ohms, 0 for a source that holds its voltage; of no meaning for loads
     */
    public record Piece(Part kind, int a, int b, Complex value, Complex z) {
        boolean ideal() {
            return kind == Part.EMF && z.equals(Complex.ZERO);
        }

        boolean follows() {
            return kind == Part.LOAD_POWER || kind == Part.LOAD_CURRENT;
        }

        Complex admittance() {
            return kind == Part.LOAD_CONDUCTANCE ? value.conjugate() : z.inverse();
        }

        /** Current from a to b at this voltage; not asked of a source that holds its voltage. */
        Complex current(Complex volts) {
            return switch (kind) {
                case LOAD_POWER -> value.times(volts.inverse()).conjugate();
                case LOAD_CURRENT ->
                    value.equals(Complex.ZERO)
                            ? Complex.ZERO
                            : volts.times(1 / volts.magnitude()).times(value.conjugate());
                case EMF -> volts.minus(value).times(z.inverse());
                default -> volts.times(admittance());
            };
        }
    }

    /**
     * Two windings on one core: {@code v(a2 b2) − ratio · v(a1 b1) = z · i}, i from a2 through the second winding to b2;
     * through the first flow {@code −ratio · i}.
     *
     * @param ratio turns of the second over turns of the first
     * @param z of both, seen from the second; not 0
     */
    public record Windings(int a1, int b1, int a2, int b2, double ratio, Complex z) {
        /** Its four nodes. */
        int[] nodes() {
            return new int[] {a1, b1, a2, b2};
        }

        /** By what each of them counts. */
        double[] weights() {
            return new double[] {-ratio, ratio, 1, -1};
        }
    }

    private final int nodes;
    private final Patterns patterns;
    private final List<Windings> windings = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();

    /**
     * A circuit of this many nodes and no parts.
     *
     * @param patterns of the equations of this and of other circuits of the same study
     */
    public PhasorCircuit(int nodes, Patterns patterns) {
        this.nodes = nodes;
        this.patterns = patterns;
    }

    Patterns patterns() {
        return patterns;
    }

    /** Adds an impedance that is not 0; returns its number. */
    public int impedance(int a, int b, Complex z) {
        return add(new Piece(Part.RESISTOR, a, b, Complex.ZERO, z));
    }

    /** Adds a source whose voltage stands at a against b; returns its number. */
    public int source(int a, int b, Complex emf, Complex z) {
        return add(new Piece(Part.EMF, a, b, emf, z));
    }

    /** Adds a load; returns its number. */
    public int load(Part kind, int a, int b, Complex value) {
        return add(new Piece(kind, a, b, value, Complex.ZERO));
    }

    /** Adds a transformer's pair of windings; returns its number among them. */
    public int windings(Windings pair) {
        windings.add(pair);
        return windings.size() - 1;
    }

    public int windingsCount() {
        return windings.size();
    }

    public Windings windings(int number) {
        return windings.get(number);
    }

    private int add(Piece piece) {
        pieces.add(piece);
        return pieces.size() - 1;
    }

    public int nodeCount() {
        return nodes;
    }

    public int partCount() {
        return pieces.size();
    }

    public Piece piece(int number) {
        return pieces.get(number);
    }

    public void setImpedance(int number, Complex z) {
        Piece p = pieces.get(number);
        pieces.set(number, new Piece(p.kind(), p.a(), p.b(), p.value(), z));
    }

    public void setValue(int number, Complex value) {
        Piece p = pieces.get(number);
        pieces.set(number, new Piece(p.kind(), p.a(), p.b(), value, p.z()));
    }
}
