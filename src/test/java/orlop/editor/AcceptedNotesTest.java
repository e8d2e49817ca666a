package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
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

    private static Optional<NoteView> firstNote(Container c) {
        for (Component k : c.getComponents()) {
            Optional<NoteView> found = k instanceof NoteView v
                    ? Optional.of(v)
                    : k instanceof Container inner ? firstNote(inner) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static StillNotes.Part otherwise(StillNotes.Part p) {
        return p.key() instanceof StillNotes.Key k
                ? StillNotes.part(
                        new StillNotes.Key(k.rule(), k.item(), k.atFrom(), !k.accepted(), k.nth()), new JLabel())
                : p;
    }

    /** What of the notes stood at a place, once it is told otherwise further down. */
    private static List<String> left(StillNotes.Part here, StillNotes.Part now) {
        return texts(StillNotes.arrange(List.of(here), List.of(now)).get(0).component());
    }

    @Test
    void what_is_lived_with_or_opened_again_is_not_told_to_be_gone() throws Exception {
        HeadlessBench.onUi(() -> {
            NoteView v = firstNote(on.bench().panel()).orElseThrow();
            String title = Texts.title(v.numbered().finding().title());
            StillNotes.Part accepted = StillNotes.parts((JPanel) v.getParent()).stream()
                    .filter(p -> p.component() == v)
                    .findFirst()
                    .orElseThrow();
            StillNotes.Part open = otherwise(accepted);
            StillNotes.Part other = StillNotes.part("other", new JLabel());

            assertThat(left(accepted, open)).containsExactly(Texts.of("editor.notes.opened-again", title));
            assertThat(left(accepted, other)).containsExactly(Texts.of("editor.notes.gone", title));
            StillNotes.Part asOpen = StillNotes.part(open.key(), v);
            assertThat(left(asOpen, otherwise(asOpen))).containsExactly(Texts.of("editor.notes.now-accepted", title));
        });
    }
}
