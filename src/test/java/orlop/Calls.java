package orlop;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.text.MessageFormat;
import java.time.Clock;
import java.util.Collection;
import java.util.Date;
import java.util.Formatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import java.util.stream.BaseStream;

/** What some rooms must not call: conditions for {@link ArchitectureRules}. */
final class Calls {
    private static final Class<?>[] NOTHING = {};

    static final DescribedPredicate<JavaClass> EXECUTORS = assignableTo(Executor.class)
            .or(assignableTo(Executors.class))
            .or(assignableTo(CompletableFuture.class))
            .or(assignableTo(ForkJoinTask.class))
            .or(assignableTo(java.util.Timer.class))
            .as("executors, futures or timers");

    static final ArchCondition<JavaClass> END_THE_PROCESS = calling(
            "end the process",
            of(System.class, "exit").or(of(Runtime.class, "exit")).or(of(Runtime.class, "halt")));

    static final ArchCondition<JavaClass> START_THREADS = calling(
            "start threads",
            of(Thread.class, "<init>")
                    .or(of(Thread.class, "start"))
                    .or(of(Collection.class, "parallelStream"))
                    .or(of(BaseStream.class, "parallel")));

    static final ArchCondition<JavaClass> READ_A_CLOCK = calling(
            "read a clock",
            of(System.class, "currentTimeMillis")
                    .or(of(System.class, "nanoTime"))
                    .or(with(Date.class, "<init>", NOTHING))
                    .or(of(Clock.class, "system"))
                    .or(of(Clock.class, "systemUTC"))
                    .or(of(Clock.class, "systemDefaultZone"))
                    .or(target -> target.getOwner().getPackageName().equals("java.time")
                            && target.getName().equals("now")));

    static final ArchCondition<JavaClass> ROLL_DICE = calling(
            "roll dice",
            of(RandomGenerator.class, "<init>")
                    .or(of(RandomGenerator.class, "of"))
                    .or(of(java.util.concurrent.ThreadLocalRandom.class, "current"))
                    .or(of(Math.class, "random"))
                    .or(of(UUID.class, "randomUUID"))
                    .or(of(java.util.Collections.class, "shuffle")));

    static final ArchCondition<JavaClass> FORMAT_BY_DEFAULT_LOCALE = calling(
            "format by the machine's language",
            withoutLocale(String.class, "format")
                    .or(of(String.class, "formatted"))
                    .or(withoutLocale(String.class, "toLowerCase"))
                    .or(withoutLocale(String.class, "toUpperCase"))
                    .or(withoutLocale(Formatter.class, "<init>"))
                    .or(withoutLocale(MessageFormat.class, "<init>"))
                    .or(of(MessageFormat.class, "format")
                            .and(target -> target.getRawParameterTypes().size() == 2
                                    && target.getRawParameterTypes().get(0).isEquivalentTo(String.class)))
                    .or(withoutLocale(java.io.PrintStream.class, "printf"))
                    .or(withoutLocale(java.io.PrintWriter.class, "printf"))
                    .or(with(java.text.DecimalFormat.class, "<init>", String.class))
                    .or(with(java.text.DecimalFormat.class, "<init>", NOTHING))
                    .or(withoutLocale(java.text.NumberFormat.class, "getInstance"))
                    .or(withoutLocale(java.text.NumberFormat.class, "getNumberInstance"))
                    .or(withoutLocale(java.text.NumberFormat.class, "getPercentInstance"))
                    .or(of(Locale.class, "getDefault")));

    private Calls() {}

    private static Predicate<CodeUnitAccessTarget> of(Class<?> owner, String name) {
        return target ->
                target.getOwner().isAssignableTo(owner) && target.getName().equals(name);
    }

    private static Predicate<CodeUnitAccessTarget> with(Class<?> owner, String name, Class<?>... parameters) {
        List<String> wanted = List.of(parameters).stream().map(Class::getName).toList();
        return of(owner, name)
                .and(target -> target.getRawParameterTypes().stream()
                        .map(JavaClass::getName)
                        .toList()
                        .equals(wanted));
    }

    private static Predicate<CodeUnitAccessTarget> withoutLocale(Class<?> owner, String name) {
        return of(owner, name)
                .and(target ->
                        target.getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Locale.class)));
    }

    /** Calls and method references alike. */
    private static ArchCondition<JavaClass> calling(String description, Predicate<CodeUnitAccessTarget> forbidden) {
        return new ArchCondition<>(description) {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                for (JavaAccess<?> access : item.getAccessesFromSelf()) {
                    if (access.getTarget() instanceof CodeUnitAccessTarget target && forbidden.test(target)) {
                        events.add(SimpleConditionEvent.satisfied(access, access.getDescription()));
                    }
                }
            }
        };
    }
}
