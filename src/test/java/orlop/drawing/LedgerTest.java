package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LedgerTest {
    private static void same(Ledger<Integer> ledger, Map<String, Integer> map) {
        assertThat(ledger.size()).isEqualTo(map.size());
        assertThat(ledger.isEmpty()).isEqualTo(map.isEmpty());
        List<Map.Entry<String, Integer>> entries = new ArrayList<>();
        ledger.forEach(entries::add);
        assertThat(entries).isEqualTo(List.copyOf(map.entrySet()));
        assertThat(ledger.values()).containsExactlyElementsOf(map.values());
        assertThat(ledger.stream().toList()).isEqualTo(List.copyOf(map.values()));
    }

    /** A LinkedHashMap has no renaming in place: it is made anew. */
    private static Map<String, Integer> renamed(Map<String, Integer> map, String id, String newId, int value) {
        Map<String, Integer> result = new LinkedHashMap<>();
        map.forEach((k, v) -> result.put(k.equals(id) ? newId : k, k.equals(id) ? Integer.valueOf(value) : v));
        return result;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void it_does_what_a_linked_hash_map_does(long seed) {
        Random random = new Random(seed);
        int ids = 5 + random.nextInt(300);
        Ledger<Integer> ledger = Ledger.empty();
        Map<String, Integer> map = new LinkedHashMap<>();
        List<Ledger<Integer>> older = new ArrayList<>();
        List<Map<String, Integer>> olderMaps = new ArrayList<>();
        for (int i = 0; i < 3_000; i++) {
            String id = "k" + random.nextInt(ids);
            String other = "k" + random.nextInt(ids);
            switch (random.nextInt(4)) {
                case 0, 1 -> {
                    ledger = ledger.with(id, i);
                    map.put(id, i);
                }
                case 2 -> {
                    ledger = ledger.without(id);
                    map.remove(id);
                }
                default -> {
                    if (map.containsKey(id) && (id.equals(other) || !map.containsKey(other))) {
                        ledger = ledger.renamed(id, other, i);
                        map = renamed(map, id, other, i);
                    }
                }
            }
            assertThat(ledger.get(id)).isEqualTo(map.get(id));
            assertThat(ledger.contains(other)).isEqualTo(map.containsKey(other));
            if (i % 250 == 0) {
                same(ledger, map);
                older.add(ledger);
                olderMaps.add(new LinkedHashMap<>(map));
            }
        }
        for (int i = 0; i < older.size(); i++) {
            same(older.get(i), olderMaps.get(i)); // no later change has touched them
        }
        assertThat(Ledger.of(map)).isEqualTo(ledger).hasSameHashCodeAs(ledger);
    }

    @Test
    void ascending_and_descending_entry_keep_the_trees_flat() {
        Ledger<Integer> ledger = Ledger.empty();
        for (int i = 0; i < 100_000; i++) {
            ledger = ledger.with("k" + (i % 2 == 0 ? i : 1_000_000 - i), i);
        }
        assertThat(ledger.size()).isEqualTo(100_000);
        for (int i = 0; i < 100_000; i += 3) {
            ledger = ledger.without("k" + (i % 2 == 0 ? i : 1_000_000 - i));
        }
        assertThat(ledger.size()).isEqualTo(100_000 - 33_334);
        assertThat(ledger.get("k2")).isEqualTo(2);
    }

    @Test
    void what_changes_nothing_gives_the_same_ledger() {
        Integer value = 1_000;
        Ledger<Integer> ledger = Ledger.<Integer>empty().with("a", value);
        assertThat(ledger.with("a", value)).isSameAs(ledger);
        assertThat(ledger.without("b")).isSameAs(ledger);
        assertThat(Ledger.of(Map.of())).isSameAs(Ledger.empty());
    }

    @Test
    void equality_is_of_entries_and_order() {
        Ledger<Integer> ab = Ledger.<Integer>empty().with("a", 1).with("b", 2);
        Ledger<Integer> ba = Ledger.<Integer>empty().with("b", 2).with("a", 1);
        assertThat(ab).isNotEqualTo(ba).isNotEqualTo(ab.with("b", 3)).isNotEqualTo(ab.without("b"));
        assertThat(ab.without("a").with("a", 1)).isEqualTo(ba).hasSameHashCodeAs(ba);
        assertThat(ab).hasToString("[a=1, b=2]").isNotEqualTo("[a=1, b=2]");
    }

    @Test
    void what_is_not_there_is_refused_or_empty() {
        Ledger<Integer> ledger = Ledger.<Integer>empty().with("a", 1).with("b", 2);
        assertThat(ledger.find("c")).isEmpty();
        assertThat(ledger.find("a")).contains(1);
        assertThat(ledger.require("b")).isEqualTo(2);
        assertThatThrownBy(() -> ledger.require("c")).isInstanceOf(NoSuchElementException.class);
        assertThatIllegalArgumentException().isThrownBy(() -> ledger.renamed("c", "d", 1));
        assertThatIllegalArgumentException().isThrownBy(() -> ledger.renamed("a", "b", 1));
        Iterator<?> iterator = ledger.iterator();
        iterator.next();
        iterator.next();
        assertThat(iterator.hasNext()).isFalse();
        assertThatThrownBy(iterator::next).isInstanceOf(NoSuchElementException.class);
    }
}
