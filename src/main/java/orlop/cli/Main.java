package orlop.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import picocli.CommandLine;

/** The way in. Exit codes: 0 done; 1 findings of kind danger or defect; 2 bad input. */
public final class Main {
    static final int DONE = 0;
    static final int BAD_INPUT = 2;

    private Main() {}

    /** Runs a command and ends the process, unless all went well: a window may live on then. */
    public static void main(String[] args) {
        int exitCode = run(args, System.out, System.err);
        if (exitCode != DONE) {
            System.exit(exitCode);
        }
    }

    /**
     * Runs a command within this process.
     *
     * @param args as typed, without the program's name
     * @param out for what was asked for
     * @param err for one line on what went wrong
     * @return the exit code
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        return run(args, out, err, Display::probe);
    }

    static int run(String[] args, PrintStream out, PrintStream err, Supplier<Display.State> display) {
        CommandLine commands = new CommandLine(new OrlopCommand(display));
        commands.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        commands.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        commands.setCaseInsensitiveEnumValuesAllowed(true);
        commands.setParameterExceptionHandler((e, typed) -> {
            e.getCommandLine().getErr().println(Words.text("cli.error", oneLine(e)));
            return BAD_INPUT;
        });
        commands.setExecutionExceptionHandler((e, command, typed) -> report(e, command));
        try {
            return commands.execute(args);
        } catch (Error e) {
            return report(e, commands); // out of memory or stack: one line as well
        }
    }

    private static int report(Throwable e, CommandLine command) {
        PrintWriter err = command.getErr();
        err.println(e instanceof UserError ? oneLine(e) : Words.text("cli.unexpected", oneLine(e)));
        OrlopCommand top = command.getCommandSpec().root().commandLine().getCommand();
        if (top.trace) {
            e.printStackTrace(err);
        }
        return BAD_INPUT;
    }

    private static String oneLine(Throwable e) {
        String message = e.getMessage();
        return message == null || message.isBlank()
                ? e.getClass().getSimpleName()
                : message.lines().findFirst().orElseThrow();
    }
}
