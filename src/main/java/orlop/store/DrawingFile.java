package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Soundness;
import orlop.standards.RuleSet;
import orlop.standards.RuleSets;

/** A drawing in a file {@code NAME.orlop}. Everything here may be called from any thread. */
public final class DrawingFile {
    /** What a file's name ends with. */
    public static final String SUFFIX = ".orlop";

    /** The largest file that is read or written, in bytes: some 300,000 components and cables. */
    public static final int MAX_BYTES = 32 << 20;

    private static final int MEGA = 1 << 20;

    private DrawingFile() {}

    /**
     * Reads a drawing.
     *
     * @throws FileProblem if there is no such file, it cannot be read, or it holds no sound drawing
     */
    public static Drawing load(Path file) throws FileProblem {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw FileProblem.whole(name, "store.directory");
        }
        if (!Files.exists(file)) {
            throw FileProblem.whole(name, "store.no-file");
        }
        if (!Files.isRegularFile(file)) {
            throw FileProblem.whole(name, "store.special-file");
        }
        try {
            size(name, Files.size(file));
            try (InputStream in = Files.newInputStream(file)) {
                return load(in.readNBytes(MAX_BYTES + 1), name);
            }
        } catch (IOException e) {
            throw FileProblem.whole(name, "store.unreadable");
        }
    }

    /**
     * Reads a drawing from bytes.
     *
     * @param name what messages call it
     * @throws FileProblem if they hold no sound drawing
     */
    public static Drawing load(byte[] bytes, String name) throws FileProblem {
        return load(bytes, name, true);
    }

    /**
     * Reads a drawing that came with the program, and that its tests have held against the schema: that is not done again,
     * since it takes the tenth part of a start. All else is looked at as in any file.
     *
     * @param name what messages call it
     * @throws FileProblem if the program was built wrongly
     */
    public static Drawing loadShipped(byte[] bytes, String name) throws FileProblem {
        return load(bytes, name, false);
    }

    private static Drawing load(byte[] bytes, String name, boolean withSchema) throws FileProblem {
        size(name, bytes.length);
        char[] text = text(bytes, name);
        try {
            return drawing(JsonTree.read(text), withSchema);
        } catch (Trouble t) {
            int[] at = t.line() > 0 ? new int[] {t.line(), t.column()} : Places.find(text, t.path(), t.atKey());
            throw new FileProblem(name, at[0], at[1], Places.words(t.path(), t.tree()), t.reason(), t.cure());
        }
    }

    private static Drawing drawing(JsonNode root, boolean withSchema) throws Trouble {
        try {
            Drawing drawing = DrawingReader.read(root);
            if (withSchema) {
                SchemaGate.check(root);
            }
            sound(drawing, root);
            ruleSet(drawing);
            return Unplaced.placed(drawing, root);
        } catch (Trouble t) {
            throw t.in(root);
        }
    }

    /**
     * Makes ready what the first reading needs, some tenths of a second on a cold start. The desk may call it from a
     * thread of its own while the window is being built; without it the first reading does the same.
     */
    public static void warmUp() {
        try {
            load(write(Drawing.empty("")), "");
        } catch (FileProblem p) {
            throw new AssertionError("an empty drawing is sound", p);
        }
    }

    /** The drawing as a file holds it: the same drawing gives the same bytes. */
    public static byte[] write(Drawing drawing) {
        return DrawingWriter.text(drawing).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Writes a drawing so that at every moment either the old or the new file is there, whole. The mode of an existing
     * file is kept; a symbolic link stays and its target is written.
     *
     * @throws FileProblem if it cannot be written; an old file is as it was
     */
    public static void save(Path file, Drawing drawing) throws FileProblem {
        byte[] bytes = write(drawing);
        size(file.toString(), bytes.length);
        AtomicFile.write(file, bytes);
    }

    private static void size(String name, long bytes) throws FileProblem {
        if (bytes > MAX_BYTES) {
            int mega = (int) Math.min(Integer.MAX_VALUE, (bytes + MEGA - 1) / MEGA);
            throw FileProblem.whole(name, "store.too-big", mega, MAX_BYTES / MEGA);
        }
    }

    private static char[] text(byte[] bytes, String name) throws FileProblem {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), out, true);
        out.flip();
        if (result.isError()) {
            int[] at = end(out);
            throw new FileProblem(
                    name, at[0], at[1], "", Message.of("store.not-utf8"), Message.of("store.not-utf8" + Trouble.CURE));
        }
        int start = out.length() > 0 && out.get(0) == '\uFEFF' ? 1 : 0;
        boolean whole = start == 0 && out.limit() == bytes.length;
        return whole ? out.array() : Arrays.copyOfRange(out.array(), start, out.limit());
    }

    /** Line and column behind the last of these characters. */
    private static int[] end(CharBuffer text) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < text.limit(); i++) {
            boolean breaks = text.get(i) == '\n';
            line += breaks ? 1 : 0;
            column = breaks ? 1 : column + 1;
        }
        return new int[] {line, column};
    }

    /** A rule set that nobody knows would quietly be another one. */
    private static void ruleSet(Drawing drawing) throws Trouble {
        String id = drawing.vessel().ruleSet();
        RuleSets known = RuleSets.published();
        if (!id.isEmpty() && known.find(id).isEmpty()) {
            throw Trouble.of(
                            "store.rule-set",
                            Message.quote(id),
                            known.all().stream().map(RuleSet::id).collect(Collectors.joining(", ")))
                    .within("ruleSet")
                    .within("vessel");
        }
    }

    private static void sound(Drawing drawing, JsonNode root) throws Trouble {
        List<Soundness.Flaw> flaws = Soundness.flaws(drawing);
        if (flaws.isEmpty()) {
            return;
        }
        Soundness.Flaw f = flaws.get(0);
        int more = flaws.size() - 1;
        Trouble t = new Trouble(f.message(), more == 0 ? null : Message.of("store.more", more)).within(f.field());
        int index = indexOf(drawing, f);
        throw root.path(f.list()).has(index) ? t.within(index).within(f.list()) : t;
    }

    private static int indexOf(Drawing drawing, Soundness.Flaw f) {
        for (Section<?> s : Section.ALL) {
            if (s.key().equals(f.list())) {
                int i = 0;
                for (var entry : s.of().apply(drawing)) {
                    if (entry.getKey().equals(f.item())) {
                        return i;
                    }
                    i++;
                }
            }
        }
        return -1;
    }
}
