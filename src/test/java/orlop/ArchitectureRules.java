package orlop;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.GivenClassesConjunction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rules of the house as functions of the root package, so that the very same rules that hold for {@code orlop} are
 * seen to fail on the violations planted under {@code planted}.
 */
final class ArchitectureRules {
    private static final DescribedPredicate<JavaClass> AWT =
            resideInAnyPackage("java.awt..", "javax.swing..", "javax.print..", "javax.imageio..", "sun.awt..");
    private static final DescribedPredicate<JavaClass> SWING =
            resideInAnyPackage("javax.swing..", "java.awt.event..", "java.awt.dnd..", "com.formdev..");
    private static final DescribedPredicate<JavaClass> JSON = resideInAnyPackage("com.fasterxml..", "com.networknt..");
    private static final DescribedPredicate<JavaClass> GRAPHS =
            resideInAnyPackage("org.jgrapht..", "org.jheaps..", "org.apfloat..");
    private static final DescribedPredicate<JavaClass> AWT_FONTS = resideInAPackage("java.awt.font..")
            .or(DescribedPredicate.describe("an AWT font", c -> c.getName().matches("java\\.awt\\.Font(Metrics)?")));
    private static final DescribedPredicate<JavaClass> FILES =
            resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels..");

    private final String root;
    private final Map<String, ArchRule> rules = new LinkedHashMap<>();

    private ArchitectureRules(String root) {
        this.root = root;
    }

    /** All rules by name. */
    static Map<String, ArchRule> rules(String root) {
        ArchitectureRules house = new ArchitectureRules(root);
        house.addOrder();
        house.addWhatRoomsMustNotKnow();
        house.addWhoMay();
        house.addSameInputSameBytes();
        return house.rules;
    }

    private void addOrder() {
        rules.put(
                "every class lives in a room", classes().should().resideInAnyPackage(Rooms.packages(root, Rooms.ALL)));
        for (String room : Rooms.ALL.subList(0, Rooms.ALL.size() - 1)) {
            add(
                    room + " uses only rooms above",
                    room,
                    noClassesIn(room)
                            .should()
                            .dependOnClassesThat()
                            .resideInAnyPackage(Rooms.packages(root, Rooms.after(room))));
        }
        rules.put(
                "no cycles of packages",
                slices().matching(root + ".(**)").should().beFreeOfCycles());
    }

    private void addWhatRoomsMustNotKnow() {
        add(
                "drawing uses no library but jspecify",
                "drawing",
                classes()
                        .that()
                        .resideInAPackage(Rooms.packages(root, "drawing"))
                        .should()
                        .onlyDependOnClassesThat()
                        .resideInAnyPackage("java..", "org.jspecify..", Rooms.packages(root, "drawing")));
        add(
                "standards knows no drawing",
                "standards",
                noClassesIn("standards")
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage(Rooms.packages(root, "drawing")));
        for (String room : List.of("drawing", "standards", "network", "study", "findings", "layout")) {
            forbid(room, "AWT", AWT);
        }
        forbid("study", "JSON", JSON);
        forbid("symbols", "Swing", SWING);
        forbid("scene", "AWT font", AWT_FONTS);
        forbid("scene", "file", FILES);
        add(
                "store knows no study",
                "store",
                noClassesIn("store").should().dependOnClassesThat().resideInAPackage(Rooms.packages(root, "study")));
    }

    private void addWhoMay() {
        rules.put(
                "only network uses the graph library",
                outside("network").should().dependOnClassesThat(GRAPHS));
        rules.put("only editor uses Swing", outside("editor").should().dependOnClassesThat(SWING));
        rules.put("only cli ends the process", outside("cli").should(Calls.END_THE_PROCESS));
        rules.put("only cli prints", outside("cli").should(ACCESS_STANDARD_STREAMS));
        rules.put(
                "only desk, editor and cli start threads",
                outside("desk", "editor", "cli").should(Calls.START_THREADS));
        rules.put(
                "only desk, editor and cli know executors",
                outside("desk", "editor", "cli").should().dependOnClassesThat(Calls.EXECUTORS));
    }

    private void addSameInputSameBytes() {
        String[] belowDesk = Rooms.packages(root, Rooms.before("desk"));
        rules.put(
                "no format of the machine's language below desk",
                noClasses().that().resideInAnyPackage(belowDesk).should(Calls.FORMAT_BY_DEFAULT_LOCALE));
        rules.put(
                "no clock below desk",
                noClasses().that().resideInAnyPackage(belowDesk).should(Calls.READ_A_CLOCK));
        rules.put(
                "no chance below desk",
                noClasses().that().resideInAnyPackage(belowDesk).should(Calls.ROLL_DICE));
    }

    private void forbid(String room, String what, DescribedPredicate<JavaClass> classes) {
        add(room + " knows no " + what, room, noClassesIn(room).should().dependOnClassesThat(classes));
    }

    private void add(String name, String room, ArchRule rule) {
        rules.put(name, Rooms.STILL_EMPTY.contains(room) ? rule.allowEmptyShould(true) : rule);
    }

    private GivenClassesConjunction noClassesIn(String room) {
        return noClasses().that().resideInAPackage(Rooms.packages(root, room));
    }

    private GivenClassesConjunction outside(String... rooms) {
        return noClasses().that().resideOutsideOfPackages(Rooms.packages(root, List.of(rooms)));
    }
}
