package orlop.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a person reads when a file is no drawing: each case changes one thing of a sound file. A ^ marks the place that
 * the message must tell.
 */
class FileProblemTest {
    private static final String SOUND = """
            { "orlop": 1,
              "systems": [ { "id": "24", "nature": "dc", "nominalV": 24 }, { "id": "12", "nature": "dc", "nominalV": 12 } ],
              "conditions": [ { "id": "c", "loads": { "E1": { "average": 0.5 } }, "sources": { "GB1": "on" },
                                "switches": { "QB1": "open" } } ],
              "sheets": [ { "id": "1", "size": "A3" } ],
              "components": [
                { "id": "GB1", "kind": "battery", "sheet": "1", "at": [10, 20], "system": "24" },
                { "id": "QB1", "kind": "isolator", "sheet": "1", "at": [30, 20], "system": "24" },
                { "id": "E1", "kind": "load", "sheet": "1", "at": [50, 20], "system": "24", "powerW": 60 },
                { "id": "C", "kind": "junction", "sheet": "1", "at": [70, 20], "system": "12" } ],
              "cables": [ { "id": "W1", "from": "GB1.1", "to": "QB1.1", "lengthM": 2.5, "areaMm2": 70 },
                          { "id": "W2", "from": "QB1.2", "to": "E1.1" } ],
              "links": [ { "from": "GB1.2", "to": "E1.2" } ],
              "dayPlans": [ { "id": "d", "steps": [ { "condition": "c", "hours": 24 } ] } ] }
            """;

