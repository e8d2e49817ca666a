package orlop.symbols;

/**
 * Where the reader is.
 *
 * @param file name of the file within its folder
 * @param line counted from 1, or 0: the whole file
 */
record Place(String file, int line) {
    SymbolRefusedException refuse(Refusal refusal, String detail) {
        return new SymbolRefusedException(file, line, refusal, detail);
    }
}
