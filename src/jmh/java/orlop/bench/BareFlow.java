package orlop.bench;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Drawing;
import orlop.study.CableResult;
import orlop.study.Results;

/**
 * The bare flow of a grown drawing by EJML's sparse Cholesky decomposition, for comparison: nodal equations, loads of
 * constant power, current and resistance by Newton's method. No faults, no areas, no protection, no results: what any
 * program that calculates such networks must do at least. The resistances are those that the study found.
 */
final class BareFlow {
    private static final double EMF_V = 26;
    private static final double INNER_OHM = 0.0005;

    private final int nodes;
    private final int[] from;
    private final int[] to;
    private final double[] siemens;
    private final Consumer.@Nullable PlainLoad[] loads; // by node
    private final int source;

    BareFlow(Drawing drawing, Results studied) {
        Map<String, Integer> node = new HashMap<>();
        nodes = drawing.components().size();
        // the leaves of the tree first: EJML has no ordering of its own for this, and so it fills in least
        drawing.components().values().forEach(c -> node.put(c.id(), nodes - 1 - node.size()));
        source = known(node.get("G"));
        loads = new Consumer.PlainLoad[nodes];
        for (Component c : drawing.components().values()) {
            if (c.particulars() instanceof Consumer.PlainLoad load) {
                loads[known(node.get(c.id()))] = load;
            }
        }
        from = new int[drawing.cables().size()];
        to = new int[from.length];
        siemens = new double[from.length];
        int n = 0;
        for (Cable w : drawing.cables().values()) {
            CableResult result = known(studied.cables().get(w.id()));
            from[n] = known(node.get(w.from().component()));
            to[n] = known(node.get(w.to().component()));
            double amps = known(result.currentA());
            double volts = known(result.dropV());
            siemens[n++] = Math.abs(amps) > 1e-12 ? amps / volts : 1;
        }
    }

    private static <T> T known(@Nullable T value) {
        return Objects.requireNonNull(value);
    }

    /** The greatest difference to the voltages of the study. */
    double differenceV(Drawing drawing, Results studied) {
        double[] volts = solve();
        double most = 0;
        int n = nodes - 1;
        for (Component c : drawing.components().values()) {
            double there = known(known(studied.points().get(c.id())).voltageV());
            most = Math.max(most, Math.abs(there - volts[n--]));
        }
        return most;
    }

    /** Voltages by node, after as many steps as bring the greatest change below 1e-10 V. */
    double[] solve() {
        double[] volts = new double[nodes];
        java.util.Arrays.fill(volts, EMF_V);
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
                LinearSolverFactory_DSCC.cholesky(FillReducing.IDENTITY);
        for (int step = 0; step < 30; step++) {
            DMatrixSparseTriplet matrix = new DMatrixSparseTriplet(nodes, nodes, 4 * from.length + nodes);
            DMatrixRMaj right = new DMatrixRMaj(nodes, 1);
            for (int e = 0; e < from.length; e++) {
                matrix.addItem(from[e], from[e], siemens[e]);
                matrix.addItem(to[e], to[e], siemens[e]);
                matrix.addItem(from[e], to[e], -siemens[e]);
                matrix.addItem(to[e], from[e], -siemens[e]);
            }
            matrix.addItem(source, source, 1 / INNER_OHM);
            right.set(source, 0, EMF_V / INNER_OHM);
            load(matrix, right, volts);
            DMatrixSparseCSC csc = DConvertMatrixStruct.convert(matrix, (DMatrixSparseCSC) null);
            csc.sortIndices(null);
            DMatrixSparseCSC summed = summed(csc);
            DMatrixRMaj found = new DMatrixRMaj(nodes, 1);
            if (!solver.setA(summed)) {
                throw new IllegalStateException("no operating point");
            }
            solver.solve(right, found);
            double moved = 0;
            for (int v = 0; v < nodes; v++) {
                moved = Math.max(moved, Math.abs(found.get(v, 0) - volts[v]));
                volts[v] = found.get(v, 0);
            }
            if (moved < 1e-10) {
                return volts;
            }
        }
        throw new IllegalStateException("not converged");
    }

    private void load(DMatrixSparseTriplet matrix, DMatrixRMaj right, double[] volts) {
        for (int v = 0; v < nodes; v++) {
            Consumer.PlainLoad load = loads[v];
            if (load == null) {
                continue;
            }
            switch (load.behaviour()) {
                case POWER -> {
                    double amps = known(load.powerW()) / volts[v];
                    matrix.addItem(v, v, -amps / volts[v]);
                    right.add(v, 0, -2 * amps);
                }
                case CURRENT -> right.add(v, 0, -known(load.currentA()));
                case RESISTANCE -> matrix.addItem(v, v, 1 / known(load.resistanceOhm()));
            }
        }
    }

    /** A triplet list names a place more than once, a compressed matrix may not. */
    private static DMatrixSparseCSC summed(DMatrixSparseCSC a) {
        DMatrixSparseCSC b = new DMatrixSparseCSC(a.numRows, a.numCols, a.nz_length);
        int n = 0;
        for (int col = 0; col < a.numCols; col++) {
            int begin = n;
            for (int i = a.col_idx[col]; i < a.col_idx[col + 1]; i++) {
                if (n > begin && b.nz_rows[n - 1] == a.nz_rows[i]) {
                    b.nz_values[n - 1] += a.nz_values[i];
                } else {
                    b.nz_rows[n] = a.nz_rows[i];
                    b.nz_values[n++] = a.nz_values[i];
                }
            }
            b.col_idx[col + 1] = n;
        }
        b.nz_length = n;
        b.indicesSorted = true;
        return b;
    }
}