    private static FileProblem problem(String text) {
        return Objects.requireNonNull(
                catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(text.getBytes(UTF_8), "a.orlop")),
                "it was read as a drawing");
    }

    @Test
    void the_file_without_a_change_is_sound() throws FileProblem {
        assertThat(DrawingFile.load(SOUND.getBytes(UTF_8), "a.orlop").cables().size())
                .isEqualTo(2);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{ \"orlop\": 1, | ^{ | the key \"orlop\" with the version of the format is missing: write \"orlop\": 1 first if this is a drawing",
                "\"orlop\": 1 | \"orlop\": ^2 | orlop: the file was written by a newer Orlop (format 2; this one reads format 1): open it with the newer Orlop, or save it there in an older format",
                "\"orlop\": 1 | \"orlop\": ^\"1\" | orlop: the version of the format is \"1\": write \"orlop\": 1",
                "\"orlop\": 1 | \"orlop\": ^0 | orlop: the version of the format is 0: write \"orlop\": 1",
                "\"orlop\": 1 | \"orlop\": ^1.5 | orlop: the version of the format is 1.5: write \"orlop\": 1",
                "\"sheets\" | ^\"sheet\" | sheet: the key \"sheet\" is not known and looks like \"sheets\": write \"sheets\"; if it really is a key of your own, give it a name less like it",
                "\"lengthM\" | ^\"lenghtM\" | cables[0] W1 · lenghtM: the key \"lenghtM\" is not known and looks like \"lengthM\": write \"lengthM\"; if it really is a key of your own, give it a name less like it",
                "\"from\": \"QB1.2\" | ^\"form\": \"QB1.2\" | cables[1] W2 · form: the key \"form\" is not known and looks like \"from\": write \"from\"; if it really is a key of your own, give it a name less like it",
                "\"kind\": \"load\" | ^\"knd\": \"load\" | components[2] E1 · knd: the key \"knd\" is not known and looks like \"kind\": write \"kind\"; if it really is a key of your own, give it a name less like it",
                "{ \"id\": \"E1\", \"kind\": \"load\", | ^{ \"id\": \"E1\", | components[2] E1: the key \"kind\" is missing: add it",
                "{ \"id\": \"E1\", \"kind\": \"load\", \"sheet\": \"1\", \"at\": [50, 20], \"system\": \"24\", | ^{ \"id\": \"E1\", \"kind\": \"load\", | components[2] E1: the key \"system\" is missing: add it",
                "{ \"id\": \"W2\", \"from\": \"QB1.2\", | ^{ \"id\": \"W2\", | cables[1] W2: the key \"from\" is missing: add it",
                "\"load\" | ^\"lode\" | components[2] E1 · kind: \"lode\" is none of the words for this key: write the right one; the most alike are load, diode, fuse, motor, hull",
                "\"A3\" | ^\"A5\" | sheets[0] 1 · size: \"A5\" is none of the words for this key: write one of A1, A2, A3, A4, A4-upright",
                "[10, 20] | ^[10] | components[0] GB1 · at: here must stand a place of two numbers, such as [70, 55], but there stands a list in [ ]: write a place of two numbers, such as [70, 55]",
                "[10, 20] | [10, ^\"20\"] | components[0] GB1 · at[1]: here must stand a number without quotes, but there stands \"20\": write a number without quotes",
                "[10, 20] | ^[10, 20000] | components[0] GB1 · at: at must be from −10000 to 10000, but is 20000: write a value in that range",
                "\"lengthM\": 2.5 | \"lengthM\": ^-2.5 | cables[0] W1 · lengthM: lengthM must be 0 or more, but is −2.5: write a value in that range",
                "\"areaMm2\": 70 | \"areaMm2\": ^\"automatic\" | cables[0] W1 · areaMm2: here must stand an area in mm² without quotes, or \"auto\", but there stands \"automatic\": write an area in mm² without quotes, or \"auto\"",
                "\"QB1.1\" | ^\"QB1\" | cables[0] W1 · to: to \"QB1\" is no terminal: write COMPONENT.TERMINAL, such as GB1.1",
                "\"QB1.1\" | ^\"GB1.1\" | cables[0] W1 · to: to is the terminal GB1.1 where it starts: give the other end",
                "\"QB1.1\" | ^\"QB9.1\" | cables[0] W1 · to: there is no component QB9: draw it, or name one that is there",
                "\"QB1.1\" | ^\"QB1.3\" | cables[0] W1 · to: QB1 has no terminal 3: its terminals are 1, 2",
                "\"W2\" | ^\"W1\" | cables[1] W1 · id: the id W1 stands twice in this list: give one of the two another id, or take it out",
                "\"W2\" | ^\"QB1\" | cables[1] QB1 · id: the tag QB1 is used by a component and by a cable: rename one of them",
                "\"from\": \"GB1.2\" | \"id\": ^\"E1\", \"from\": \"GB1.2\" | links[0] E1 · id: the tag E1 is used by a link and by a component or cable: rename one of them",
                "\"id\": \"W2\" | \"id\": \"W2\", ^\"id\": \"W2\" | cables[1] W2 · id: the key \"id\" stands twice in the same object: take one of the two out",
                "\"sheet\": \"1\", \"at\": [30, 20] | \"sheet\": ^\"2\", \"at\": [30, 20] | components[1] QB1 · sheet: there is no sheet 2: add it to the sheets, or name one that is there",
                "\"system\": \"24\", \"powerW\" | \"system\": ^\"48\", \"powerW\" | components[2] E1 · system: there is no system 48: add it to the systems, or name one that is there: 2 more of this kind stand in the file",
                "\"to\": \"E1.1\" | \"to\": ^\"C.1\" | cables[1] W2 · to: QB1.2 belongs to system 24 and C.1 to system 12: only a converter or transformer joins two systems",
                "\"powerW\": 60 | \"powerW\": 60, ^\"systems\": [\"24\"] | components[2] E1 · systems: \"system\" and \"systems\" are both given: keep \"system\" for one system, \"systems\" for two and more",
                "\"average\": 0.5 | \"average\": ^5 | conditions[0] c · loads · E1 · average: average must be from 0 to 1, but is 5: write a value in that range",
                "{ \"E1\": { | ^{ \"E9\": { | conditions[0] c · loads: there is no component E9: draw it, or name one that is there",
                "{ \"GB1\": \"on\" | ^{ \"GB1\": \"yes\" | conditions[0] c · sources: GB1 is \"yes\": a source is \"on\" or \"off\"",
                "{ \"QB1\": \"open\" | ^{ \"QB1\": \"ajar\" | conditions[0] c · switches: QB1 is \"ajar\": its positions are open, closed",
                "{ \"id\": \"d\", \"steps\": [ { \"condition\": \"c\" | ^{ \"id\": \"d\", \"steps\": [ { \"condition\": \"x\" | dayPlans[0] d · condition: there is no condition x: add it to the conditions, or name one that is there",
                "\"hours\": 24 | \"hours\": ^25 | dayPlans[0] d · steps[0] · hours: hours must be from 0 to 24, but is 25: write a value in that range",
                "\"powerW\": 60 | \"powerW\": ^1e400 | components[2] E1 · powerW: the number 1e400 is too large or too small to be calculated with: write a number between 1e-300 and 1e300",
                "\"powerW\": 60 | \"powerW\": ^NaN | components[2] E1 · powerW: this is no valid JSON at \"NaN\": a quote, comma, colon or bracket is missing or too many at this place or just before it",
                "\"powerW\": 60 | \"powerW\": 60,^, | components[2] E1 · powerW: this is no valid JSON at \",\": a quote, comma, colon or bracket is missing or too many at this place or just before it",
                "\"powerW\": 60 | \"powerW\" ^60 | components[2] E1 · powerW: this is no valid JSON at \"6\": a quote, comma, colon or bracket is missing or too many at this place or just before it",
            })
    void a_changed_file_tells_place_cause_and_cure(String from, String to, String expected) {
        assertThat(SOUND).contains(from);
        int at = SOUND.indexOf(from);
        String marked = SOUND.substring(0, at) + to + SOUND.substring(at + from.length());
        String before = marked.substring(0, marked.indexOf('^'));
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        int column = before.length() - before.lastIndexOf('\n');

        FileProblem p = problem(marked.replace("^", ""));

        assertThat(p.getMessage()).isEqualTo("a.orlop:" + line + ":" + column + ": " + expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | 1:1: the file is empty: take the drawing from a backup, or start a new one",
                "` ` | 1:1: the file is empty: take the drawing from a backup, or start a new one",
                "[] | 1:1: the file holds JSON, but no drawing: a drawing starts with { \"orlop\": 1",
                "null | 1:1: the file holds JSON, but no drawing: a drawing starts with { \"orlop\": 1",
                "{} | 1:1: the key \"orlop\" with the version of the format is missing: write \"orlop\": 1 first if this is a drawing",
                "{\"orlop\":1} x | 1:13: there is more text behind the end of the drawing: take it out",
                "{\"orlop\":1} 7 | 1:13: there is more text behind the end of the drawing: take it out",
                "{\"orlop\":1 | 1:11: orlop: the text ends in the middle: the end of the file is missing: take it from a backup, or write the missing end",
                "{\"orlop\":1,\"cables\":{}} | 1:21: cables: here must stand a list in [ ], but there stands an object in { }: write a list in [ ]",
                "{\"orlop\":1,\"vessel\":[]} | 1:21: vessel: here must stand an object in { }, but there stands a list in [ ]: write an object in { }",
                "{\"orlop\":1,\"sheets\":[7]} | 1:22: sheets[0]: here must stand an object in { }, but there stands 7: write an object in { }",
                "{\"orlop\":1,\"sheets\":[{\"id\":\"a b\"}]} | 1:28: sheets[0] a b · id: id \"a b\" cannot be used: give 1 to 64 characters without spaces, quotes or < > & \\",
                "{\"orlop\":1,\"vessel\":{\"name\":\"\\u0000\"}} | 1:29: vessel · name: name holds more than 2,000 characters or some that cannot be printed: shorten it or take them out",
                "{'orlop':1} | 1:2: this is no valid JSON at \"'\": a quote, comma, colon or bracket is missing or too many at this place or just before it",
                "{\"orlop\":1,} | 1:12: orlop: this is no valid JSON at \"}\": a quote, comma, colon or bracket is missing or too many at this place or just before it",
                "{\"orlop\":1 /* x */} | 1:12: orlop: this is no valid JSON at \"/\": a quote, comma, colon or bracket is missing or too many at this place or just before it",
            })
    void a_text_that_is_no_drawing_is_told_from_one(String text, String expected) {
        assertThat(problem(text).getMessage()).isEqualTo("a.orlop:" + expected);
    }

    @Test
    void bytes_that_are_not_utf_8_are_told_with_their_place() {
        byte[] latin = "{\"orlop\":1,\n \"vessel\":{\"name\":\"M\u00F6we\"}}"
                .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);

        FileProblem p = catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(latin, "a.orlop"));

        assertThat(p)
                .hasMessage(
                        "a.orlop:2:21: this is not UTF-8 text: check that it is a drawing; if it was edited, save it as UTF-8");
        byte[] cut = {'{', (byte) 0xC3};
        assertThat(catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(cut, "a.orlop")))
                .hasMessageStartingWith("a.orlop:1:2: this is not UTF-8 text");
    }

    @Test
    void its_parts_can_be_asked_for() {
        FileProblem p = problem(SOUND.replace("\"lengthM\": 2.5", "\"lengthM\": true"));

        assertThat(p.file()).isEqualTo("a.orlop");
        assertThat(p.line()).isEqualTo(11);
        assertThat(p.column()).isEqualTo(72);
        assertThat(p.place()).isEqualTo("cables[0] W1 · lengthM");
        assertThat(p.reason().key()).isEqualTo("store.wrong-type");
        assertThat(p.cure().orElseThrow().key()).isEqualTo("store.wrong-type.cure");
        assertThat(p.getStackTrace()).isEmpty();
    }
}
