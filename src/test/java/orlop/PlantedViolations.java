package orlop;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Which classes under {@code planted} were planted for which rule of {@link ArchitectureRules}. */
final class PlantedViolations {
    private PlantedViolations() {}

    /**
     * Full names of the classes.
     *
     * @throws IllegalArgumentException for a rule without any: plant one when you add a rule
     */
    static List<String> of(String rule) {
        return simple(rule).map(name -> "planted." + name).toList();
    }

    private static Stream<String> simple(String rule) {
        if (rule.endsWith(" uses only rooms above")) {
            String room = rule.substring(0, rule.indexOf(' '));
            String next = Rooms.after(room).get(0);
            return Stream.of(room + ".Knows" + next.substring(0, 1).toUpperCase(Locale.ROOT) + next.substring(1));
        }
        if (rule.endsWith(" knows no AWT")) {
            return Stream.of(rule.substring(0, rule.indexOf(' ')) + ".KnowsAwt");
        }
        return switch (rule) {
            case "every class lives in a room" -> Stream.of("attic.OutsideEveryRoom");
            case "no cycles of packages" -> inCycles();
            case "drawing uses no library but jspecify" -> Stream.of("drawing.KnowsPicocli", "drawing.KnowsStandards");
            case "standards knows no drawing" -> Stream.of("standards.KnowsDrawing");
            case "study knows no JSON" -> Stream.of("study.KnowsJson");
            case "symbols knows no Swing" -> Stream.of("symbols.KnowsSwing");
            case "scene knows no AWT font" -> Stream.of("scene.KnowsFonts", "scene.KnowsTextLayout");
            case "scene knows no file" -> Stream.of("scene.KnowsPaths", "scene.KnowsStreams");
            case "store knows no study" -> Stream.of("store.KnowsStudy");
            case "only network uses the graph library" -> Stream.of("study.KnowsGraphs");
            case "only editor uses Swing" ->
                Stream.of("symbols.KnowsSwing", "desk.KnowsAwtEvents", "binder.KnowsSwing", "cli.KnowsFlatLaf");
            case "only cli ends the process" -> Stream.of("editor.Exits", "desk.Halts");
            case "only cli prints" -> Stream.of("editor.Prints", "binder.PrintsErrors");
            case "only desk, editor and cli start threads" ->
                Stream.of("layout.StartsThread", "binder.CountsInParallel");
            case "only desk, editor and cli know executors" -> Stream.of("render.HasPool");
            case "no format of the machine's language below desk" ->
                Stream.of("study.FormatsByDefault", "scene.LowersByDefault");
            case "no clock below desk" -> Stream.of("store.ReadsClock", "store.MakesDate");
            case "no chance below desk" -> Stream.of("layout.RollsDice");
            default -> throw new IllegalArgumentException("nothing is planted for the rule: " + rule);
        };
    }

    /** One short cycle, and a long one: the store knows the study, from which each room knows the next. */
    private static Stream<String> inCycles() {
        return Stream.concat(
                Stream.of("drawing.KnowsStandards", "standards.KnowsDrawing", "store.KnowsStudy"),
                Stream.of("study", "findings", "symbols", "layout", "scene", "render")
                        .flatMap(room -> simple(room + " uses only rooms above")));
    }
}
