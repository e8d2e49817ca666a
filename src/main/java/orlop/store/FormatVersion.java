package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The version of the file format, which stands first in every file. */
final class FormatVersion {
    /** The version that is written, and the only one so far that is read. */
    static final int CURRENT = 1;

    private FormatVersion() {}

    /** @throws Trouble if the version is missing, is no version, or is newer than this program */
    static void check(ObjectNode root) throws Trouble {
        JsonNode version = root.get(Section.VERSION);
        if (version == null) {
            throw Trouble.of("store.no-version", CURRENT);
        }
        if (!version.isNumber() || !version.isInt() || version.intValue() < 1) {
            throw Trouble.of("store.bad-version", Codec.shown(version), CURRENT).within(Section.VERSION);
        }
        if (version.intValue() > CURRENT) {
            throw Trouble.of("store.newer-version", version.intValue(), CURRENT).within(Section.VERSION);
        }
    }
}
