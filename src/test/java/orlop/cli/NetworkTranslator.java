package orlop.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/**
 * Writes a network of {@code orlop/checks/oracle} as the text of a drawing file, by nothing but the file's contract:
 * each node a busbar, each element linked to it, text put together by hand.
 */
@SuppressWarnings("NullAway") // a null fails the test
final class NetworkTranslator {
    private final JsonNode network;
    private final boolean statedOhm;
    private final boolean threePhase;
    private final List<String> components = new ArrayList<>();
    private final List<String> cables = new ArrayList<>();
    private final List<String> links = new ArrayList<>();
    private int place;

    private NetworkTranslator(JsonNode network, boolean statedOhm) {
        this.network = network;
        this.statedOhm = statedOhm;
        threePhase = network.get("system").asText().startsWith("ac3");
    }

    /**
     * The drawing as text.
     *
     * @param statedOhm whether cables carry their resistance; else it must come from length, area and temperature
     */
    static String file(JsonNode network, boolean statedOhm) {
        return new NetworkTranslator(network, statedOhm).text();
    }

    /** How many equal phases stand for the one of the network. */
    static int phases(JsonNode network) {
        return network.get("system").asText().startsWith("ac3") ? 3 : 1;
    }

    private String text() {
        for (JsonNode node : network.get("nodes")) {
            if (!node.asText().equals("0")) {
                component("N" + node.asText(), "busbar", "");
            }
        }
        network.get("elements").forEach(this::element);
        String nature = threePhase ? "ac3" : network.get("system").asText().equals("dc") ? "dc" : "ac1";
        double nominalV = network.get("nominal_v").asDouble() * (threePhase ? Math.sqrt(3) : 1);
        return """
                {
                 "orlop": 1,
                 "vessel": {"name": "%s", "ruleSet": "iec60364", "ambientC": 30, "faultMethod": "plain"},
                 "systems": [{"id": "S", "nature": "%s", "nominalV": %s}],
                 "sheets": [{"id": "1", "number": "1", "title": "One", "size": "A1"}],
                 "components": [
                  %s],
                 "cables": [
                  %s],
                 "links": [
                  %s]
                }
                """.formatted(
                        network.get("id").asText(),
                        nature,
                        number(nominalV),
                        String.join(",\n  ", components),
                        String.join(",\n  ", cables),
                        String.join(",\n  ", links));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.12g", value);
    }

    /** The fields of the file and those of the network that they take their value from, in turn. */
    private static String fields(JsonNode e, double factor, String... pairs) {
        StringJoiner all = new StringJoiner(", ");
        for (int i = 0; i < pairs.length; i += 2) {
            all.add("\"" + pairs[i] + "\": "
                    + number(factor * e.get(pairs[i + 1]).asDouble()));
        }
        return all.toString();
    }

    private void component(String id, String kind, String fields) {
        place++;
        String systems = kind.equals("converter") ? "\"systems\": [\"S\", \"S\"]" : "\"system\": \"S\"";
        components.add(String.format(
                Locale.ROOT,
                "{\"id\": \"%s\", \"kind\": \"%s\", \"sheet\": \"1\", \"at\": [%d, %d], %s%s}",
                id,
                kind,
                20 + 15 * (place % 40),
                20 + 15 * (place / 40),
                systems,
                fields.isEmpty() ? "" : ", " + fields));
    }

    private void link(String node, String terminal) {
        links.add("{\"from\": \"N" + node + ".l" + links.size() + "\", \"to\": \"" + terminal + "\"}");
    }

    private void hang(JsonNode e, String kind, String fields) {
        component(e.get("id").asText(), kind, fields);
        link(e.get("node").asText(), e.get("id").asText() + ".1");
    }

    private void between(JsonNode e, String kind, String from, String to, String fields) {
        component(e.get("id").asText(), kind, fields);
        link(e.get(from).asText(), e.get("id").asText() + ".1");
        link(e.get(to).asText(), e.get("id").asText() + ".2");
    }

    private void load(JsonNode e, String behaviour, double factor, String... pairs) {
        hang(e, "load", "\"behaviour\": \"" + behaviour + "\", " + fields(e, factor, pairs));
    }

    private void element(JsonNode e) {
        int phases = phases(network);
        switch (e.get("type").asText()) {
            case "source" -> hang(e, "supply", fields(e, 1, "emfV", "emf_v", "resistanceOhm", "r_ohm"));
            case "ac_source" ->
                hang(
                        e,
                        "supply",
                        fields(
                                e,
                                1,
                                "emfV",
                                "emf_v",
                                "angleDeg",
                                "angle_deg",
                                "resistanceOhm",
                                "r_ohm",
                                "reactanceOhm",
                                "x_ohm"));
            case "charger" ->
                hang(
                        e,
                        "limited-supply",
                        fields(e, 1, "setV", "v_set_v", "resistanceOhm", "r_ohm", "limitA", "i_max_a"));
            case "source_i" -> hang(e, "current-supply", fields(e, 1, "currentA", "i_a"));
            case "source_p" -> hang(e, "power-supply", fields(e, 1, "powerW", "p_w", "limitA", "i_max_a"));
            case "load_r" -> load(e, "resistance", 1, "resistanceOhm", "r_ohm");
            case "load_i" -> load(e, "current", 1, "currentA", "i_a");
            case "load_p" -> load(e, "power", 1, "powerW", "p_w");
            case "load_z" -> load(e, "resistance", 1, "resistanceOhm", "r_ohm", "reactanceOhm", "x_ohm");
            case "load_pq" -> load(e, "power", phases, "powerW", "p_w", "reactiveVar", "q_var");
            case "load_iphi" -> load(e, "current", 1, "currentA", "i_a", "powerFactor", "pf");
            case "impedance" ->
                between(e, "impedance", "from", "to", fields(e, 1, "resistanceOhm", "r_ohm", "reactanceOhm", "x_ohm"));
            case "diode" ->
                between(e, "diode", "from", "to", fields(e, 1, "dropV", "v_drop_v", "resistanceOhm", "r_on_ohm"));
            case "converter" ->
                between(
                        e,
                        "converter",
                        "in",
                        "out",
                        fields(
                                e,
                                1,
                                "setV",
                                "v_set_v",
                                "outputResistanceOhm",
                                "r_out_ohm",
                                "efficiency",
                                "efficiency",
                                "idleW",
                                "p_standby_w"));
            case "cable" -> cable(e);
            case "fault" -> {} // the command is asked for it
            default -> throw new IllegalArgumentException("unknown element " + e);
        }
    }

    private void cable(JsonNode e) {
        String conductor = threePhase ? "conductor" : "loop";
        String reactance = e.has("x_ohm") ? ", " + fields(e, 1, conductor + "ReactanceOhm", "x_ohm") : "";
        String resistance = statedOhm
                ? fields(e, 1, conductor + "ResistanceOhm", "r_ohm")
                : fields(e, 1, "conductorC", "conductor_temp_c");
        boolean single = !threePhase && e.get("conductors_in_loop").asInt() == 1;
        cables.add(String.format(
                Locale.ROOT,
                "{\"id\": \"%s\", \"from\": \"N%s.c%d\", \"to\": \"N%s.c%d\", %s, \"parallel\": %d, %s%s%s}",
                e.get("id").asText(),
                e.get("from").asText(),
                2 * cables.size(),
                e.get("to").asText(),
                2 * cables.size() + 1,
                fields(e, 1, "lengthM", "length_m", "areaMm2", "area_mm2"),
                e.get("parallel_runs").asInt(),
                resistance,
                reactance,
                single ? ", \"conductors\": \"single\"" : ""));
    }
}
