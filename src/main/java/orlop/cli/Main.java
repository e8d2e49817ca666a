package orlop.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.Supplier;
import orlop.drawing.Message;
import orlop.drawing.Words;
import picocli.CommandLine;

/** The way in. Exit codes: 0 done; 1 findings of kind danger or defect; 2 bad input. */
public final class Main {
    /** The texts of this room for the help of the commands. */
    static final String BUNDLE = "orlop.words.cli";

    static final int DONE = 0;
    static final int FOUND = 1;
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
        PrintWriter said = new PrintWriter(out, true, StandardCharsets.UTF_8);
        PrintWriter complained = new PrintWriter(err, true, StandardCharsets.UTF_8);
        return Start.isPlain(args) ? plain(args, said, complained, display) : run(args, said, complained, display);
    }

    private static int plain(String[] args, PrintWriter out, PrintWriter err, Supplier<Display.State> display) {
        try {
            new Start(display, out).open(args.length == 0 ? null : Path.of(args[0]));
            return DONE;
        } catch (Exception | Error e) {
            return report(e, err);
        }
    }

    private static int run(String[] args, PrintWriter out, PrintWriter err, Supplier<Display.State> display) {
        CommandLine commands = new CommandLine(new OrlopCommand(display));
        commands.setOut(out);
        commands.setErr(err);
        commands.setCaseInsensitiveEnumValuesAllowed(true);
        commands.setParameterExceptionHandler((e, typed) -> {
            e.getCommandLine().getErr().println(line("cli.error", oneLine(e)));
            return BAD_INPUT;
        });
        commands.setExecutionExceptionHandler((e, command, typed) -> report(e, command));
        try {
            return commands.execute(args);
        } catch (Error e) {
            return report(e, commands); // out of memory or stack: one line as well
        }
    }

    private static int report(Throwable e, PrintWriter err) {
        err.println(e instanceof UserError ? line("cli.error", oneLine(e)) : line("cli.unexpected", oneLine(e)));
        return BAD_INPUT;
    }

    private static int report(Throwable e, CommandLine command) {
        PrintWriter err = command.getErr();
        report(e, err);
        OrlopCommand top = command.getCommandSpec().root().commandLine().getCommand();
        if (top.trace) {
            e.printStackTrace(err);
        }
        return BAD_INPUT;
    }

    private static String line(String key, String argument) {
        return Words.english().text(Message.of(key, argument));
    }

    private static String oneLine(Throwable e) {
        String message = e.getMessage();
        return message == null || message.isBlank()
                ? e.getClass().getSimpleName()
                : message.lines().findFirst().orElseThrow();
    }
}
