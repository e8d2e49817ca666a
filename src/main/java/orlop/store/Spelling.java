package orlop.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How alike two words are. */
final class Spelling {
    private Spelling() {}

    /**
     * The known word that an unknown one is a misspelling of. Two slips are allowed in a word of five letters and more,
     * one in a shorter word, none in a word of two, where everything is like everything; case counts for nothing.
     */
    static Optional<String> meant(String word, Collection<String> known) {
        return known.stream().filter(k -> alike(word, k)).min(Comparator.comparingInt(k -> distance(word, k)));
    }

    /** The few known words that are most like this one, the likest first, and of equally like ones those that start alike. */
    static List<String> nearest(String word, Collection<String> known, int count) {
        return known.stream()
                .sorted(Comparator.<String>comparingInt(k -> distance(word, k))
                        .thenComparing(k -> !word.regionMatches(true, 0, k, 0, 1)))
                .limit(count)
                .toList();
    }

    private static boolean alike(String word, String known) {
        int allowed = allowed(known);
        boolean lengthsFit = Math.abs(word.length() - known.length()) <= allowed; // spares most of the work
        return lengthsFit && (word.equalsIgnoreCase(known) || distance(word, known) <= allowed);
    }

    private static int allowed(String known) {
        return known.length() >= 5 ? 2 : known.length() >= 3 ? 1 : 0;
    }

    /** Letters put in, left out, exchanged for another or with a neighbour; long words are cut. */
    static int distance(String one, String two) {
        String a = cut(one);
        String b = cut(two);
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : least(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int least(int[][] d, String a, String b, int i, int j) {
        int exchange = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(exchange, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }

    private static String cut(String s) {
        return s.substring(0, Math.min(s.length(), 80)).toLowerCase(Locale.ROOT);
    }
}
