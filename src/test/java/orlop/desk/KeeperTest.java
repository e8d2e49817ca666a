package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import orlop.drawing.Edits;
import orlop.drawing.Message;
import orlop.store.Journal;

/** What happens when there is no room for the journal, and when there is some again. */
class KeeperTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    private final QueueUi ui = new QueueUi();
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();
    private final Session session = new Session(SmallBoat.drawing(), null, Review::of, task -> {}, ui, e -> {
        throw new AssertionError(e);
    });
    private final List<Boolean> kept = new ArrayList<>();

    @AfterEach
    void end() {
        clock.shutdownNow();
    }

    private void call(String name) {
        session.apply(Edits.change(
                session.state().drawing().components().require("EA1").withName(name)));
    }

    private String told() {
        Message notice = session.state().notice();
        return notice == null ? "" : notice.key();
    }

    @Test
    void what_cannot_be_kept_is_told_for_as_long_as_it_lasts_and_tried_again_without_another_edit() throws Exception {
        Path journals = folder.resolve("journals");
        Keeper keeper = new Keeper(session, Journal.begin(journals), clock, ui);
        keeper.onKept(kept::add);
        Path aside = Files.move(journals, folder.resolve("aside")); // as good as a full disk, and for every user

        call("first");
        keeper.writeNow();
        ui.runAll();
        assertThat(told()).isEqualTo("desk.no-journal");
        call("second"); // takes the place of what was told at the foot
        keeper.writeNow();
        ui.runAll();
        assertThat(told()).as("it isn't said again and again").isNotEqualTo("desk.no-journal");
        assertThat(kept).containsExactly(false);

        Files.move(aside, journals);
        keeper.writeNow();
        ui.runAll();

        assertThat(kept).containsExactly(false, true);
        assertThat(told()).isEqualTo("desk.journal-again");
        try (var files = Files.list(journals)) {
            assertThat(files.filter(f -> f.toString().endsWith(".orlop-journal")))
                    .singleElement()
                    .satisfies(f -> assertThat(Files.readString(f)).contains("second"));
        }
        keeper.close();
    }
}
