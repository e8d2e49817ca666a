package orlop.editor;

/**
 * What is asked when the program is started for the first time: whether to look at the sample or to begin with a vessel of
 * one's own. Enter and Escape both leave the sample, which is on the desk already.
 */
final class FirstStart {
    private final Prompts prompts;
    private final FileCommands files;

    FirstStart(Prompts prompts, FileCommands files) {
        this.prompts = prompts;
        this.files = files;
    }

    void offer() {
        int answer = prompts.choose(
                Texts.of("editor.first.title"),
                Texts.of("editor.first"),
                Texts.of("editor.first.sample"),
                Texts.of("editor.first.new"));
        if (answer == 1) {
            files.begin();
        }
    }
}
