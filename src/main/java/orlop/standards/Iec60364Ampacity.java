package orlop.standards;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * IEC 60364-5-52 Annex B, copper in air, base 30 °C; columns PVC 70 °C and XLPE/EPR 90 °C.
 *
 * <p>The reference method follows from how the cable lies:
 *
 * <ul>
 *   <li>free air: E for cores in a sheath, F for singles (touching, or in trefoil); the tables of F begin at 25 mm², below
 *       that C is taken, which is lower;
 *   <li>on a surface: C; in a bunch: C, with the group factors of bunches;
 *   <li>conduit: B1 for singles, B2 for cores in a sheath;
 *   <li>in thermal insulation: A1 for singles, A2 for cores in a sheath.
 * </ul>
 *
 * <p>Groups (Table B.52.17): item 4 with E and F, item 2 with C in a single layer, item 1 in conduit, bunch and insulation.
 * One or two loaded conductors read the column for two; four that for three, times 0.86 for the loaded neutral. The
 * standard has no engine-space factor: there the air is taken at 50 °C at least, and the factor is common practice.
 */
final class Iec60364Ampacity implements Ampacity {
    private static final double BASE_C = 30;
    private static final double ENGINE_SPACE_C = 50;
    private static final Sourced LOADED_NEUTRAL = new Sourced(
            0.86, Provenance.MEMORY, "IEC 60364-5-52 523.6.3, Table E.52.1: neutral loaded besides three phases");

    private final Map<String, AmpacityColumns> tables = new TreeMap<>();
    private final AmbientFactors ambient = new AmbientFactors(BASE_C, CsvTable.load("ambient-iec60364.csv"));
    private final Map<String, FactorSteps> groups = new TreeMap<>();
    private final List<Double> areasMm2;

    Iec60364Ampacity() {
        for (CsvRow row : CsvTable.load("ampacity-iec60364.csv").rows()) {
            String key = key(row.word("method"), (int) row.number("loaded_conductors"));
            tables.computeIfAbsent(key, k -> new AmpacityColumns())
                    .add(row.number("column_c"), row.number("area_mm2"), cell(row));
        }
        for (CsvRow row : CsvTable.load("grouping-iec60364.csv").rows()) {
            groups.computeIfAbsent(row.word("item"), k -> new FactorSteps()).add(row);
        }
        areasMm2 = table("C", 2).areasMm2();
    }

    private static TableCell cell(CsvRow row) {
        String insulation = row.word("column_c").equals("70") ? "PVC 70 °C" : "XLPE 90 °C";
        String column =
                insulation + ", method " + row.word("method") + ", " + row.word("loaded_conductors") + " loaded";
        return new TableCell(
                "IEC 60364-5-52 Table " + row.word("table"),
                row.word("area_mm2") + " mm²",
                column,
                row.number("amps"),
                row.provenance(),
                row.source());
    }

    private static String key(String method, int loaded) {
        return method + "/" + loaded;
    }

    private AmpacityColumns table(String method, int loaded) {
        AmpacityColumns table = tables.get(key(method, loaded));
        if (table == null) {
            throw new IllegalStateException("ampacity-iec60364.csv has no rows for method " + method + ", " + loaded);
        }
        return table;
    }

    @Override
    public AmpacityResult of(CableSituation situation) {
        int loaded = situation.loadedConductors() <= 2 ? 2 : 3;
        String method = method(situation, loaded);
        return table(method, loaded)
                .with(situation.insulationC(), situation.areaMm2(), found -> corrected(situation, method, found));
    }

    private String method(CableSituation situation, int loaded) {
        boolean single = situation.construction() == Construction.SINGLE_CORE;
        return switch (situation.laying()) {
            case FREE_AIR -> single ? singlesInFreeAir(situation, loaded) : "E";
            case ON_SURFACE, BUNCHED -> "C";
            case CONDUIT -> single ? "B1" : "B2";
            case IN_INSULATION -> single ? "A1" : "A2";
        };
    }

    private String singlesInFreeAir(CableSituation situation, int loaded) {
        String method = loaded == 2 ? "F-2-touching" : "F-trefoil";
        double first = table(method, loaded).areasMm2().get(0);
        return situation.areaMm2() * (1 + Conductors.SAME_AREA) >= first ? method : "C";
    }

    private AmpacityResult corrected(CableSituation situation, String method, AmpacityColumns.Found found) {
        boolean taken = situation.engineSpace() && situation.ambientC() < ENGINE_SPACE_C;
        double ambientC = taken ? ENGINE_SPACE_C : situation.ambientC();
        if (ambientC >= found.columnC()) {
            return found.ambientTooWarm();
        }
        FactorSteps group = group(situation, method);
        Optional<Sourced> grouped = group.at(situation.circuits());
        if (grouped.isEmpty()) {
            return new AmpacityResult.NoValue(AmpacityResult.Reason.GROUP_ABOVE_TABLE, group.greatestCount());
        }
        List<CorrectionFactor> factors = new ArrayList<>();
        Sourced heat = ambient.at(found.columnC(), ambientC);
        addUnlessOne(factors, CorrectionFactor.Kind.AMBIENT, ambientC, taken ? takenAt50(heat) : heat);
        addUnlessOne(factors, CorrectionFactor.Kind.GROUPING, situation.circuits(), grouped.get());
        if (situation.loadedConductors() > 3) {
            addUnlessOne(factors, CorrectionFactor.Kind.LOADED_NEUTRAL, situation.loadedConductors(), LOADED_NEUTRAL);
        }
        return new AmpacityResult.Carries(found.cell(), factors, Set.of());
    }

    private FactorSteps group(CableSituation situation, String method) {
        boolean layer = situation.laying() == Laying.FREE_AIR || situation.laying() == Laying.ON_SURFACE;
        String item = layer ? (method.equals("C") ? "2" : "4") : "1";
        FactorSteps steps = groups.get(item);
        if (steps == null) {
            throw new IllegalStateException("grouping-iec60364.csv has no item " + item);
        }
        return steps;
    }

    private static Sourced takenAt50(Sourced heat) {
        return new Sourced(
                heat.value(),
                heat.provenance().weaker(Provenance.COMMON_PRACTICE),
                heat.source() + "; engine space taken at 50 °C (common practice, no source)");
    }

    private static void addUnlessOne(
            List<CorrectionFactor> factors, CorrectionFactor.Kind kind, double basis, Sourced factor) {
        if (factor.value() != 1) {
            factors.add(new CorrectionFactor(kind, basis, factor));
        }
    }

    @Override
    public List<Double> areasMm2() {
        return areasMm2;
    }
}
