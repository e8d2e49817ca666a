package orlop.testing;

import java.util.function.Supplier;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import orlop.cli.Display;

/** See {@link WindowTest}. */
final class WindowTestExtension extends NeedExtension implements AfterEachCallback, ParameterResolver {
    private static final Namespace NAMESPACE = Namespace.create(WindowTestExtension.class);

    private final Supplier<Display.State> display;

    /** Called by JUnit. */
    WindowTestExtension() {
        this(OfThisProcess::state, requirement());
    }

    WindowTestExtension(Supplier<Display.State> display, @Nullable String requirement) {
        super(requirement);
        this.display = display;
    }

    @Override
    @Nullable
    String missing() {
        return switch (display.get()) {
            case LIVE -> null;
            case DEAD -> "no display answers";
            case NONE -> "no display";
        };
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        super.beforeAll(context);
        FailOnThreadViolationRepaintManager.install();
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Robot.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getStore(NAMESPACE)
                .getOrComputeIfAbsent(Robot.class, type -> BasicRobot.robotWithNewAwtHierarchy(), Robot.class);
    }

    @Override
    public void afterEach(ExtensionContext context) {
        Robot robot = context.getStore(NAMESPACE).remove(Robot.class, Robot.class);
        if (robot != null) {
            robot.cleanUp();
        }
    }

    /** Probed once: the display doesn't change while the tests run. */
    private static final class OfThisProcess {
        private static final Display.State STATE = Display.probe();

        static Display.State state() {
            return STATE;
        }
    }
}
