package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.desk.CardEdits;
import orlop.desk.CardField;
import orlop.desk.CardFields;
import orlop.desk.SheetExport;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Message;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.Words;

/** Everything that the window shows has words. */
class EditorWordsTest {
    private final Words words = Words.english();

    @Test
    void every_command_group_and_key_has_its_words() {
        List<String> keys = new ArrayList<>();
        Arrays.stream(CommandId.values()).map(c -> "editor.command." + c.word()).forEach(keys::add);
        for (Group g : Group.values()) {
            keys.add("editor.group." + g.word());
            keys.add("editor.group.short." + g.word());
        }

        assertThat(keys).allSatisfy(k -> assertThat(words.pattern(k)).as(k).isPresent());
    }

    @Test
    void every_kind_of_file_that_is_written_has_its_words() {
        List<String> suffixes = new ArrayList<>(List.of(".orlop", ".svg", ".png"));
        Arrays.stream(SheetExport.Form.values()).map(SheetExport.Form::suffix).forEach(suffixes::add);

        assertThat(suffixes)
                .allSatisfy(
                        s -> assertThat(words.pattern("editor.files" + s)).as(s).isPresent());
    }

    @Test
    void every_line_and_choice_of_every_kinds_card_has_its_words() {
        for (Kind k : Kind.values()) {
            Drawing d = Drawing.empty("a vessel")
                    .with(Sheet.of("1", ""))
                    .with(ElectricalSystem.of("24", Nature.AC3N, 24))
                    .with(OperatingCondition.asDrawn("c", ""))
                    .with(Component.of("X1", k, Place.at("1", 0, 0), List.of("24")));

            assertThat(CardFields.of(d, "X1", "c")).isNotEmpty().allSatisfy(this::spoken);
        }
    }

    private void spoken(CardField f) {
        assertThat(words.pattern("editor.field." + f.name())).as(f.name()).isPresent();
        assertThat(f.choices())
                .allSatisfy(c -> assertThat(words.pattern(c.label().key()))
                        .as(c.label().key())
                        .isPresent());
    }

    /** On three phases, where all of them mean something. */
    @Test
    void every_particular_of_every_kind_stands_on_its_card() {
        for (Kind k : Kind.values()) {
            Component c = Component.of("X1", k, Place.at("1", 0, 0), List.of("400"));
            List<String> parts = Arrays.stream(k.defaults().getClass().getRecordComponents())
                    .map(RecordComponent::getName)
                    .toList();

            assertThat(lines(c)).as(k.word()).containsAll(parts);
        }
    }

    /** The names of the lines of a card; of a plain load those of all its behaviours. */
    private static Set<String> lines(Component c) {
        Drawing d = Drawing.empty("a vessel")
                .with(Sheet.of("1", ""))
                .with(ElectricalSystem.of("400", Nature.AC3N, 400))
                .with(c);
        Set<String> names = new HashSet<>();
        CardFields.of(d, "X1", "").forEach(f -> names.add(f.name()));
        if (c.kind() == Kind.LOAD) {
            for (LoadBehaviour b : LoadBehaviour.values()) {
                Drawing other =
                        CardEdits.set("X1", "particulars.behaviour", b, "").applyTo(d);
                CardFields.of(other, "X1", "").forEach(f -> names.add(f.name()));
            }
        }
        return names;
    }

    @Test
    void every_meaning_is_that_of_a_particular_that_has_a_label() throws Exception {
        java.util.Properties all = new java.util.Properties();
        try (var in = Words.class.getResourceAsStream("/orlop/words/editor.properties")) {
            all.load(in);
        }
        List<String> meanings = all.stringPropertyNames().stream()
                .filter(k -> k.startsWith("editor.meaning."))
                .map(k -> k.substring("editor.meaning.".length()))
                .toList();

        assertThat(meanings).hasSizeGreaterThan(40);
        assertThat(meanings)
                .allSatisfy(m ->
                        assertThat(words.pattern("editor.field." + m)).as(m).isPresent());
    }

    @Test
    void every_kind_can_be_taken_from_the_locker_by_two_keys_of_its_own() {
        for (Group g : Group.values()) {
            assertThat(LockerKeys.group(g.letters().charAt(0))).contains(g);
            assertThat(LockerKeys.rows(g))
                    .isNotEmpty()
                    .allSatisfy(r -> assertThat(LockerKeys.kind(g, r.letter())).contains(r.kind()));
        }
        assertThat(Arrays.stream(Group.values())
                        .mapToInt(g -> LockerKeys.rows(g).size())
                        .sum())
                .isEqualTo(Kind.values().length);
    }

    @Test
    void no_two_commands_have_the_same_key() {
        assertThat(Arrays.stream(CommandId.values()).map(c -> c.key("ctrl")).filter(k -> k != null))
                .doesNotHaveDuplicates();
    }

    @Test
    void a_sentence_begins_with_a_capital_and_the_name_of_a_file_stays_as_it_is() {
        assertThat(Texts.title(Message.of("editor.say.copy", "my boat.orlop"))).startsWith("my boat.orlop is");
        assertThat(Texts.title(Message.of("editor.say.copy", "heron.orlop"))).startsWith("heron.orlop is");
        assertThat(Texts.title(Message.of("editor.say.no-clip"))).startsWith("There");
    }
}
