package orlop.study;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Conversion;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.FaultMethod;
import orlop.drawing.Link;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Nature;
import orlop.drawing.Particulars;
import orlop.drawing.Phase;
import orlop.drawing.Place;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.drawing.TerminalRef;
import orlop.drawing.Vessel;

/** Translates a network of the oracle's format into a drawing: each node a busbar, each element linked to it. */
@SuppressWarnings("NullAway") // a null fails the test
final class OracleNetwork {
    private static final ObjectMapper JSON = new ObjectMapper();

    final JsonNode network;
    final JsonNode results;
    private Drawing drawing;
    private int taps;
    private final Nature nature;

    /** How many equal phases stand for the one that the oracle calculates. */
    final int phases;

    OracleNetwork(String id) {
        network = read(id + ".json");
        results = read(id + ".result.json").get("results");
        String system = network.get("system").asText();
        nature = system.startsWith("ac1") ? Nature.AC1 : system.startsWith("ac3") ? Nature.AC3 : Nature.DC;
        phases = nature == Nature.AC3 ? 3 : 1;
        double nominalV = network.get("nominal_v").asDouble() * Math.sqrt(phases);
        drawing = Drawing.empty(id).with(ElectricalSystem.of("S", nature, nominalV));
        Vessel v = drawing.vessel();
        drawing = drawing.withVessel(new Vessel(
                v.name(),
                "",
                "iec60364",
                v.ambientC(),
                v.engineSpaceC(),
                FaultMethod.PLAIN,
                null,
                null,
                "",
                "",
                "",
                Extras.NONE));
        for (JsonNode node : network.get("nodes")) {
            if (!node.asText().equals("0")) {
                add(bar(node.asText()), Distribution.Busbar.class.cast(orlop.drawing.Kind.BUSBAR.defaults()));
            }
        }
        network.get("elements").forEach(this::element);
    }

    Drawing drawing() {
        return drawing;
    }

    static String bar(String node) {
        return "N" + node;
    }

