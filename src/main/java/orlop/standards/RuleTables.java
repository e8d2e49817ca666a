package orlop.standards;

import java.util.List;

/** The tables of all rule sets, by rule set. */
final class RuleTables {
    private final CsvTable areas = CsvTable.load("rule-areas.csv");
    private final CsvTable distances = CsvTable.load("rule-distances.csv");
    private final CsvTable drops = CsvTable.load("rule-drops.csv");

    List<CsvRow> areas(String ruleSet) {
        return of(areas, ruleSet);
    }

    List<CsvRow> distances(String ruleSet) {
        return of(distances, ruleSet);
    }

    List<CsvRow> drops(String ruleSet) {
        return of(drops, ruleSet);
    }

    private static List<CsvRow> of(CsvTable table, String ruleSet) {
        return table.rows().stream()
                .filter(r -> r.word("rule_set").equals(ruleSet))
                .toList();
    }
}
