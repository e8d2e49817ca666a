package orlop.editor;

import com.sun.management.OperatingSystemMXBean;
import java.awt.Frame;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import orlop.cli.Main;

/**
 * One start of the program, to be measured in a process of its own: from its birth until the first sample stands painted
 * with its figures. Says the milliseconds of the clock, then those of the processors.
 *
 * <p>The folder of settings is the one of the environment; for a start as on any other day it holds settings.
 */
final class StartFigure {
    private StartFigure() {}

    public static void main(String[] args) throws Exception {
        Path settings = Settings.folder().resolve("settings.properties");
        Files.createDirectories(Settings.folder());
        if (!Files.exists(settings)) {
            Files.writeString(settings, "begun=true\n");
        }
        Main.main(args);
        while (!painted()) {
            Thread.sleep(4);
        }
        long now = System.currentTimeMillis();
        long born = ProcessHandle.current().info().startInstant().orElseThrow().toEpochMilli();
        var os = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        System.out.println((now - born) + " " + os.getProcessCpuTime() / 1_000_000);
        System.out.flush();
        System.exit(0);
    }

    private static boolean painted() throws Exception {
        AtomicBoolean done = new AtomicBoolean();
        SwingUtilities.invokeAndWait(() -> {
            for (Frame f : Frame.getFrames()) {
                SheetCanvas canvas = f instanceof JFrame frame ? in(frame.getContentPane()) : null;
                if (canvas != null
                        && canvas.getWidth() > 0
                        && canvas.session().state().fresh()) {
                    canvas.paintImmediately(0, 0, canvas.getWidth(), canvas.getHeight());
                    done.set(true);
                }
            }
        });
        return Boolean.TRUE.equals(done.get());
    }

    private static @org.jspecify.annotations.Nullable SheetCanvas in(java.awt.Container c) {
        for (java.awt.Component child : c.getComponents()) {
            if (child instanceof SheetCanvas canvas) {
                return canvas;
            }
            SheetCanvas found = child instanceof java.awt.Container inner ? in(inner) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}
