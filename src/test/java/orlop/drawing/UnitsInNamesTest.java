package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class UnitsInNamesTest {
    private static final List<String> SUFFIXES = List.of(
            "A",
            "MilliA",
            "Ka",
            "V",
            "A2s",
            "MilliV",
            "W",
            "Wh",
            "Ah",
            "Va",
            "Var",
            "Kva",
            "M",
            "Mm",
            "Mm2",
            "Ohm",
            "KiloOhm",
            "C",
            "Hz",
            "S",
            "Minutes",
            "Degree",
            "Deg",
            "Percent",
            "PercentPerK",
            "LitrePerHour");
    /** Plain numbers, and numbers whose unit stands beside them or is the whole name. */
    private static final Set<String> WITHOUT = Set.of(
            "efficiency",
            "powerFactor",
            "simultaneity",
            "average",
            "Step.hours",
            "Measurement.value",
            "Quantity.value");

    private static List<Class<?>> records() throws IOException {
        List<Class<?>> records = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("target/classes/orlop/drawing"))) {
            for (Path f : files.sorted().toList()) {
                String name = f.getFileName().toString();
                if (name.endsWith(".class") && !name.equals("package-info.class")) {
                    Class<?> type = load("orlop.drawing." + name.replace(".class", ""));
                    if (type.isRecord()) {
                        records.add(type);
                    }
                }
            }
        }
        return records;
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new LinkageError(name, e);
        }
    }

    private static boolean named(RecordComponent c) {
        String name = c.getName();
        String full = c.getDeclaringRecord().getSimpleName() + "." + name;
        return WITHOUT.contains(name)
                || WITHOUT.contains(full)
                || SUFFIXES.stream()
                        .anyMatch(s -> name.endsWith(s)
                                && name.length() > s.length()
                                && !Character.isUpperCase(name.charAt(name.length() - s.length() - 1)));
    }

    @Test
    void every_number_says_its_unit_in_its_name() throws IOException {
        List<Class<?>> records = records();
        assertThat(records).hasSizeGreaterThan(70);
        List<RecordComponent> numbers = new ArrayList<>();
        for (Class<?> record : records) {
            for (RecordComponent c : record.getRecordComponents()) {
                if (c.getType() == double.class || c.getType() == Double.class) {
                    numbers.add(c);
                }
            }
        }
        assertThat(numbers).hasSizeGreaterThan(120);
        assertThat(numbers).allMatch(UnitsInNamesTest::named);
    }

    @Test
    void a_number_without_a_unit_would_be_seen() {
        record Bad(double voltage, Double lengthM, double areaMM2) {}
        RecordComponent[] c = Bad.class.getRecordComponents();
        assertThat(List.of(named(c[0]), named(c[1]), named(c[2]))).containsExactly(false, true, false);
    }
}
