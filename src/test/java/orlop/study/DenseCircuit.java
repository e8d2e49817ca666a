package orlop.study;

import java.util.Arrays;
import org.ejml.simple.SimpleMatrix;

/**
 * Newton's method on all node voltages of all islands at once, the full unsymmetrical matrix by dense LU: converters
 * are equations among the others, limits and diodes kinks in their laws. Nothing of it is shared with the program.
 */
final class DenseCircuit {
    private final RandomCircuit circuit;
    private double[] v;
    private double[] f = {};
    private SimpleMatrix j = new SimpleMatrix(1, 1);

    DenseCircuit(RandomCircuit circuit) {
        this.circuit = circuit;
        v = new double[circuit.nodes];
        Arrays.fill(v, 26);
    }

    /** The voltages of all nodes. */
    double[] solve() {
        double norm = assemble();
        for (int step = 0; step < 400 && norm > 1e-11; step++) {
            SimpleMatrix fall = j.solve(new SimpleMatrix(circuit.nodes, 1, true, f));
            double[] before = v;
            double share = 2;
            double better;
            do {
                share /= 2;
                v = before.clone();
                for (int k = 0; k < v.length; k++) {
                    v[k] = Math.max(0.2 * before[k], before[k] - share * fall.get(k, 0));
                }
                better = assemble();
            } while (!(better < norm * (1 - 0.01 * share)) && share > 1e-3);
            if (norm < 1e-9 && better >= norm) {
                v = before; // rounding
                return v;
            }
            norm = better;
        }
        if (!(norm <= 1e-9)) {
            throw new IllegalStateException("no dense solution, residual " + norm + " A");
        }
        return v;
    }

    private double assemble() {
        f = new double[circuit.nodes];
        j = new SimpleMatrix(circuit.nodes, circuit.nodes);
        circuit.elements.forEach(this::stamp);
        double sum = 0;
        for (double x : f) {
            sum += x * x;
        }
        return Math.sqrt(sum);
    }

    private void leave(int node, double amps, int by, double slope) {
        f[node] += amps;
        slope(node, by, slope);
    }

    private void slope(int node, int by, double slope) {
        j.set(node, by, j.get(node, by) + slope);
    }

    private void stamp(RandomCircuit.Element e) {
        double va = v[e.a()];
        switch (e.sort()) {
            case CABLE -> through(e, (va - v[e.b()]) / e.x(), 1 / e.x());
            case DIODE -> {
                double over = va - v[e.b()] - e.x();
                through(e, Math.max(0, over) / e.y(), over > 0 ? 1 / e.y() : 0);
            }
            case BATTERY -> leave(e.a(), (va - e.x()) / e.y(), e.a(), 1 / e.y());
            case LIMITED -> {
                double amps = (e.x() - va) / e.y();
                boolean inside = amps > 0 && amps < e.z();
                leave(e.a(), -Math.min(e.z(), Math.max(0, amps)), e.a(), inside ? 1 / e.y() : 0);
            }
            case CURRENT_SOURCE -> f[e.a()] -= e.x();
            case POWER_SOURCE -> {
                boolean limited = va * e.z() <= e.x();
                leave(e.a(), limited ? -e.z() : -e.x() / va, e.a(), limited ? 0 : e.x() / (va * va));
            }
            case RESISTANCE -> leave(e.a(), va / e.x(), e.a(), 1 / e.x());
            case CURRENT -> f[e.a()] += e.x();
            case POWER -> leave(e.a(), e.x() / va, e.a(), -e.x() / (va * va));
            case CONVERTER -> converter(e, va, v[e.b()]);
        }
    }

    private void through(RandomCircuit.Element e, double amps, double slope) {
        leave(e.a(), amps, e.a(), slope);
        slope(e.a(), e.b(), -slope);
        leave(e.b(), -amps, e.b(), slope);
        slope(e.b(), e.a(), -slope);
    }

    private void converter(RandomCircuit.Element e, double va, double vb) {
        double out = (e.x() - vb) / e.y();
        leave(e.b(), -out, e.b(), 1 / e.y());
        double watts = Math.max(0, vb * out) / e.z() + e.w();
        leave(e.a(), watts / va, e.a(), -watts / (va * va));
        if (vb * out > 0) {
            slope(e.a(), e.b(), (out - vb / e.y()) / e.z() / va);
        }
    }
}
