package orlop.cli;

import java.util.ArrayList;
import java.util.List;

/** Rows of text in columns, for a terminal. Columns whose cells start with a digit or a sign stand to the right. */
final class TextTable {
    private final List<String> heads;
    private final List<List<String>> rows = new ArrayList<>();

    TextTable(List<String> heads) {
        this.heads = List.copyOf(heads);
    }

    /** @param cells as many as there are heads */
    void row(List<String> cells) {
        if (cells.size() != heads.size()) {
            throw new IllegalArgumentException("a row of " + cells.size() + " under " + heads.size() + " heads");
        }
        rows.add(List.copyOf(cells));
    }

    /** The heads, a rule and the rows, each line ended by a line feed. */
    String text() {
        int[] width = new int[heads.size()];
        boolean[] right = new boolean[heads.size()];
        for (int c = 0; c < width.length; c++) {
            width[c] = length(heads.get(c));
            int numbers = 0;
            for (List<String> row : rows) {
                width[c] = Math.max(width[c], length(row.get(c)));
                numbers += looksLikeNumber(row.get(c)) ? 1 : 0;
            }
            right[c] = numbers * 2 > rows.size();
        }
        StringBuilder out = new StringBuilder();
        line(out, heads, width, right);
        for (int c = 0; c < width.length; c++) {
            out.append("─".repeat(width[c])).append(c + 1 < width.length ? "  " : "\n");
        }
        rows.forEach(r -> line(out, r, width, right));
        return out.toString();
    }

    private static boolean looksLikeNumber(String cell) {
        return !cell.isEmpty() && (Character.isDigit(cell.charAt(0)) || cell.charAt(0) == '−');
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }

    private static void line(StringBuilder out, List<String> cells, int[] width, boolean[] right) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < width.length; c++) {
            String pad = " ".repeat(width[c] - length(cells.get(c)));
            line.append(right[c] ? pad + cells.get(c) : cells.get(c) + pad).append("  ");
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }
}
