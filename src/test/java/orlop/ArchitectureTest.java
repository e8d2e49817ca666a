package orlop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the house in order: see {@link Rooms} and {@link ArchitectureRules}. */
class ArchitectureTest {
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("orlop");
    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("planted");
    private static final Map<String, ArchRule> RULES = ArchitectureRules.rules("orlop");
    private static final Map<String, ArchRule> PLANTED_RULES = ArchitectureRules.rules("planted");

    static Set<String> names() {
        return RULES.keySet();
    }

    /** Rules about what is called: there, each method of a planted class is a violation of its own. */
    static Stream<String> namesOfCallRules() {
        return names().stream()
                .filter(name -> !name.contains("uses") && !name.contains("knows"))
                .filter(name -> !name.equals("every class lives in a room") && !name.equals("no cycles of packages"));
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_house_keeps_the_rule(String name) {
        rule(RULES, name).check(HOUSE);
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_rule_finds_exactly_the_violations_planted_for_it(String name) {
        List<String> details =
                rule(PLANTED_RULES, name).evaluate(PLANTED).getFailureReport().getDetails();
        Set<String> found = PLANTED.stream()
                .map(JavaClass::getName)
                .filter(planted -> details.stream().anyMatch(detail -> mentions(detail, planted)))
                .filter(planted -> !planted.endsWith(".Furniture"))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(found).isNotEmpty().isEqualTo(new TreeSet<>(PlantedViolations.of(name)));
    }

    @ParameterizedTest
    @MethodSource("namesOfCallRules")
    void the_rule_finds_every_way_planted_to_break_it(String name) {
        String details = String.join(
                "\n",
                rule(PLANTED_RULES, name).evaluate(PLANTED).getFailureReport().getDetails());

        assertThat(PlantedViolations.of(name))
                .flatMap(planted -> PLANTED.get(planted).getMethods())
                .map(JavaMethod::getFullName)
                .isNotEmpty()
                .allSatisfy(method -> assertThat(details).contains("<" + method + ">"));
    }

    @Test
    void every_planted_class_belongs_to_a_rule() {
        Set<String> all = PLANTED.stream()
                .map(JavaClass::getName)
                .filter(planted -> !planted.endsWith(".Furniture") && !planted.endsWith(".Innocent"))
                .filter(planted -> !planted.contains("$"))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> named = names().stream()
                .flatMap(name -> PlantedViolations.of(name).stream())
                .collect(Collectors.toSet());

        assertThat(all).hasSizeGreaterThan(30).isSubsetOf(named);
    }

    static Stream<String> rooms() {
        return Rooms.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void a_room_has_a_package_info_or_is_listed_as_still_empty(String room) {
        boolean furnished = HOUSE.contain("orlop." + room + ".package-info");

        assertThat(furnished)
                .as("%s: has a package-info, or stands in Rooms.STILL_EMPTY, and never both", room)
                .isNotEqualTo(Rooms.STILL_EMPTY.contains(room));
    }

    @Test
    void the_list_of_empty_rooms_names_rooms() {
        assertThat(Rooms.ALL).hasSize(14).doesNotHaveDuplicates().containsAll(Rooms.STILL_EMPTY);
    }

    @Test
    void every_package_has_the_one_rule_for_null() {
        assertAll(HOUSE.stream()
                .map(JavaClass::getPackageName)
                .distinct()
                .sorted()
                .map(name -> () -> assertThat(HOUSE.contain(name + ".package-info")
                                && HOUSE.get(name + ".package-info").isAnnotatedWith(NullMarked.class))
                        .as("%s has a package-info.java with @NullMarked", name)
                        .isTrue()));
    }

    /** As a whole name: planted.desk.Halts is not in planted.desk.HaltsAll. */
    private static boolean mentions(String detail, String className) {
        return detail.matches("(?s).*\\b" + className.replace(".", "\\.") + "\\b.*");
    }

    private static ArchRule rule(Map<String, ArchRule> rules, String name) {
        ArchRule rule = rules.get(name);
        assertThat(rule).as(name).isNotNull();
        return rule;
    }
}
