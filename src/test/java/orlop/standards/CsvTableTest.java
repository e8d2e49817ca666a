package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvTableTest {
    private static final String HEADER = "# a comment\na,b,provenance,source\n";

    private static CsvRow row(String line) {
        return CsvTable.parse("t.csv", HEADER + line).rows().get(0);
    }

    @Test
    void commas_and_doubled_quotes_stand_in_quotes() {
        CsvRow row = row("\"one, \"\"two\"\"\",,seen,\"the book, p. 3\"");

        assertThat(row.text("a")).isEqualTo("one, \"two\"");
        assertThat(row.text("b")).isEmpty();
        assertThat(row.optionalNumber("b")).isEmpty();
        assertThat(row.source()).isEqualTo("the book, p. 3");
    }

    @Test
    void an_empty_last_field_counts() {
        assertThat(row("1,2,seen,").text("source")).isEmpty();
    }

    @Test
    void comments_and_blank_lines_are_no_rows_but_count_as_lines() {
        CsvTable table = CsvTable.parse("t.csv", HEADER + "\n# more\n1,x,seen,s\n");

        assertThat(table.rows()).hasSize(1);
        assertThatIllegalStateException()
                .isThrownBy(() -> table.rows().get(0).number("b"))
                .withMessage("t.csv line 5: \"b\" is not a number: x");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "1,2,seen|t.csv line 3: 3 fields where the header names 4 columns",
                "1,2,seen,s,5|t.csv line 3: 5 fields where the header names 4 columns",
                "1,\"2,seen,s|t.csv line 3: a quote is not closed: \"2,seen,s",
                "1,\"2\"x,seen,s|t.csv line 3: text behind a closing quote: x,seen,s",
                "1,2\"x,seen,s|t.csv line 3: a quote inside a field that does not begin with one: 2\"x",
            })
    void a_broken_line_is_refused_by_file_and_line(String line, String message) {
        assertThatIllegalStateException()
                .isThrownBy(() -> CsvTable.parse("t.csv", HEADER + line))
                .withMessage(message);
    }

    @ParameterizedTest
    @CsvSource({"NaN", "Infinity", "''", "'1,5'", "0x"})
    void what_is_no_finite_number_is_refused(String text) {
        CsvRow row = row("\"" + text + "\",2,seen,s");

        assertThatIllegalStateException()
                .isThrownBy(() -> row.number("a"))
                .withMessageStartingWith("t.csv line 3: \"a\" is ");
    }

    @Test
    void a_number_without_provenance_or_source_is_not_read_out() {
        assertThatIllegalStateException()
                .isThrownBy(() -> row("1,2,,s").sourced("a"))
                .withMessage("t.csv line 3: \"provenance\" is empty");
        assertThatIllegalStateException()
                .isThrownBy(() -> row("1,2,seen,").sourced("a"))
                .withMessage("t.csv line 3: \"source\" is empty");
        assertThatIllegalStateException()
                .isThrownBy(() -> row("1,2,heard,s").sourced("a"))
                .withMessageStartingWith("t.csv line 3: provenance \"heard\" is none of");
    }

    @Test
    void an_unknown_column_and_neither_yes_nor_no_are_refused() {
        assertThatIllegalStateException()
                .isThrownBy(() -> row("1,2,seen,s").text("c"))
                .withMessage("t.csv line 3: no column \"c\" among [a, b, provenance, source]");
        assertThatIllegalStateException()
                .isThrownBy(() -> row("1,maybe,seen,s").yes("b"))
                .withMessage("t.csv line 3: \"b\" is neither yes nor no: maybe");
    }

    @Test
    void doubled_column_names_empty_tables_and_missing_files_are_refused() {
        assertThatIllegalStateException()
                .isThrownBy(() -> CsvTable.parse("t.csv", "a,a\n1,2"))
                .withMessageContaining("t.csv line 1: column names must be different");
        assertThatIllegalStateException()
                .isThrownBy(() -> CsvTable.parse("t.csv", HEADER))
                .withMessage("t.csv has no rows");
        assertThatIllegalStateException()
                .isThrownBy(() -> CsvTable.load("nothing.csv"))
                .withMessageContaining("nothing.csv is not on the class path");
    }
}
