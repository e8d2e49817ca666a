package orlop.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import orlop.drawing.Drawing;
import orlop.drawing.Extras;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.findings.Finding;
import orlop.findings.Severity;
import orlop.layout.Rect;

class FindingSheetsTest {
    private static final SceneRequest SAMPLE = SampleSheet.request();
    private static final String[] ITEMS = {"W1", "M1", "W6", "E1", "T2", "", "nowhere", "W18", "24MAIN"};

    /** Each says a number in words of its own, so that a lost one is seen. */
    private static List<Finding> findings(int count) {
        List<Finding> all = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            String item = ITEMS[i % ITEMS.length];
            Finding.Place place = item.startsWith("W") ? Finding.Place.cable(item) : Finding.Place.component(item);
            Severity severity = List.of(Severity.values()).get(i * 7 % 3);
            String why = "This is note <" + i + "> of many. " + "It goes on for a while. ".repeat(i % 9);
            all.add(SampleSheet.finding("rule-" + i, severity, place, "Title <" + i + ">", why, null, null));
        }
        return all;
    }

    private static final Map<SheetSize, List<Scene>> MANY = new EnumMap<>(SheetSize.class);

    /** 130 findings on a sheet of this size; made once. */
    private static List<Scene> many(SheetSize size) {
        return MANY.computeIfAbsent(size, s -> pages(s, findings(130)));
    }

    private static List<Scene> pages(SheetSize size, List<Finding> findings) {
        Drawing d = SAMPLE.drawing()
                .with(new Sheet("1", "001", "Main", size, "B", "for check", "owner", "2026-11-25", Extras.NONE));
        return SceneBuilder.bundled().pages(SceneRequest.paper(d, SAMPLE.results(), findings, "1"));
    }

    private static String texts(List<Scene> pages, Role role) {
        StringBuilder s = new StringBuilder();
        pages.stream()
                .flatMap(p -> p.items().stream())
                .filter(i -> i.role() == role)
                .flatMap(i -> i.marks().stream())
                .filter(Mark.Text.class::isInstance)
                .forEach(m -> s.append(((Mark.Text) m).text()).append(' '));
        return s.toString();
    }

    @ParameterizedTest
    @EnumSource(SheetSize.class)
    void of_many_findings_none_is_lost(SheetSize size) {
        int count = 130;
        List<Scene> pages = many(size);
        String margin = texts(pages, Role.MARGIN);

        assertThat(pages.size()).isGreaterThan(1);
        assertThat(IntStream.rangeClosed(1, count).boxed())
                .allSatisfy(i -> assertThat(margin).containsOnlyOnce("Title <" + i + "> "))
                .allSatisfy(i -> assertThat(margin).containsOnlyOnce("note <" + i + "> of"));
        assertThat(margin).doesNotContain("…");
    }

    @ParameterizedTest
    @EnumSource(SheetSize.class)
    void notes_keep_to_their_sheet_and_off_one_another(SheetSize size) {
        for (Scene page : many(size)) {
            Rect body = new SheetFrame(size).body();
            List<Rect> notes = page.items().stream()
                    .filter(i -> i.role() == Role.MARGIN
                            || (i.role() == Role.LEGEND && page.sheet().contains("/F")))
                    .map(i -> ItemMaker.bounds(i.marks().stream()
                            .filter(m -> !(m instanceof Mark.Line))
                            .toList()))
                    .toList();
            assertThat(notes).isNotEmpty().allMatch(n -> body.contains(n));
            for (int i = 0; i < notes.size(); i++) {
                for (Rect later : notes.subList(i + 1, notes.size())) {
                    assertThat(notes.get(i).overlaps(later)).as(page.sheet()).isFalse();
                }
            }
        }
    }

    @Test
    void the_margin_keeps_the_dangers_and_names_the_next_sheet() {
        List<Scene> pages = many(SheetSize.A3);
        List<String> kinds = pages.get(0).items().stream()
                .filter(i -> i.role() == Role.MARGIN && !i.subject().isEmpty())
                .map(i -> i.title().replaceAll("^finding \\d+, (\\w+):.*", "$1"))
                .toList();

        assertThat(kinds).contains("danger").doesNotContain("advice");
        assertThat(texts(pages.subList(0, 1), Role.MARGIN)).containsPattern("\\d+ more: sheet 1/F1");
        assertThat(pages.stream().map(Scene::sheet)).startsWith("1", "1/F1", "1/F2");
        assertThat(texts(pages.subList(1, 2), Role.TITLE_BLOCK))
                .contains("1/F1 of 3", "OSK-E-001/F1", "checker's notes");
        assertThat(pages.stream().map(p -> p.item(Role.CAUTION, "").isPresent()))
                .containsOnly(true);
    }

    @Test
    void the_number_in_the_margin_is_that_of_the_mark_on_the_drawing_and_counts_downwards() {
        List<Scene> pages = pages(SheetSize.A3, findings(20));
        Scene sheet = pages.get(0);
        List<SceneItem> marks =
                sheet.items().stream().filter(i -> i.role() == Role.FINDING).toList();

        assertThat(marks).hasSize(20);
        for (SceneItem mark : marks) {
            SceneItem note = pages.stream()
                    .flatMap(p -> p.items().stream())
                    .filter(i -> i.role() == Role.MARGIN && i.subject().equals(mark.subject()))
                    .findFirst()
                    .orElseThrow();
            assertThat(note.data()).containsEntry("number", mark.data().get("number"));
            assertThat(note.title()).contains("Title <" + mark.subject() + ">");
        }
        assertThat(marks.stream()
                        .map(m -> Integer.valueOf(String.valueOf(m.data().get("number")))))
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 20).boxed().toList());
    }

    @Test
    void a_note_that_is_higher_than_a_sheet_goes_on_in_the_next_column() {
        String reason = IntStream.rangeClosed(1, 900).mapToObj(i -> "word" + i).reduce("", (a, b) -> a + " " + b);
        Finding f =
                SampleSheet.finding("long", Severity.ADVICE, Finding.Place.component("M1"), "Long", reason, null, null);
        String margin = texts(pages(SheetSize.A4, List.of(f)), Role.MARGIN);

        assertThat(IntStream.rangeClosed(1, 900).boxed())
                .allSatisfy(i -> assertThat(margin).contains("word" + i + " "));
    }

    @Test
    void without_a_printed_margin_there_is_one_page() {
        SceneRequest screen = SceneRequest.screen(SAMPLE.drawing(), SAMPLE.results(), findings(60), "1");

        assertThat(SceneBuilder.bundled().pages(screen).size()).isEqualTo(1);
    }
}
