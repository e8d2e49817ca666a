package orlop.standards;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The American Wire Gauge from 18 to 4/0, beside areas in mm². Immutable. */
public final class AwgSizes {
    /** A bare number is left out: it may as well mean mm². */
    private static final Pattern WRITTEN = Pattern.compile(
            "\\s*(?:(?:awg\\s*#?|#)\\s*(0{1,4}|[1-4]/0|\\d{1,2})|(0{1,4}|[1-4]/0))\\s*", Pattern.CASE_INSENSITIVE);

    private final List<AwgSize> all;
    private final List<AwgSize> traded;

    private AwgSizes(CsvTable table) {
        all = table.rows().stream().map(AwgSizes::size).toList();
        traded = all.stream().filter(s -> s.r20PlainOhmPerKm().isPresent()).toList();
    }

    private static final class Holder {
        static final AwgSizes PUBLISHED = new AwgSizes(CsvTable.load("awg.csv"));
    }

    /** The published sizes. */
    public static AwgSizes published() {
        return Holder.PUBLISHED;
    }

    private static AwgSize size(CsvRow row) {
        return new AwgSize(
                row.word("awg"),
                row.sourced("area_mm2"),
                resistance(row, "r20_plain_ohm_per_km"),
                resistance(row, "r20_tinned_ohm_per_km"));
    }

    private static Optional<Sourced> resistance(CsvRow row, String column) {
        return row.text(column).isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Sourced(row.number(column), row.provenance("r20_provenance"), row.word("r20_source")));
    }

    /** All sizes from the thinnest to the thickest, the odd ones that are hardly traded included. */
    public List<AwgSize> all() {
        return all;
    }

    /** The sizes in trade, from the thinnest to the thickest. */
    public List<AwgSize> traded() {
        return traded;
    }

    /** The thickest traded size that is not thicker than an area (half a percent allowed), if there is one. */
    public Optional<AwgSize> thickestNotAbove(double areaMm2) {
        Checks.positive(areaMm2, "areaMm2");
        Optional<AwgSize> found = Optional.empty();
        for (AwgSize size : traded) {
            if (size.areaMm2().value() <= areaMm2 * (1 + Conductors.SAME_AREA)) {
                found = Optional.of(size);
            }
        }
        return found;
    }

    /** The thinnest traded size that is not thinner than an area (half a percent allowed), if there is one. */
    public Optional<AwgSize> thinnestNotBelow(double areaMm2) {
        Checks.positive(areaMm2, "areaMm2");
        return traded.stream()
                .filter(s -> s.areaMm2().value() >= areaMm2 * (1 - Conductors.SAME_AREA))
                .findFirst();
    }

    /**
     * What to show beside an area: {@code AWG 10} for one that is that size, {@code > AWG 10} for one that lies between
     * it and the next traded size, {@code < AWG 18} below the table. Never rounds up.
     */
    public String besideMm2(double areaMm2) {
        Optional<AwgSize> below = thickestNotAbove(areaMm2);
        if (below.isEmpty()) {
            return "< " + traded.get(0).label();
        }
        AwgSize size = below.get();
        boolean same = Math.abs(areaMm2 / size.areaMm2().value() - 1) <= Conductors.SAME_AREA;
        return same ? size.label() : "> " + size.label();
    }

    /**
     * Reads {@code AWG 10}, {@code awg10}, {@code 2/0}, {@code 00}, {@code #8}; none if it is no size of the table. A bare
     * {@code 10} is none: it may as well mean mm².
     */
    public Optional<AwgSize> parse(String text) {
        Matcher matcher = WRITTEN.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String written = matcher.group(1) != null ? matcher.group(1) : matcher.group(2);
        String name = written.matches("0+") ? written.length() + "/0" : written;
        return all.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /** The size of that name, for tables whose rows are AWG. */
    AwgSize named(String name) {
        return all.stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("awg.csv has no size " + name));
    }
}
