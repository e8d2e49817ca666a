package orlop.editor;

import java.util.List;
import orlop.desk.WireGauge;

/** What a person likes, as it is remembered: each by a word, the first of its list being what holds at first. */
final class Preferences {
    /** Languages: that of the system where there are texts in it, or a certain one. */
    static final List<String> LANGUAGES = List.of("system", "en");

    /** How areas are shown: with the wire gauge beside them, or alone. */
    static final List<String> AREAS = List.of("mm2-awg", "mm2");

    static final List<String> LOOKS = List.of("light", "dark", "system");

    /** Whether gauges stand beside areas now: as the look, it is one for all windows. */
    private static volatile boolean gauges = true;

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

    /** The rule set with which new drawings begin; "" for none. */
    String ruleSet() {
        return word("rule-set", NewDrawingForm.RULE_SETS);
    }

    private String word(String key, List<String> known) {
        String word = settings.word(key, known.get(0));
        return known.contains(word) ? word : known.get(0);
    }

    void remember(String language, String areas, String look, String ruleSet) {
        settings.rememberWord("language", language);
        settings.rememberWord("areas", areas);
        settings.rememberWord("look", look);
        settings.rememberWord("rule-set", ruleSet);
    }

    void rememberLook(boolean dark) {
        settings.rememberWord("look", dark ? "dark" : "light");
    }

    boolean dark() {
        String look = look();
        return look.equals("system") ? SystemLook.dark() : look.equals("dark");
    }

    /** Lets all of it hold for the windows to come. */
    void install() {
        gauges = areas().equals("mm2-awg");
        Texts.speak(language());
        Look.install(dark());
    }

    /** What stands beside an area: how it stands to the wire gauges, "" where that isn't wished. */
    static String beside(double areaMm2) {
        return gauges ? WireGauge.around(areaMm2) : "";
    }
}
