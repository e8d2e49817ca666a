package orlop.testing;

import java.io.PrintStream;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Counts the tests that {@link NeedExtension} skipped, and says so in one line at the end of the run. */
public final class NotRunListener implements TestExecutionListener {
    private final PrintStream out;
    private final Map<String, Integer> countByReason = new TreeMap<>();
    private @Nullable TestPlan plan;

    /** Called by JUnit, which finds this class among the services. */
    public NotRunListener() {
        this(System.out);
    }

    NotRunListener(PrintStream out) {
        this.out = out;
    }

    @Override
    public void testPlanExecutionStarted(TestPlan started) {
        plan = started;
    }

    @Override
    public void executionSkipped(TestIdentifier skipped, String reason) {
        if (reason.startsWith(NeedExtension.NOT_RUN)) {
            countByReason.merge(reason.substring(NeedExtension.NOT_RUN.length()), testsIn(skipped), Integer::sum);
        }
    }

    private int testsIn(TestIdentifier skipped) {
        if (skipped.isTest() || plan == null) {
            return 1;
        }
        // A parameterised test counts as one: its cases are not known before it runs.
        return (int) plan.getDescendants(skipped).stream()
                .filter(identifier -> plan.getChildren(identifier).isEmpty())
                .count();
    }

    @Override
    public void testPlanExecutionFinished(TestPlan finished) {
        countByReason.forEach((reason, count) -> out.println(
                count == 1 ? "1 window test was not run: " + reason : count + " window tests were not run: " + reason));
    }
}
