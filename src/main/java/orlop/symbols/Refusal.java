package orlop.symbols;

import java.util.Locale;

/** Why a symbol's file is refused. The texts stand under {@link #key()} and {@link #cureKey()}. */
public enum Refusal {
    /** The folder or a file can't be opened, or is no plain file. */
    UNREADABLE,
    /** More bytes than a symbol can need. */
    FILE_TOO_BIG,
    TOO_MANY_FILES,
    NOT_WELL_FORMED,
    DOCTYPE,
    ENTITY,
    PROCESSING_INSTRUCTION,
    TOO_DEEP,
    TOO_MANY_ELEMENTS,
    /** The root element is not that of SVG. */
    NOT_SVG,
    ELEMENT,
    ATTRIBUTE,
    VALUE,
    /** Not a finite number of a sensible size. */
    NUMBER,
    /** Text drawn as text: symbols need no font. */
    TEXT,
    PATH,
    PATH_TOO_LONG,
    NO_VIEW_BOX,
    /** Width or height differ from the view box: a unit would not be a millimetre. */
    SCALE,
    EMPTY,
    /** Something else than a group is marked to stay upright. */
    UPRIGHT_NO_GROUP,
    /** An upright group stands within another. */
    UPRIGHT_WITHIN,
    /** Two upright groups have one id. */
    UPRIGHT_TWICE,
    UPRIGHT_EMPTY,
    OUTSIDE_VIEW_BOX,
    NO_MANIFEST,
    MANIFEST_NOT_JSON,
    /** A field of an entry is missing, unknown or wrong. */
    MANIFEST_FIELD,
    /** The manifest names a file that isn't in the folder. */
    NO_FILE,
    /** A drawing lies in the folder and the manifest doesn't name it. */
    NO_ENTRY,
    NAME_TWICE,
    UNKNOWN_KIND,
    TERMINAL_MISSING,
    TERMINAL_OFF_GRID,
    TERMINAL_OUTSIDE;

    /** Key of the text that says what was refused; arguments: file, line (0: none), detail. */
    public String key() {
        return "symbols.refused." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Key of the text that says what to do; the same arguments. */
    public String cureKey() {
        return key() + ".cure";
    }
}
