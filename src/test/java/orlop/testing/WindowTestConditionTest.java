package orlop.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.platform.launcher.Launcher;
import org.junit.platform.launcher.core.LauncherConfig;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;
import org.junit.platform.launcher.listeners.TestExecutionSummary;
import orlop.cli.Display;

class WindowTestConditionTest {
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();

    @Test
    void without_a_display_the_tests_are_skipped_and_counted_in_one_line() {
        TestExecutionSummary summary = run(NoDisplay.class);

        assertThat(summary.getContainersSkippedCount()).isEqualTo(1);
        assertThat(summary.getTestsStartedCount()).isZero();
        assertThat(summary.getFailures()).isEmpty();
        assertThat(said).hasToString(String.format("2 window tests were not run: no display%n"));
    }

    @Test
    void a_dead_display_is_said_to_be_dead() {
        run(DeadDisplay.class);

        assertThat(said).hasToString(String.format("1 window test was not run: no display answers%n"));
    }

    @Test
    void where_windows_are_required_a_missing_display_is_a_failure() {
        TestExecutionSummary summary = run(NoDisplayButRequired.class);

        assertThat(summary.getFailures())
                .singleElement()
                .satisfies(failure -> assertThat(failure.getException())
                        .isInstanceOf(AssertionError.class)
                        .hasMessage("no display, but ORLOP_WINDOW_TESTS=required"));
        assertThat(summary.getTestsStartedCount()).isZero();
        assertThat(said.size()).isZero();
    }

    private TestExecutionSummary run(Class<?> tests) {
        // Without the listeners of the run that we are part of: it would count these tests as its own.
        Launcher launcher = LauncherFactory.create(LauncherConfig.builder()
                .enableTestExecutionListenerAutoRegistration(false)
                .build());
        SummaryGeneratingListener summary = new SummaryGeneratingListener();
        NotRunListener notRun = new NotRunListener(new PrintStream(said, true, StandardCharsets.UTF_8));
        launcher.execute(
                LauncherDiscoveryRequestBuilder.request()
                        .selectors(selectClass(tests))
                        .build(),
                summary,
                notRun);
        return summary.getSummary();
    }

    static final class NoDisplay {
        @RegisterExtension
        static final WindowTestExtension NEED = new WindowTestExtension(() -> Display.State.NONE, null);

        @Test
        void one() {
            fail("must not run");
        }

        @Test
        void two() {
            fail("must not run");
        }
    }

    static final class DeadDisplay {
        @RegisterExtension
        static final WindowTestExtension NEED = new WindowTestExtension(() -> Display.State.DEAD, "optional");

        @Test
        void one() {
            fail("must not run");
        }
    }

    static final class NoDisplayButRequired {
        @RegisterExtension
        static final WindowTestExtension NEED = new WindowTestExtension(() -> Display.State.NONE, "required");

        @Test
        void one() {
            fail("must not run");
        }
    }
}
