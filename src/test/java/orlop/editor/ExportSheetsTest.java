package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.Same;
import orlop.desk.Sample;
import orlop.drawing.Drawing;
import orlop.drawing.Message;

/** Sheets are written out of the window, as the person chose. */
@Timeout(120)
class ExportSheetsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private HeadlessBench on;

    @BeforeEach
    void open() throws Exception {
        on = HeadlessBench.open(Sample.of("pilot-cutter"));
        on.answers().agree = true;
    }

    @AfterEach
    void close() throws Exception {
        on.close();
    }

    private void export(String file, int form, int condition, List<String> left) throws Exception {
        on.answers().file = folder.resolve(file);
        on.answers().filling = page -> {
            FormParts.named(page, JComboBox.class, "form.form").setSelectedIndex(form);
            FormParts.named(page, JComboBox.class, "form.figures").setSelectedIndex(condition);
            left.forEach(s ->
                    FormParts.named(page, JCheckBox.class, "form.sheet." + s).setSelected(false));
        };
        on.run(CommandId.EXPORT_SHEETS);
    }

    @Test
    void a_pdf_holds_the_chosen_sheets_with_the_figures_of_the_chosen_condition() throws Exception {
        export("cutter.pdf", 0, 0, List.of("1", "3"));

        try (var pdf = Loader.loadPDF(folder.resolve("cutter.pdf").toFile())) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text)
                    .contains("OSK-E-002", "OSK-E-004", "At anchor, evening", "Local codes prevail")
                    .doesNotContain("OSK-E-003");
            assertThat(pdf.getNumberOfPages()).isGreaterThanOrEqualTo(2);
        }
    }

    @Test
    void pictures_are_a_file_a_page_named_by_the_number_of_the_sheet() throws Exception {
        export("cutter.svg", 1, 5, List.of("2", "4"));

        assertThat(folder.resolve("cutter-001.svg")).exists();
        assertThat(folder.resolve("cutter-003.svg")).exists();
        assertThat(folder.resolve("cutter-002.svg")).doesNotExist();
        assertThat(Files.readString(folder.resolve("cutter-001.svg"))).contains("governing");
    }

    @Test
    void a_picture_beside_the_named_one_is_not_written_over_unasked() throws Exception {
        Path mine = Files.writeString(folder.resolve("cutter-003.svg"), "mine");

        export("cutter.svg", 1, 5, List.of("2", "4"));
        assertThat(mine).hasContent("mine");
        assertThat(folder.resolve("cutter-001.svg")).as("all of it or nothing").doesNotExist();
        assertThat(on.answers().asked)
                .last()
                .asString()
                .contains("cutter-003.svg")
                .doesNotContain("001");
        assertThat(on.session().state().notice()).isEqualTo(Message.of("editor.say.given-up"));

        on.answers().choice = 0;
        export("cutter.svg", 1, 5, List.of("2", "4"));
        assertThat(Files.readString(mine)).contains("OSK-E-003");
        assertThat(folder.resolve("cutter-001.svg")).exists();
    }

    @Test
    void a_sheet_whose_notes_go_on_behind_it_says_where_they_are_written() throws Exception {
        on.close();
        on = HeadlessBench.open(Sample.of("pilot-cutter-first-sketch"));
        on.answers().file = folder.resolve("sketch.svg");

        on.run(CommandId.EXPORT_SVG);

        assertThat(Files.readString(folder.resolve("sketch.svg"))).contains("1/F1");
        assertThat(on.session().state().notice()).isEqualTo(Message.of("editor.say.exported-first", "sketch.svg"));
    }

    @Test
    void no_sheet_at_all_is_told_and_nothing_is_written() throws Exception {
        export("cutter.pdf", 0, 0, List.of("1", "2", "3", "4"));

        assertThat(folder.resolve("cutter.pdf")).doesNotExist();
        assertThat(on.answers().told)
                .singleElement()
                .isEqualTo(Texts.title(orlop.drawing.Message.of("desk.export.sheets")));
    }

    @Test
    void what_cannot_be_written_is_told_and_what_stood_there_stays() throws Exception {
        Path old = Files.writeString(folder.resolve("cutter.pdf"), "old");
        Files.setPosixFilePermissions(old, java.nio.file.attribute.PosixFilePermissions.fromString("r--r--r--"));
        Drawing before = on.session().state().drawing();

        export("cutter.pdf", 0, 0, List.of("1", "2", "3"));
        export("no such folder/cutter.pdf", 0, 0, List.of("1", "2", "3"));

        assertThat(on.answers().told).isNotEmpty();
        assertThat(on.answers().told.get(on.answers().told.size() - 1)).contains("no such folder");
        assertThat(Same.object(on.session().state().drawing(), before)).isTrue();
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(old);
        }
    }

    @Test
    void the_window_stays_free_while_a_file_is_written_and_says_so() throws Exception {
        Deque<Runnable> waiting = new ArrayDeque<>();
        Commands c = new Commands("ctrl");
        on.answers().file = folder.resolve("sheet.svg");
        HeadlessBench.onUi(() -> {
            new ExportCommands(on.session(), new ShownScene(), on.answers(), waiting::add, Runnable::run).addTo(c);
            c.get(CommandId.EXPORT_SVG).run();
            c.refresh();

            assertThat(on.session().state().notice()).isEqualTo(Message.of("editor.say.exporting", "sheet.svg"));
            assertThat(c.get(CommandId.EXPORT_PNG).isEnabled()).isFalse();
            assertThat(folder.resolve("sheet.svg")).doesNotExist();
            on.session().showSheet("2"); // what was asked for is written, whatever is shown by then

            waiting.remove().run();
            c.refresh();
        });

        assertThat(Files.readString(folder.resolve("sheet.svg"))).contains("OSK-E-001");
        assertThat(on.session().state().notice()).isEqualTo(Message.of("editor.say.exported", "sheet.svg"));
        assertThat(c.get(CommandId.EXPORT_PNG).isEnabled()).isTrue();
    }

    @Test
    void an_export_that_is_given_up_leaves_what_stood_in_its_file() throws Exception {
        for (CommandId id : List.of(CommandId.EXPORT_SVG, CommandId.EXPORT_PNG, CommandId.EXPORT_SHEETS)) {
            Path file = Files.writeString(folder.resolve("kept" + id.word()), "old");
            Deque<Runnable> waiting = new ArrayDeque<>();
            Commands c = new Commands("ctrl");
            HeadlessBench.onUi(() -> {
                ExportCommands exports =
                        new ExportCommands(on.session(), new ShownScene(), on.answers(), waiting::add, Runnable::run);
                exports.addTo(c);
                on.answers().file = file;
                assertThat(exports.giveUp()).as("nothing is being written yet").isFalse();
                c.get(id).run();
                assertThat(exports.giveUp()).isTrue();
                waiting.remove().run();

                assertThat(on.session().state().notice()).isEqualTo(Message.of("editor.say.given-up"));
                assertThat(exports.giveUp()).isFalse();
                c.get(id).run(); // and another one can be begun
                assertThat(waiting).hasSize(1);
            });
            assertThat(Files.readString(file)).isEqualTo("old");
        }
    }

    @Test
    void escape_gives_an_export_up_before_it_lets_go_of_what_is_selected() throws Exception {
        HeadlessBench.onUi(() -> {
            boolean[] asked = new boolean[1];
            on.session().select(java.util.Set.of("GB1"));
            on.bench().canvas().onBackOut(() -> {
                asked[0] = !asked[0];
                return asked[0];
            });
            on.bench().commands().get(CommandId.BACK_OUT).run();
            assertThat(on.session().state().selection()).containsExactly("GB1");
            on.bench().commands().get(CommandId.BACK_OUT).run();
            assertThat(on.session().state().selection()).isEmpty();
        });
    }
}