    private static JsonNode read(String name) {
        try (InputStream in = OracleNetwork.class.getResourceAsStream("/orlop/checks/oracle/" + name)) {
            return JSON.readTree(Objects.requireNonNull(in, name));
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    private void add(String id, Particulars p) {
        drawing = drawing.with(Component.of(id, p, Place.at("1", 10, 10), java.util.List.of("S")));
    }

    private void addBetween(String id, Particulars p) {
        drawing = drawing.with(Component.of(id, p, Place.at("1", 10, 10), java.util.List.of("S", "S")));
    }

    private TerminalRef tap(String node) {
        return new TerminalRef(bar(node), "t" + taps++);
    }

    private void link(String node, String component, String terminal) {
        drawing = drawing.with(Link.of(tap(node), new TerminalRef(component, terminal)));
    }

    private static double d(JsonNode e, String field) {
        return e.get(field).asDouble();
    }

    private void element(JsonNode e) {
        String id = e.get("id").asText();
        switch (e.get("type").asText()) {
            case "source" -> hang(e, new Source.Supply(d(e, "emf_v"), 0, d(e, "r_ohm"), 0, false));
            case "ac_source" ->
                hang(e, new Source.Supply(d(e, "emf_v"), d(e, "angle_deg"), d(e, "r_ohm"), d(e, "x_ohm"), false));
            case "load_z" ->
                hang(e, load(LoadBehaviour.RESISTANCE, null, null, null, null, d(e, "r_ohm"), d(e, "x_ohm")));
            case "load_pq" ->
                hang(
                        e,
                        load(
                                LoadBehaviour.POWER,
                                phases * d(e, "p_w"),
                                phases * d(e, "q_var"),
                                null,
                                null,
                                null,
                                null));
            case "load_iphi" -> hang(e, load(LoadBehaviour.CURRENT, null, null, d(e, "i_a"), d(e, "pf"), null, null));
            case "impedance" -> {
                add(id, new Distribution.Impedance(d(e, "r_ohm"), d(e, "x_ohm")));
                link(e.get("from").asText(), id, "1");
                link(e.get("to").asText(), id, "2");
            }
            case "charger" -> hang(e, new Source.LimitedSupply(d(e, "v_set_v"), d(e, "r_ohm"), d(e, "i_max_a")));
            case "source_i" -> hang(e, new Source.CurrentSupply(d(e, "i_a")));
            case "source_p" -> hang(e, new Source.PowerSupply(d(e, "p_w"), d(e, "i_max_a")));
            case "load_r" -> hang(e, load(LoadBehaviour.RESISTANCE, d(e, "r_ohm")));
            case "load_i" -> hang(e, load(LoadBehaviour.CURRENT, d(e, "i_a")));
            case "load_p" -> hang(e, load(LoadBehaviour.POWER, d(e, "p_w")));
            case "cable" -> cable(e);
            case "diode" -> {
                add(id, new Switching.Diode(d(e, "v_drop_v"), d(e, "r_on_ohm")));
                link(e.get("from").asText(), id, "1");
                link(e.get("to").asText(), id, "2");
            }
            case "converter" -> {
                addBetween(
                        id,
                        new Conversion.PlainConverter(
                                d(e, "v_set_v"), d(e, "r_out_ohm"), d(e, "efficiency"), d(e, "p_standby_w")));
                link(e.get("in").asText(), id, "1");
                link(e.get("out").asText(), id, "2");
            }
            case "fault" -> {}
            default -> throw new IllegalArgumentException("unknown element " + e);
        }
    }

    private void hang(JsonNode e, Particulars p) {
        add(e.get("id").asText(), p);
        link(e.get("node").asText(), e.get("id").asText(), "1");
    }

    static Consumer.PlainLoad load(LoadBehaviour behaviour, double value) {
        return new Consumer.PlainLoad(
                behaviour,
                behaviour == LoadBehaviour.POWER ? value : null,
                null,
                behaviour == LoadBehaviour.CURRENT ? value : null,
                null,
                behaviour == LoadBehaviour.RESISTANCE ? value : null,
                null,
                Phase.ALL,
                false);
    }

    private static Consumer.PlainLoad load(
            LoadBehaviour behaviour, Double powerW, Double var, Double amps, Double factor, Double ohm, Double x) {
        return new Consumer.PlainLoad(behaviour, powerW, var, amps, factor, ohm, x, Phase.ALL, false);
    }

    /** Reactance is stated: the oracle's differs from what we take where nothing is known. */
    private Cable.Measured measured(JsonNode e) {
        Double x = e.has("x_ohm") ? (Double) d(e, "x_ohm") : null;
        return phases == 3
                ? new Cable.Measured(null, null, null, x, null, null, null)
                : new Cable.Measured(null, x, null, null, null, null, null);
    }

    /** Length, area and temperature as described: the resistance must come out of our own tables. */
    private void cable(JsonNode e) {
        Cable w = Cable.of(
                        e.get("id").asText(),
                        tap(e.get("from").asText()),
                        tap(e.get("to").asText()))
                .withLengthM(d(e, "length_m"))
                .withAreaMm2(d(e, "area_mm2"));
        drawing = drawing.with(new Cable(
                w.id(),
                w.from(),
                w.to(),
                w.lengthM(),
                w.lengthEstimated(),
                w.areaMm2(),
                e.get("parallel_runs").asInt(),
                phases == 1 && e.get("conductors_in_loop").asInt() == 1 ? orlop.drawing.Conductors.SINGLE : null,
                w.construction(),
                w.returns(),
                measured(e),
                d(e, "conductor_temp_c"),
                w.refit(),
                w.stage(),
                w.name(),
                w.cableways(),
                w.bends(),
                w.labelAt(),
                w.locked(),
                w.extras()));
    }
}
