package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.desk.Sample;

/** The cutter's first sheet has two findings that somebody lives with: the margin must not look as if there were none. */
class AcceptedNotesTest extends OnBench {
    AcceptedNotesTest() {
        super(Sample.of("pilot-cutter"));
    }

    private static void texts(Container c, List<String> out) {
        for (Component k : c.getComponents()) {
            if (k instanceof WrapText t) {
                out.add(t.getText());
            }
            if (k instanceof Container inner) {
                texts(inner, out);
            }
        }
    }

    /** All running text that stands in it. */
    static List<String> texts(Container c) {
        List<String> out = new ArrayList<>();
        texts(c, out);
        return out;
    }

    @Test
    void the_margin_counts_what_somebody_lives_with() throws Exception {
        List<String> said = new ArrayList<>();
        HeadlessBench.onUi(() -> texts(on.bench().panel(), said));

        assertThat(said).contains(Texts.of("editor.notes.none"), Texts.of("editor.notes.accepted", 2));
    }
}
