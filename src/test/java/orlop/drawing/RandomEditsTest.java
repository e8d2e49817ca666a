package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edits by chance: none may leave a flaw, and undo must give every drawing back. */
class RandomEditsTest {
    private final Random random = new Random();

    private <T> T any(Iterable<T> of) {
        List<T> all = new ArrayList<>();
        of.forEach(all::add);
        return all.get(random.nextInt(all.size()));
    }

    private String tag() {
        return any(List.of("E", "W", "FC", "QB")) + random.nextInt(12);
    }

    private TerminalRef terminal(Drawing d) {
        Component c = any(d.components().values());
        List<String> names = c.particulars().terminals();
        return new TerminalRef(c.id(), names.isEmpty() ? any(List.of("a", "b", "main", "1")) : any(names));
    }

    private Set<String> some(Drawing d) {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            ids.add(
                    random.nextInt(3) == 0
                            ? tag()
                            : any(d.components().values()).id());
        }
        return ids;
    }

    private Component fresh(Drawing d) {
        Kind kind = any(List.of(Kind.values()));
        String system = any(List.of("24", "12"));
        List<String> systems = kind.spansSystems() ? List.of(system, "12") : List.of(system);
        return Component.of(
                random.nextInt(4) == 0 ? tag() : Tags.next(d, kind),
                kind,
                Place.at("1", random.nextInt(400), 50),
                systems);
    }

    private Edit edit(Drawing d) {
        if (d.components().size() < 5) {
            return Edits.place(fresh(d));
        }
        return switch (random.nextInt(12)) {
            case 0 -> Edits.place(fresh(d));
            case 1 -> Edits.move(some(d), random.nextInt(50) - 25, 5, random.nextInt(2));
            case 2 ->
                Edits.runCable(
                        Cable.of(Tags.nextCable(d), terminal(d), terminal(d)).withLengthM(2.0));
            case 3 -> Edits.joinDirectly(Link.of(terminal(d), terminal(d)));
            case 4 -> Edits.change(any(d.components().values()).withName("n" + random.nextInt(9)), "name");
            case 5 ->
                Edits.change(any(d.components().values())
                        .withParticulars(any(List.of(Kind.values())).defaults()));
            case 6 ->
                Edits.change(OperatingCondition.asDrawn("c" + random.nextInt(3), "")
                        .withSource(any(d.components().values()).id(), random.nextBoolean())
                        .withLoad(any(d.components().values()).id(), LoadState.DEFAULT));
            case 7 ->
                Edits.rename(random.nextBoolean() ? any(d.components().values()).id() : tag(), tag());
            case 8, 9 ->
                Edits.insert(
                        d.cables().isEmpty() ? "W1" : any(d.cables().values()).id(),
                        fresh(d),
                        any(List.of(0.0, 0.4, 1.0)));
            case 10 ->
                Edits.accept(
                        new Acceptance("a" + random.nextInt(5), "r", tag(), "known", "", "", List.of(), Extras.NONE));
            default -> Edits.delete(some(d));
        };
    }

    private static Edit orNothing(java.util.function.Supplier<Edit> maker) {
        try {
            return maker.get();
        } catch (Checks.OutOfRange e) {
            return Edit.of(Message.of("drawing.edit.vessel"), d -> d); // a cable from a terminal to itself
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void five_hundred_edits_leave_no_flaw_and_undo_gives_the_first_drawing(long seed) {
        random.setSeed(seed);
        Drawing first = Sketch.make();
        History history = new History(first);
        int changed = 0;
        int refused = 0;
        for (int i = 0; i < 500; i++) {
            Drawing before = history.current();
            Edit edit = orNothing(() -> edit(before));
            try {
                if (history.apply(edit)) {
                    changed++;
                    assertThat(Soundness.flaws(history.current()))
                            .as("edit %d", i)
                            .isEmpty();
                    undoneAndRedone(history);
                }
            } catch (Edit.Refusal r) {
                refused++;
                assertThat(history.current()).isSameAs(before);
                assertThat(Words.english().text(r.reason())).doesNotContain("drawing.", "{0}");
            }
        }
        Drawing last = history.current();
        assertThat(changed).isGreaterThan(150);
        assertThat(refused).isGreaterThan(50);
        while (history.undoLabel().isPresent()) {
            history.undo();
        }
        assertThat(history.current()).isSameAs(first).isEqualTo(Sketch.make());
        while (history.redoLabel().isPresent()) {
            history.redo();
        }
        assertThat(history.current()).isSameAs(last);
    }

    private void undoneAndRedone(History history) {
        if (random.nextInt(4) == 0) {
            Drawing after = history.current();
            history.undo();
            assertThat(history.current()).isNotEqualTo(after);
            assertThat(Soundness.flaws(history.current())).isEmpty();
            history.redo();
            assertThat(history.current()).isSameAs(after);
        }
    }
}
