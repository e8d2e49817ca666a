package orlop.symbols;

import java.util.Objects;

/** A symbol's file or manifest was refused: which file, where, what, and so what to do. */
public final class SymbolRefusedException extends Exception {
    private static final long serialVersionUID = 1L;
    /** What is quoted from a hostile file is kept short. */
    private static final int DETAIL_CHARACTERS = 60;

    private final String file;
    private final int line;
    private final Refusal refusal;
    private final String detail;

    SymbolRefusedException(String file, int line, Refusal refusal, String detail) {
        super(file + ":" + line + " " + refusal + " " + shorten(detail));
        this.file = Objects.requireNonNull(file, "file");
        this.line = line;
        this.refusal = Objects.requireNonNull(refusal, "refusal");
        this.detail = shorten(detail);
    }

    /** Name of the file within its folder. */
    public String file() {
        return file;
    }

    /** Line in the file, counted from 1; 0 when the whole file is meant. */
    public int line() {
        return line;
    }

    public Refusal refusal() {
        return refusal;
    }

    /** What was met, in the file's own characters: an element, a value, a terminal. At most 60 printable characters. */
    public String detail() {
        return detail;
    }

    private static String shorten(String detail) {
        String printable = detail.replaceAll("\\p{C}", " ").strip();
        return printable.length() <= DETAIL_CHARACTERS
                ? printable
                : printable.substring(0, DETAIL_CHARACTERS - 1) + "…";
    }
}
