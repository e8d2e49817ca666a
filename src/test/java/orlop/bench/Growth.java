package orlop.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** How measured times grow with the size: the exponent k of t = c · nᵏ, fitted by least squares to the logarithms. */
final class Growth {
    private Growth() {}

    /** One measurement: so many cables take so many milliseconds. */
    record Timing(double cables, double millis) {}

    /**
     * The exponent.
     *
     * @throws IllegalArgumentException if there are not two different sizes, or a figure is not above 0
     */
    static double exponent(List<Timing> timings) {
        double meanX = 0;
        double meanY = 0;
        for (Timing t : timings) {
            if (!(t.cables() > 0) || !(t.millis() > 0)) {
                throw new IllegalArgumentException("not above 0: " + t);
            }
            meanX += Math.log(t.cables()) / timings.size();
            meanY += Math.log(t.millis()) / timings.size();
        }
        double xx = 0;
        double xy = 0;
        for (Timing t : timings) {
            double x = Math.log(t.cables()) - meanX;
            xx += x * x;
            xy += x * (Math.log(t.millis()) - meanY);
        }
        if (!(xx > 1e-12)) {
            throw new IllegalArgumentException("one size tells no growth");
        }
        return xy / xx;
    }

    /** A line for each series of JMH's results that has several sizes of 1,000 cables and more. */
    static String summary(JsonNode results) {
        Map<String, List<Timing>> series = new TreeMap<>();
        for (JsonNode r : results) {
            JsonNode cables = r.path("params").path("cables");
            if (!cables.isMissingNode() && cables.asDouble() >= 1_000) {
                String benchmark = r.path("benchmark").asText();
                String name = benchmark.substring(benchmark.lastIndexOf('.') + 1) + ", mesh "
                        + r.path("params").path("meshPercent").asText() + " %";
                series.computeIfAbsent(name, k -> new ArrayList<>())
                        .add(new Timing(
                                cables.asDouble(),
                                r.path("primaryMetric").path("score").asDouble()));
            }
        }
        StringBuilder text = new StringBuilder();
        series.forEach((name, timings) -> {
            if (timings.size() > 1) {
                text.append(String.format(Locale.ROOT, "%-34s growth exponent %.3f", name, exponent(timings)));
                timings.forEach(
                        t -> text.append(String.format(Locale.ROOT, "  %.0f: %.3g ms", t.cables(), t.millis())));
                text.append('\n');
            }
        });
        return text.toString();
    }

    /** Arguments: JMH's JSON results, and the file to write. */
    public static void main(String[] args) throws IOException {
        String text = summary(new ObjectMapper().readTree(Path.of(args[0]).toFile()));
        Files.writeString(Path.of(args[1]), text);
        System.out.print(text);
    }
}
