package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class DisplayTest {
    private static final byte[] COOKIE = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16};

    @TempDir
    private Path folder;

    @BeforeEach
    void a_java_that_can_show_windows() throws IOException {
        Files.createFile(folder.resolve("libawt_xawt.so"));
    }

    @Test
    void no_display_named_is_none() {
        assertThat(probe(Map.of())).isEqualTo(Display.State.NONE);
        assertThat(probe(Map.of("DISPLAY", " "))).isEqualTo(Display.State.NONE);
    }

    @Test
    void a_wayland_display_alone_is_none_since_java_17_can_not_use_it() {
        assertThat(probe(Map.of("WAYLAND_DISPLAY", "wayland-0"))).isEqualTo(Display.State.NONE);
    }

    @Test
    void a_java_told_to_be_headless_has_none_even_where_a_display_answers() throws IOException {
        try (FakeXServer server = FakeXServer.welcoming()) {
            Map<String, String> env = Map.of("DISPLAY", server.name());
            assertThat(Display.probe(new Display.Surroundings(env, "Linux", "true", folder.toString())))
                    .isEqualTo(Display.State.NONE);
            assertThat(server.visitors()).isZero();
        }
    }

    @Test
    void a_java_without_the_window_library_has_none() throws IOException {
        Files.delete(folder.resolve("libawt_xawt.so"));
        try (FakeXServer server = FakeXServer.welcoming()) {
            assertThat(probe(Map.of("DISPLAY", server.name()))).isEqualTo(Display.State.NONE);
        }
    }

    @Test
    void a_display_where_nobody_listens_is_dead() {
        assertThat(probe(Map.of("DISPLAY", ":987"))).isEqualTo(Display.State.DEAD);
        assertThat(probe(Map.of("DISPLAY", "localhost:987"))).isEqualTo(Display.State.DEAD);
    }

    @Test
    void a_display_that_takes_the_call_and_says_nothing_is_dead() throws IOException {
        try (FakeXServer server = FakeXServer.silent()) {
            assertThat(probe(Map.of("DISPLAY", server.name()))).isEqualTo(Display.State.DEAD);
            assertThat(server.visitors()).isEqualTo(1);
        }
    }

    @Test
    void a_display_that_talks_something_else_than_x_is_dead() throws IOException {
        try (FakeXServer server = FakeXServer.answering('H')) {
            assertThat(probe(Map.of("DISPLAY", server.name()))).isEqualTo(Display.State.DEAD);
        }
    }

    @Test
    void a_display_that_welcomes_us_is_live() throws IOException {
        try (FakeXServer server = FakeXServer.welcoming()) {
            assertThat(probe(Map.of("DISPLAY", server.name()))).isEqualTo(Display.State.LIVE);
        }
    }

    @Test
    void a_local_display_that_listens_on_a_port_only_is_live_as_for_the_x_library() throws IOException {
        try (FakeXServer server = FakeXServer.welcoming()) {
            assertThat(probe(Map.of("DISPLAY", ":" + server.number()))).isEqualTo(Display.State.LIVE);
        }
    }

    @Test
    void a_display_that_wants_a_key_is_live_with_the_right_one() throws IOException {
        try (FakeXServer server = FakeXServer.wanting(COOKIE)) {
            Path keys = folder.resolve("keys");
            XAuthorityTest.add(keys, Integer.toString(server.number()), COOKIE);

            assertThat(probe(Map.of("DISPLAY", server.name(), "XAUTHORITY", keys.toString())))
                    .isEqualTo(Display.State.LIVE);
            assertThat(server.visitors()).isEqualTo(2);
        }
    }

    @Test
    void a_display_that_wants_a_key_we_do_not_have_is_tried_by_awt_and_found_dead() throws IOException {
        try (FakeXServer server = FakeXServer.wanting(COOKIE)) {
            assertThat(probe(Map.of("DISPLAY", server.name(), "XAUTHORITY", "/nowhere")))
                    .isEqualTo(Display.State.DEAD);
            assertThat(server.visitors()).as("ours and that of AWT").isGreaterThan(1);
        }
    }

    @Test
    void a_name_that_only_the_x_library_understands_is_tried_by_awt() {
        assertThat(probe(Map.of("DISPLAY", "nonsense"))).isEqualTo(Display.State.DEAD);
    }

    @Test
    void systems_with_windows_of_their_own_need_no_display_name() {
        for (String system : new String[] {"Windows 11", "Mac OS X"}) {
            assertThat(Display.probe(new Display.Surroundings(Map.of(), system, "", "")))
                    .as(system)
                    .isEqualTo(Display.State.LIVE);
        }
    }

    private Display.State probe(Map<String, String> env) {
        Map<String, String> all = new HashMap<>(env);
        all.putIfAbsent("XAUTHORITY", "/nowhere");
        return Display.probe(new Display.Surroundings(all, "Linux", "", folder.toString()));
    }
}
