package orlop.editor;

import java.util.Locale;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/** Everything that can be asked of the window, with its key. {@code menu} stands for the system's menu key. */
enum CommandId {
    NEW("menu N"),
    OPEN("menu O"),
    SAVE("menu S"),
    SAVE_AS("menu shift S"),
    SAVE_COPY(null),
    REVERT(null),
    EXPORT_SVG("menu E"),
    EXPORT_PNG("menu shift E"),
    EXPORT_SHEETS("menu alt E"),
    GIVE_UP(null),
    PREFERENCES("menu COMMA"),
    CLOSE("menu W"),
    QUIT("menu Q"),

    UNDO("menu Z"),
    REDO("menu Y"),
    CUT("menu X"),
    COPY("menu C"),
    PASTE("menu V"),
    DUPLICATE("menu D"),
    DELETE("DELETE"),
    SELECT_ALL("menu A"),
    SELECT_KIND("menu alt A"),
    SELECT_CONNECTED("menu shift K"),
    FIND("menu F"),
    FIND_COMMAND("menu K"),
    RENAME("F2"),
    BACK_OUT("ESCAPE"),

    TURN("menu R"),
    MIRROR("menu M"),
    JOIN("menu J"),
    LINK("menu shift J"),
    RUN("F3"),
    SWITCH("menu T"),
    AUTOMATIC(null),

    NOTE("menu shift T"),
    REPEAT("menu alt D"),
    ALIGN_LEFT(null),
    ALIGN_RIGHT(null),
    ALIGN_TOP(null),
    ALIGN_BOTTOM(null),
    ALIGN_COLUMN(null),
    ALIGN_ROW(null),
    DISTRIBUTE_ACROSS(null),
    DISTRIBUTE_DOWN(null),
    FROM_SOURCES(null),
    RENUMBER(null),
    RENUMBER_SELECTED(null),
    LOCK("menu L"),
    UNLOCK("menu U"),

    ZOOM_IN("menu PLUS"),
    ZOOM_OUT("menu MINUS"),
    FIT("menu 0"),
    FIT_DRAWN("menu 2"),
    FULL_SIZE("menu 1"),
    SHOW_SIZE(null),
    SHOW_LENGTH(null),
    SHOW_CURRENT(null),
    SHOW_DROP(null),
    SHOW_FAULT(null),
    SHOW_LOCKER("menu shift L"),
    SHOW_MARGIN("menu shift M"),
    SHOW_PATH("menu shift P"),
    SHOW_WORKING("menu shift W"),
    SHOW_FINDINGS("menu shift F"),
    SHOW_REGISTER("menu shift R"),
    SHOW_CONDITIONS("menu shift O"),
    SHOW_STRIP(null),
    WHOLE_PAGE("menu shift U"),
    ALONE("F11"),
    DARK("menu shift D"),
    NEXT_PART("F6"),
    PREVIOUS_PART("shift F6"),

    NEXT_FINDING("F8"),
    PREVIOUS_FINDING("shift F8"),
    CURE("menu ENTER"),
    ACCEPT("menu shift A"),
    WITHDRAW(null),
    CHECK_AGAIN("F5"),

    NEXT_SHEET("PAGE_DOWN"),
    PREVIOUS_SHEET("PAGE_UP"),
    NEW_SHEET("menu shift N"),
    SHEET_DETAILS(null),
    LARGER_PAPER(null),
    SHEET_EARLIER(null),
    SHEET_LATER(null),
    DELETE_SHEET(null),
    MOVE_TO_SHEET("menu shift G"),
    FOLLOW_LINK("menu G"),
    NEXT_CONDITION("menu PAGE_DOWN"),
    PREVIOUS_CONDITION("menu PAGE_UP"),
    NEW_CONDITION("menu shift C"),
    COPY_CONDITION(null),
    RENAME_CONDITION(null),
    DELETE_CONDITION(null),
    SYSTEMS(null),
    VESSEL(null),

    KEYS("F1"),
    ABOUT(null);

    private final @Nullable String key;

    CommandId(@Nullable String key) {
        this.key = key;
    }

    /** The word in text keys and component names: {@code export-svg}. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    String text() {
        return Texts.of("editor.command." + word());
    }

    /**
     * Its key on this system, null for none.
     *
     * @param menuKey {@code ctrl} or {@code meta}
     */
    @Nullable
    KeyStroke key(String menuKey) {
        return key == null ? null : KeyStroke.getKeyStroke(key.replace("menu", menuKey));
    }
}
