package orlop.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Properties;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** {@code orlop [FILE]}: the editor, or what can be done without a display. */
@Command(
        name = "orlop",
        resourceBundle = Main.BUNDLE,
        description = "${bundle:cli.description}",
        footer = "%n${bundle:cli.caution}",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = OrlopCommand.Version.class,
        exitCodeListHeading = "%n${bundle:cli.exit-codes}%n",
        exitCodeList = {"0:${bundle:cli.exit-0}", "1:${bundle:cli.exit-1}", "2:${bundle:cli.exit-2}"},
        subcommands = {StudyCommand.class, FindingsCommand.class, ExportCommand.class})
final class OrlopCommand implements Callable<Integer> {
    private final Supplier<Display.State> display;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "${bundle:cli.file}")
    @Nullable
    Path file;

    @Option(names = "--trace", scope = ScopeType.INHERIT, description = "${bundle:cli.trace}")
    boolean trace;

    OrlopCommand(Supplier<Display.State> display) {
        this.display = display;
    }

    @Override
    public Integer call() throws UserError {
        new Start(display, spec.commandLine().getOut()).open(file);
        return Main.DONE;
    }

    /** The version that the build was told. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() throws IOException {
            Properties build = new Properties();
            try (InputStream in = OrlopCommand.class.getResourceAsStream("build.properties")) {
                if (in == null) {
                    throw new IOException("build.properties is not in the class path");
                }
                build.load(in);
            }
            return new String[] {"orlop " + build.getProperty("version")};
        }
    }
}
