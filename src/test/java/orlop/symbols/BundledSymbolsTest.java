package orlop.symbols;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class BundledSymbolsTest {
    private static final SymbolLibrary LIBRARY = SymbolLibrary.bundled();

    static Stream<Symbol> symbols() {
        return LIBRARY.all().stream();
    }

    /** The terminals of each kind, as the kinds' particulars have them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1   | shore-pedestal generator alternator pv-array turbine supply current-supply limited-supply",
                "1   | power-supply motor heater lighting electronics socket-outlet short-time-machine load",
                "1   | sheet-link hull-bond hull",
                "1 2 | battery shore-inlet inverter charger dc-dc-converter charge-controller transformer",
                "1 2 | frequency-converter converter terminal fuse proposed-fuse circuit-breaker",
                "1 2 | residual-current-device surge-arrester galvanic-isolator insulation-monitor isolator",
                "1 2 | contactor combining-relay neutral-earth-link meter diode impedance distribution-board",
                "1 2 | junction engine-block protective-earth-bar",
                "1 2 3   | inverter-charger changeover-switch diode-isolator",
                "1 2 3 4 | shunt",
            })
    void every_kind_has_a_symbol_that_places_its_terminals(String terminals, String kinds) {
        for (String kind : kinds.split(" ", -1)) {
            List<Symbol> ofKind = symbols().filter(s -> s.kind().equals(kind)).toList();
            assertThat(ofKind).as(kind).isNotEmpty();
            assertThat(ofKind)
                    .allSatisfy(symbol -> assertThat(symbol.terminals()).containsKeys(terminals.split(" ", -1)));
        }
    }

    @Test
    void there_are_sixty_symbols_and_one_for_every_position_of_a_switch() {
        assertThat(LIBRARY.all()).hasSizeGreaterThanOrEqualTo(60);
        String twoPositions = "isolator contactor combining-relay circuit-breaker residual-current-device";
        for (String kind : twoPositions.split(" ", -1)) {
            for (String state : new String[] {"open", "closed"}) {
                assertThat(LIBRARY.find(kind, "", state)).map(Symbol::state).contains(state);
            }
        }
        for (String way : new String[] {"0", "1", "2"}) {
            assertThat(LIBRARY.find("changeover-switch", "", way))
                    .map(Symbol::state)
                    .contains(way);
        }
    }

    @ParameterizedTest
    @MethodSource("symbols")
    void a_terminal_lies_on_the_grid(Symbol symbol) {
        assertThat(symbol.terminals()).isNotEmpty();
        assertThat(symbol.terminals().values())
                .allSatisfy(terminal -> assertThat(terminal.onGrid())
                        .as(symbol.name() + " " + terminal)
                        .isTrue());
    }

    /** A cable that ends at the terminal must touch ink: a line's end, the edge of a shape, or a filled area. */
    @ParameterizedTest
    @MethodSource("symbols")
    void a_terminal_lies_where_the_drawing_ends(Symbol symbol) {
        assertThat(symbol.terminals().values()).allSatisfy(terminal -> {
            double distanceMm = symbol.outlines().stream()
                    .mapToDouble(outline -> distanceMm(outline, terminal))
                    .min()
                    .orElseThrow();
            assertThat(distanceMm).as(symbol.name() + " " + terminal).isLessThan(0.01);
        });
    }

    /** Nothing but the weight of a line stands out beyond a terminal in the direction of its cable. */
    @ParameterizedTest
    @MethodSource("symbols")
    void a_cable_leaves_a_terminal_without_crossing_the_symbol(Symbol symbol) {
        assertThat(symbol.terminals().values()).allSatisfy(terminal -> {
            double stepX = stepX(terminal.direction());
            double stepY = stepY(terminal.direction());
            for (double outMm = 1; outMm <= 10; outMm += 0.25) {
                Terminal point = new Terminal(
                        terminal.id(),
                        terminal.xMm() + outMm * stepX,
                        terminal.yMm() + outMm * stepY,
                        terminal.direction());
                assertThat(symbol.outlines())
                        .as(symbol.name() + " " + point)
                        .allSatisfy(outline ->
                                assertThat(distanceMm(outline, point)).isGreaterThan(0.1));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("symbols")
    void a_place_for_texts_is_beside_the_ink(Symbol symbol) {
        Bounds ink = symbol.bounds();
        assertThat(symbol.textPlaces())
                .allSatisfy(place -> assertThat(
                                switch (place.side()) {
                                    case RIGHT -> place.xMm() - ink.maxXMm();
                                    case LEFT -> ink.minXMm() - place.xMm();
                                    case BELOW -> place.yMm() - ink.maxYMm();
                                    case ABOVE -> ink.minYMm() - place.yMm();
                                    case INSIDE -> 1.0;
                                })
                        .as(symbol.name() + " " + place)
                        .isBetween(0.5, 3.0));
    }

    @Test
    void in_line_symbols_are_upright_with_terminal_1_above_2() {
        Set<String> inLine = Set.of(
                "fuse", "circuit-breaker", "isolator", "contactor", "diode", "impedance", "shunt", "surge-arrester");
        List<Symbol> found = symbols().filter(s -> inLine.contains(s.kind())).toList();

        assertThat(found).extracting(Symbol::kind).containsAll(inLine);
        assertThat(found).allSatisfy(symbol -> {
            assertThat(symbol.terminals().get("1")).isEqualTo(new Terminal("1", 0, -5, Direction.UP));
            assertThat(symbol.terminals().get("2")).isEqualTo(new Terminal("2", 0, 5, Direction.DOWN));
        });
    }

    @Test
    void symbols_of_one_kind_differ_only_in_form_never_in_where_the_common_terminals_sit() {
        symbols()
                .filter(symbol -> !symbol.variants().contains("left"))
                .collect(Collectors.groupingBy(symbol -> symbol.kind() + " " + symbol.variants()))
                .values()
                .forEach(states -> assertThat(
                                states.stream().map(Symbol::terminals).distinct())
                        .as(states.get(0).kind())
                        .hasSize(1));
    }

    @Test
    void the_manifest_says_only_known_words_of_provenance() {
        assertThat(symbols().map(Symbol::provenance).distinct()).containsExactlyInAnyOrder("memory", "composed");
        assertThat(symbols().map(Symbol::standard))
                .allMatch(text -> text.contains("IEC 60617 ") || text.startsWith("no "));
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "motor,ac3n,'',motor-ac3",
                "motor,'','',motor-dc",
                "motor,no-such,'',motor-dc",
                "circuit-breaker,'',closed,circuit-breaker-closed",
                "circuit-breaker,ac1,closed,circuit-breaker-closed",
                "circuit-breaker,'','',circuit-breaker-open",
                "isolator,off-load,closed,isolator-off-load-closed",
                "isolator,'',closed,isolator-closed",
                "changeover-switch,'',2,changeover-switch-2",
                "transformer,'','',transformer",
                "transformer,isolating,'',transformer-isolating",
                "meter,current,'',meter-current",
            })
    void the_best_fitting_symbol_is_found(String kind, String variant, String state, String name) {
        assertThat(LIBRARY.find(kind, variant, state)).map(Symbol::name).contains(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"busbar", "no-such-kind", ""})
    void a_kind_without_a_symbol_gives_none(String kind) {
        assertThat(LIBRARY.find(kind)).isEmpty();
    }

    @Test
    void every_refusal_and_every_symbol_has_its_words_and_no_word_is_left_over() throws Exception {
        Properties words = new Properties();
        try (InputStream in = BundledSymbolsTest.class.getResourceAsStream("/orlop/words/symbols.properties")) {
            words.load(new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8));
        }
        Set<String> wanted = new TreeSet<>(Set.of("symbols.title.own"));
        symbols().map(Symbol::titleKey).forEach(wanted::add);
        Arrays.stream(Refusal.values()).forEach(r -> wanted.addAll(List.of(r.key(), r.cureKey())));

        assertThat(words.stringPropertyNames()).containsExactlyInAnyOrderElementsOf(wanted);
        assertThat(words.stringPropertyNames())
                .allSatisfy(key -> assertThat(MessageFormat.format(words.getProperty(key), "FILE", "7", "WHAT"))
                        .isNotBlank()
                        .doesNotContain("{"));
    }

    private static double distanceMm(Outline outline, Terminal terminal) {
        if (outline.filled() && outline.shape().contains(terminal.xMm(), terminal.yMm())) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        double[] at = new double[6];
        double[] last = new double[2];
        double[] start = new double[2];
        for (PathIterator i = new FlatteningPathIterator(outline.shape().getPathIterator(null), 0.005);
                !i.isDone();
                i.next()) {
            int type = i.currentSegment(at);
            double[] to = type == PathIterator.SEG_CLOSE ? start.clone() : new double[] {at[0], at[1]};
            if (type == PathIterator.SEG_MOVETO) {
                start = to.clone();
            } else {
                double distance = Line2D.ptSegDist(last[0], last[1], to[0], to[1], terminal.xMm(), terminal.yMm());
                least = Math.min(least, distance);
            }
            last = to;
        }
        return least;
    }

    private static double stepX(Direction direction) {
        return direction == Direction.LEFT ? -1 : direction == Direction.RIGHT ? 1 : 0;
    }

    private static double stepY(Direction direction) {
        return direction == Direction.UP ? -1 : direction == Direction.DOWN ? 1 : 0;
    }
}
