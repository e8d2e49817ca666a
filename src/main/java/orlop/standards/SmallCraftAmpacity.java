package orlop.standards;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The small-craft tables: 33 CFR 183.425 Table 5 (rule set {@code abyc}) and the table of ISO 13297 / ISO 10133. One
 * conductor at 30 °C outside engine spaces; how it lies is not asked, only how many current-carrying conductors lie
 * together.
 *
 * <ul>
 *   <li>Engine space: the table's own factor (its base is 50 °C); in air above 50 °C the lower of it and the formula.
 *   <li>Elsewhere, air above 30 °C: √((θ − ambient)/(θ − 30)). Cooler air earns nothing: the tables give no credit.
 *   <li>Bundle: loaded conductors × circuits together. ABYC prints these factors for AC and for DC bundled with it; they
 *       are applied to any bundle here, which is the safe side.
 * </ul>
 */
final class SmallCraftAmpacity implements Ampacity {
    private static final double BASE_C = 30;
    private static final double ENGINE_SPACE_C = 50;

    private final AmpacityColumns cells = new AmpacityColumns();
    private final Set<Double> doubtedColumns = new HashSet<>();
    private final Map<Double, Optional<Sourced>> engineSpace = new TreeMap<>();
    private final Map<Double, Sourced> engineSpaceRefusals = new TreeMap<>();
    private final FactorSteps bundle = new FactorSteps();
    private final boolean engineSpaceDoubted;

    private SmallCraftAmpacity(CsvTable factors, boolean engineSpaceDoubted) {
        this.engineSpaceDoubted = engineSpaceDoubted;
        for (CsvRow row : factors.rows()) {
            switch (row.word("kind")) {
                case "bundle" -> bundle.add(row);
                case "engine-space" -> addEngineSpace(row);
                default -> throw row.wrong("unknown \"kind\"");
            }
        }
    }

    private void addEngineSpace(CsvRow row) {
        double columnC = row.number("column_c");
        if (row.text("factor").isEmpty()) {
            engineSpace.put(columnC, Optional.empty());
            engineSpaceRefusals.put(columnC, new Sourced(columnC, row.provenance(), row.source()));
        } else {
            engineSpace.put(columnC, Optional.of(row.sourced("factor")));
        }
    }

    /** 33 CFR 183.425 Table 5, rows by AWG. */
    static SmallCraftAmpacity abyc() {
        SmallCraftAmpacity made = new SmallCraftAmpacity(CsvTable.load("ampacity-abyc-factors.csv"), false);
        AwgSizes sizes = AwgSizes.published();
        for (CsvRow row : CsvTable.load("ampacity-abyc.csv").rows()) {
            AwgSize size = sizes.named(row.word("awg"));
            made.add(row, "33 CFR 183.425 Table 5", size.label(), size.areaMm2().value());
        }
        return made;
    }

    /** The table of ISO 13297 / ISO 10133, from memory; its 60 °C column and its engine-space factors are doubted. */
    static SmallCraftAmpacity iso13297() {
        SmallCraftAmpacity made = new SmallCraftAmpacity(CsvTable.load("ampacity-iso13297-factors.csv"), true);
        for (CsvRow row : CsvTable.load("ampacity-iso13297.csv").rows()) {
            made.add(row, "ISO 13297 Table A.1", row.word("area_mm2") + " mm²", row.number("area_mm2"));
            if (!row.yes("may_govern")) {
                made.doubtedColumns.add(row.number("column_c"));
            }
        }
        return made;
    }

    private void add(CsvRow row, String table, String label, double areaMm2) {
        double columnC = row.number("column_c");
        String column = row.word("column_c") + " °C";
        cells.add(
                columnC,
                areaMm2,
                new TableCell(table, label, column, row.number("amps"), row.provenance(), row.source()));
    }

    @Override
    public AmpacityResult of(CableSituation situation) {
        return cells.with(situation.insulationC(), situation.areaMm2(), found -> corrected(situation, found));
    }

    private AmpacityResult corrected(CableSituation situation, AmpacityColumns.Found found) {
        double columnC = found.columnC();
        if (situation.ambientC() >= columnC) {
            return found.ambientTooWarm();
        }
        Sourced refused = engineSpaceRefusals.get(columnC);
        if (situation.engineSpace() && refused != null) {
            return new AmpacityResult.NoValue(AmpacityResult.Reason.NOT_PERMITTED_IN_ENGINE_SPACE, refused);
        }
        List<CorrectionFactor> factors = new ArrayList<>();
        heat(situation, columnC).ifPresent(factors::add);
        int conductors = situation.loadedConductors() * situation.circuits();
        Sourced bundled = bundle.at(conductors).orElseThrow();
        if (bundled.value() != 1) {
            factors.add(new CorrectionFactor(CorrectionFactor.Kind.BUNDLE, conductors, bundled));
        }
        return new AmpacityResult.Carries(found.cell(), factors, doubts(situation, columnC));
    }

    private Optional<CorrectionFactor> heat(CableSituation situation, double columnC) {
        double ambientC = situation.ambientC();
        Optional<CorrectionFactor> byFormula = ambientC <= BASE_C
                ? Optional.empty()
                : Optional.of(new CorrectionFactor(
                        CorrectionFactor.Kind.AMBIENT, ambientC, AmbientFactors.byFormula(columnC, ambientC, BASE_C)));
        if (!situation.engineSpace()) {
            return byFormula;
        }
        Sourced printed = engineSpaceFactor(columnC);
        boolean hotter =
                ambientC > ENGINE_SPACE_C && byFormula.orElseThrow().factor().value() < printed.value();
        if (hotter) {
            return byFormula;
        }
        return printed.value() == 1
                ? Optional.empty()
                : Optional.of(new CorrectionFactor(CorrectionFactor.Kind.ENGINE_SPACE, ENGINE_SPACE_C, printed));
    }

    private Sourced engineSpaceFactor(double columnC) {
        Optional<Sourced> factor = engineSpace.get(columnC);
        if (factor == null || factor.isEmpty()) {
            throw new IllegalStateException("no engine-space factor for the column of " + columnC + " °C");
        }
        return factor.get();
    }

    private Set<AmpacityResult.Doubt> doubts(CableSituation situation, double columnC) {
        Set<AmpacityResult.Doubt> doubts = EnumSet.noneOf(AmpacityResult.Doubt.class);
        if (doubtedColumns.contains(columnC)) {
            doubts.add(AmpacityResult.Doubt.INSULATION_COLUMN_UNCHECKED);
        }
        if (situation.engineSpace() && engineSpaceDoubted) {
            doubts.add(AmpacityResult.Doubt.ENGINE_SPACE_FACTOR_UNCHECKED);
        }
        return doubts;
    }

    @Override
    public List<Double> areasMm2() {
        return cells.areasMm2();
    }
}
