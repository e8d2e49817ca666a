package orlop.editor;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Whether the desktop around the window is dark, as far as it can be asked. What can't be asked is light. */
final class SystemLook {
    private static final long PATIENCE_MS = 600;

    private SystemLook() {}

    static boolean dark() {
        String os = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (os.contains("win")) {
            return dark(answer(List.of(
                    "reg",
                    "query",
                    "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
                    "/v",
                    "AppsUseLightTheme")));
        }
        if (os.contains("mac")) {
            return dark(answer(List.of("defaults", "read", "-g", "AppleInterfaceStyle")));
        }
        String theme = System.getenv("GTK_THEME");
        return (theme != null && dark(theme))
                || dark(answer(List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme")));
    }

    /** Reads an answer: {@code 'prefer-dark'}, {@code Dark}, {@code AppsUseLightTheme REG_DWORD 0x0}. */
    static boolean dark(String answer) {
        String a = answer.strip().toLowerCase(Locale.ROOT);
        return a.contains("appsuselighttheme") ? a.endsWith("0x0") : a.contains("dark");
    }

    /** What a small program of the desktop says; "" if it is not there or doesn't answer. */
    private static String answer(List<String> command) {
        try {
            Process p = new ProcessBuilder(command).redirectErrorStream(true).start();
            p.getOutputStream().close();
            if (!p.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                p.destroyForcibly();
                return "";
            }
            String text = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return p.exitValue() == 0 ? text : "";
        } catch (IOException e) {
            return "";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}
