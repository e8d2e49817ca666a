package orlop.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;
import orlop.symbols.SymbolLibrary;
import orlop.symbols.SymbolRefusedException;
import orlop.symbols.UserSymbols;

/** The symbols with which the program draws now: its own, and before them those of a person's folder. Any thread. */
public final class OwnSymbols {
    private static volatile Taken now = new Taken(SymbolLibrary.bundled(), 0, null);

    private OwnSymbols() {}

    /**
     * What came of a folder.
     *
     * @param library the symbols to draw with
     * @param own how many of them are the person's
     * @param refused what in the folder was refused and what to do about it; null if nothing was. Then none of its symbols
     *     is taken
     */
    public record Taken(
            SymbolLibrary library, int own, @Nullable Message refused) {}

    public static Taken now() {
        return now;
    }

    public static SymbolLibrary library() {
        return now.library;
    }

    /** Reads a folder; one that isn't there is one without symbols. What it holds, or its refusal, is there from now on. */
    public static Taken read(Path folder) {
        now = taken(folder);
        return now;
    }

    /** Why a folder can't be taken: it isn't there, or something in it is refused; empty if it can. Nothing changes yet. */
    public static Optional<Message> refusal(Path folder) {
        return Files.isDirectory(folder)
                ? Optional.ofNullable(taken(folder).refused)
                : Optional.of(Message.of("desk.symbols.no-folder", folder.toString()));
    }

    private static Taken taken(Path folder) {
        SymbolLibrary ours = SymbolLibrary.bundled();
        if (!Files.exists(folder)) {
            return new Taken(ours, 0, null);
        }
        try {
            SymbolLibrary all = UserSymbols.of(folder);
            int own = (int) all.all().stream()
                    .filter(s -> ours.named(s.name()).filter(s::equals).isEmpty())
                    .count();
            return new Taken(all, own, null);
        } catch (SymbolRefusedException e) {
            Message what = Message.of(e.refusal().key(), e.file(), e.line(), e.detail());
            Message cure = Message.of(e.refusal().cureKey(), e.file(), e.line(), e.detail());
            return new Taken(ours, 0, Message.of("desk.symbols.refused", folder.toString(), what, cure));
        }
    }

    /** The same in a sentence. */
    public static Message said() {
        Taken t = now;
        return t.refused != null ? t.refused : Message.of("desk.symbols.taken", t.own);
    }
}
