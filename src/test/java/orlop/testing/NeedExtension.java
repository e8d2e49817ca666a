package orlop.testing;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips a test class that needs something which this machine lacks, or fails it where it is required. */
abstract class NeedExtension implements ExecutionCondition, BeforeAllCallback {
    /** By this {@link NotRunListener} knows the tests that were skipped for a reason of ours. */
    static final String NOT_RUN = "window test not run: ";

    private static final String REQUIREMENT = "ORLOP_WINDOW_TESTS";

    private final boolean required;

    /** @param requirement "required", or anything else (null too) for tests that may be skipped */
    NeedExtension(@Nullable String requirement) {
        this.required = "required".equals(requirement);
    }

    static @Nullable String requirement() {
        return System.getenv(REQUIREMENT);
    }

    /** What is missing, as in "no display"; null if nothing is. */
    abstract @Nullable String missing();

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        String missing = missing();
        if (missing == null || required) {
            return ConditionEvaluationResult.enabled("can run, or must");
        }
        return ConditionEvaluationResult.disabled(NOT_RUN + missing);
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        String missing = missing();
        if (missing != null) {
            throw new AssertionError(missing + ", but " + REQUIREMENT + "=required");
        }
    }
}
