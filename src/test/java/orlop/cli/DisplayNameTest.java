package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DisplayNameTest {

    @ParameterizedTest
    @CsvSource({
        ":0, '', 0",
        ":1.0, '', 1",
        "unix:2, '', 2",
        "localhost:10.0, localhost, 10",
        "192.0.2.7:0, 192.0.2.7, 0",
        "tcp/harbour:3.1, harbour, 3",
        "[2001:db8::1]:4, 2001:db8::1, 4",
        "2001:db8::1:4, 2001:db8::1, 4",
    })
    void reads_the_forms_of_the_manual(String name, String host, int number) {
        assertThat(DisplayName.parse(name)).isEqualTo(new DisplayName(host, number));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "nonsense", "host:", ":x", "/private/tmp/launch/org.xquartz:0", ":0.", ":12345"})
    void leaves_other_forms_to_the_x_library(String name) {
        assertThat(DisplayName.parse(name)).isNull();
    }

    @ParameterizedTest
    @CsvSource({":7, true, 2", "host:7, false, 1"})
    void a_local_display_may_answer_at_a_socket_or_a_port(String name, boolean local, int servers) {
        DisplayName parsed = DisplayName.parse(name);

        assertThat(parsed).isNotNull();
        assertThat(parsed.isLocal()).isEqualTo(local);
        assertThat(parsed.servers()).hasSize(servers);
        assertThat(parsed.socketFile()).isEqualTo(Path.of("/tmp/.X11-unix/X7"));
    }
}
