package orlop.standards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * IEC 60092-352: single-core cables at 45 °C by conductor temperature, up to six bunched without a factor.
 *
 * <p>Loaded cores in one sheath and more than six circuits bunched have their own factors. How the cable lies is not asked.
 * The base of 45 °C is that of engine spaces: there the air is taken at 45 °C at least.
 */
final class Iec60092Ampacity implements Ampacity {
    private static final double BASE_C = 45;

    private final AmpacityColumns cells = new AmpacityColumns();
    private final AmbientFactors ambient = new AmbientFactors(BASE_C, CsvTable.load("ambient-iec60092.csv"));
    private final FactorSteps cores = new FactorSteps();
    private final FactorSteps bunched = new FactorSteps();

    Iec60092Ampacity() {
        for (CsvRow row : CsvTable.load("ampacity-iec60092.csv").rows()) {
            TableCell cell = new TableCell(
                    "IEC 60092-352",
                    row.word("area_mm2") + " mm²",
                    row.word("column_c") + " °C, single core",
                    row.number("amps"),
                    row.provenance(),
                    row.source());
            cells.add(row.number("column_c"), row.number("area_mm2"), cell);
        }
        for (CsvRow row : CsvTable.load("factors-iec60092.csv").rows()) {
            switch (row.word("kind")) {
                case "cores" -> cores.add(row);
                case "bunched" -> bunched.add(row);
                default -> throw row.wrong("unknown \"kind\"");
            }
        }
    }

    @Override
    public AmpacityResult of(CableSituation situation) {
        return cells.with(situation.insulationC(), situation.areaMm2(), found -> corrected(situation, found));
    }

    private AmpacityResult corrected(CableSituation situation, AmpacityColumns.Found found) {
        double ambientC = situation.engineSpace() ? Math.max(BASE_C, situation.ambientC()) : situation.ambientC();
        if (ambientC >= found.columnC()) {
            return found.ambientTooWarm();
        }
        List<CorrectionFactor> factors = new ArrayList<>();
        add(factors, CorrectionFactor.Kind.AMBIENT, ambientC, Optional.of(ambient.at(found.columnC(), ambientC)));
        if (situation.construction() == Construction.MULTICORE) {
            int loaded = situation.loadedConductors();
            add(factors, CorrectionFactor.Kind.LOADED_CORES, loaded, cores.at(loaded));
        }
        add(factors, CorrectionFactor.Kind.GROUPING, situation.circuits(), bunched.at(situation.circuits()));
        return new AmpacityResult.Carries(found.cell(), factors, Set.of());
    }

    private static void add(
            List<CorrectionFactor> factors, CorrectionFactor.Kind kind, double basis, Optional<Sourced> factor) {
        Sourced sourced =
                factor.orElseThrow(() -> new IllegalStateException("factors-iec60092.csv has no step for " + basis));
        if (sourced.value() != 1) {
            factors.add(new CorrectionFactor(kind, basis, sourced));
        }
    }

    @Override
    public List<Double> areasMm2() {
        return cells.areasMm2();
    }
}
