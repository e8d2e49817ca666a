package orlop.editor;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import orlop.desk.OwnSymbols;
import orlop.drawing.Message;
import orlop.scene.Annotations;
import orlop.standards.WireGauge;

/** What a person likes, as it is remembered: each by a word, the first of its list being what holds at first. */
final class Preferences {
    /** Languages: that of the system where there are texts in it, or a certain one. */
    static final List<String> LANGUAGES = List.of("system", "en");

    private static final String ON_SHEETS = "mm2-awg-sheet";

    /** How areas are shown: with the wire gauge beside them on cards, on sheets too, or alone. */
    static final List<String> AREAS = List.of("mm2-awg", ON_SHEETS, "mm2");

    static final List<String> LOOKS = List.of("light", "dark", "system");

    /** What the wheel does without the Ctrl key. */
    static final List<String> WHEELS = List.of("zoom", "pan");

    /** How large all that is in a window is shown, in percent of what the system asks for. */
    static final List<String> SCALES = List.of("100", "125", "150", "175", "200", "250", "300");

    /** What the look asks for the scale, when it is first installed. */
    private static final String SCALE_PROPERTY = "flatlaf.uiScale";

    /** The refusal of which a person has been told. */
    private static final String TOLD = "told-of-symbols";

    /** Whether gauges stand beside areas now: as the look, it is one for all windows. */
    private static volatile boolean gauges = true;

    private static volatile boolean gaugesOnSheets;

    /** How often preferences were made to hold: a window that knows another number shows older ones. */
    private static final AtomicInteger TIMES = new AtomicInteger();

    private static volatile boolean wheelPans;

    private final Settings settings;

    Preferences(Settings settings) {
        this.settings = settings;
    }

    String language() {
        return word("language", LANGUAGES);
    }

    String areas() {
        return word("areas", AREAS);
    }

    String look() {
        return word("look", LOOKS);
    }

    String wheel() {
        return word("wheel", WHEELS);
    }

    String scale() {
        return word("scale", SCALES);
    }

    /** The rule set with which new drawings begin; "" for none. */
    String ruleSet() {
        return word("rule-set", NewDrawingForm.RULE_SETS);
    }

    /** The folder of the person's own symbols. It need not be there. Nothing is the one in the program's own folder. */
    String symbols() {
        String own = settings.word("symbols", "");
        return own.isBlank() ? settings.home().resolve("symbols").toString() : own;
    }

    private String word(String key, List<String> known) {
        String word = settings.word(key, known.get(0));
        return known.contains(word) ? word : known.get(0);
    }

    /** @param words by what they are of: {@code language}, {@code areas}, {@code look}, … */
    void remember(Map<String, String> words) {
        settings.rememberWords(words);
    }

    void rememberLook(boolean dark) {
        settings.rememberWord("look", dark ? "dark" : "light");
    }

    boolean dark() {
        String look = look();
        return look.equals("system") ? SystemLook.dark() : look.equals("dark");
    }

    private Path folder() {
        try {
            return Path.of(symbols());
        } catch (InvalidPathException e) {
            return settings.home().resolve("symbols"); // what was typed is no path of this system
        }
    }

    /** Why another folder of own symbols can't be taken; empty if it can, or is the one that has been chosen already. */
    Optional<Message> refusal(String typed) {
        if (typed.isEmpty() || typed.equals(symbols())) {
            return Optional.empty();
        }
        try {
            return OwnSymbols.refusal(Path.of(typed));
        } catch (InvalidPathException e) {
            return Optional.of(Message.of("desk.symbols.no-folder", typed));
        }
    }

    /** Lets all of it hold for the windows to come. */
    void install() {
        gauges = !areas().equals("mm2");
        gaugesOnSheets = areas().equals(ON_SHEETS);
        wheelPans = wheel().equals("pan");
        Texts.speak(language());
        OwnSymbols.read(folder());
        Look.install(dark());
        TIMES.incrementAndGet();
    }

    /** Another number after each time that preferences were made to hold. */
    static int times() {
        return TIMES.get();
    }

    /**
     * Lets the scale hold from now on. Once, before anything is made that is seen: what is there already would keep its
     * size. A scale that the command of the program sets goes before.
     */
    void scaleFromTheStart() {
        if (System.getProperty(SCALE_PROPERTY) == null && !scale().equals(SCALES.get(0))) {
            System.setProperty(SCALE_PROPERTY, scale() + "%");
        }
    }

    /** Tells why what was chosen could not be kept for the next start; nothing if it was. */
    void tellOfKeeping(Prompts prompts) {
        settings.refusal()
                .ifPresent(e -> prompts.tell(
                        Texts.of("editor.preferences.title"),
                        Texts.of("editor.preferences.unkept", FileCommands.words(e))));
    }

    /** Tells what was refused of the person's own symbols, and what to do about it; nothing if nothing was. */
    void tellOfSymbols(Prompts prompts) {
        String refused = refused();
        if (!refused.isEmpty()) {
            prompts.tell(Texts.of("editor.symbols.refused"), refused);
        }
        if (!settings.word(TOLD, "").equals(refused)) {
            settings.rememberWord(TOLD, refused);
        }
    }

    /** The same at a start: a dialog once, the line at the foot while nothing changes in the folder. */
    void tellOfSymbolsAtStart(Prompts prompts, Consumer<Message> line) {
        if (!refused().isEmpty() && refused().equals(settings.word(TOLD, ""))) {
            line.accept(OwnSymbols.said());
        } else {
            tellOfSymbols(prompts);
        }
    }

    private static String refused() {
        return OwnSymbols.now().refused() == null ? "" : Texts.title(OwnSymbols.said());
    }

    /** Whether the wheel moves the sheet, in all windows. */
    static boolean wheelPans() {
        return wheelPans;
    }

    /** These parts of the cables' annotations, with the gauge if it is wished on sheets. */
    static Annotations onSheets(Annotations parts) {
        return parts.withGauge(gaugesOnSheets);
    }

    /** What stands beside an area: how it stands to the wire gauges, "" where that isn't wished. */
    static String beside(double areaMm2) {
        return gauges ? WireGauge.around(areaMm2) : "";
    }
}
