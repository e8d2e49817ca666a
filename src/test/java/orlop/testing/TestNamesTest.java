package orlop.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.annotation.Testable;

/** The build finds tests by the names of their classes: a test with another name would never run, and nobody know. */
class TestNamesTest {
    private static final JavaClasses TESTS = new ClassFileImporter()
            .withImportOption(new ImportOption.OnlyIncludeTests())
            .importPackages("orlop");

    @Test
    void every_test_stands_in_a_class_whose_name_the_build_looks_for() {
        methods()
                .that()
                .areAnnotatedWith(Test.class)
                .or()
                .areMetaAnnotatedWith(Testable.class)
                .and()
                .areDeclaredInClassesThat()
                .areTopLevelClasses()
                .and()
                .areDeclaredInClassesThat()
                .doNotHaveModifier(JavaModifier.ABSTRACT)
                .should()
                .beDeclaredInClassesThat()
                .haveSimpleNameEndingWith("Test")
                .check(TESTS);
    }

    @Test
    void a_test_that_opens_windows_says_so_in_its_name_and_the_other_way_round() {
        classes()
                .that()
                .areAnnotatedWith(WindowTest.class)
                .or()
                .areAnnotatedWith(XvfbTest.class)
                .should()
                .haveSimpleNameEndingWith("WindowTest")
                .check(TESTS);
        classes()
                .that()
                .haveSimpleNameEndingWith("WindowTest")
                .and()
                .areNotAnnotations()
                .should()
                .beAnnotatedWith(WindowTest.class)
                .orShould()
                .beAnnotatedWith(XvfbTest.class)
                .check(TESTS);
    }

    @Test
    void no_test_is_switched_off() {
        noMethods().should().beAnnotatedWith(Disabled.class).check(TESTS);
        classes().should().notBeAnnotatedWith(Disabled.class).check(TESTS);
    }
}
