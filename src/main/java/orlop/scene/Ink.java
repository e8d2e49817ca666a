package orlop.scene;

import java.util.List;

/** What a colour means. A {@link Palette} says how it looks. */
public enum Ink {
    /** Symbols, links, texts. */
    INK(true),
    /** Texts of second rank. */
    QUIET(true),
    /** Lines and texts of what no source feeds in the condition shown. */
    DEAD(true),
    /** The sheet itself. */
    PAPER(false),
    /** A finding that can burn or kill, and what is proposed against it. */
    DANGER(true),
    /** A finding that breaks the rule set. */
    DEFECT(true),
    /** A finding worth knowing. */
    ADVICE(true),
    /** The line between sheet and margin. */
    MARGIN_LINE(false),
    /** Behind what is selected or pointed at: the window's. */
    HALO(false),
    SYSTEM_1(true),
    SYSTEM_2(true),
    SYSTEM_3(true),
    SYSTEM_4(true),
    SYSTEM_5(true),
    SYSTEM_6(true),
    /** Protective and bonding conductors, whatever feeds what. */
    PROTECTIVE(true);

    private static final List<Ink> SYSTEMS = List.of(SYSTEM_1, SYSTEM_2, SYSTEM_3, SYSTEM_4, SYSTEM_5, SYSTEM_6);
    private final boolean forText;

    Ink(boolean forText) {
        this.forText = forText;
    }

    /** Whether texts are set in it, so that it stands out from the paper at 4.5 : 1 or more. */
    public boolean forText() {
        return forText;
    }

    /**
     * The ink of an electrical system. A seventh takes the first again: the name in the line tells systems apart.
     *
     * @param index its place in the drawing, from 0
     */
    public static Ink system(int index) {
        return SYSTEMS.get(Math.floorMod(index, SYSTEMS.size()));
    }
}
