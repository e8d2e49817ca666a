package orlop.symbols;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;

/**
 * The part of SVG that a symbol may use. What is not named here is refused: so are references, images, scripts, style
 * sheets, event handlers, filters, text and every other vocabulary, without a list of evils to keep up.
 */
final class AllowList {
    static final String SVG = "http://www.w3.org/2000/svg";
    static final Set<String> WORDS = Set.of("title", "desc");
    static final Set<String> GROUPS = Set.of("svg", "g");

    private static final Set<String> PAINT = Set.of("fill", "stroke", "stroke-width");
    private static final Map<String, Set<String>> OWN = Map.ofEntries(
            Map.entry("svg", Set.of("viewBox", "width", "height", "version")),
            Map.entry("g", Set.of()),
            Map.entry("title", Set.of()),
            Map.entry("desc", Set.of()),
            Map.entry("path", Set.of("d")),
            Map.entry("line", Set.of("x1", "y1", "x2", "y2")),
            Map.entry("polyline", Set.of("points")),
            Map.entry("polygon", Set.of("points")),
            Map.entry("rect", Set.of("x", "y", "width", "height", "rx", "ry")),
            Map.entry("circle", Set.of("cx", "cy", "r")),
            Map.entry("ellipse", Set.of("cx", "cy", "rx", "ry")));
    private static final Set<String> LONG = Set.of("d", "points");

    private AllowList() {}

    /** Refuses an element that isn't on the list or stands where it can't; {@code parent} is empty at the root. */
    static void checkElement(XMLStreamReader xml, String parent, Place place) throws SymbolRefusedException {
        String name = xml.getLocalName();
        boolean isSvg = SVG.equals(xml.getNamespaceURI());
        if (parent.isEmpty()) {
            if (!isSvg || !name.equals("svg")) {
                throw place.refuse(Refusal.NOT_SVG, qualified(xml.getPrefix(), name));
            }
            return;
        }
        boolean placed = GROUPS.contains(parent) || (WORDS.contains(name) && !WORDS.contains(parent));
        if (!isSvg || !OWN.containsKey(name) || name.equals("svg") || !placed) {
            throw place.refuse(Refusal.ELEMENT, qualified(xml.getPrefix(), name));
        }
    }

    /** The attributes of the element at hand, each one on the list and of a bearable length. */
    static Map<String, String> attributes(XMLStreamReader xml, Place place) throws SymbolRefusedException {
        String element = xml.getLocalName();
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String name = xml.getAttributeLocalName(i);
            String namespace = xml.getAttributeNamespace(i);
            String value = xml.getAttributeValue(i);
            if ((namespace != null && !namespace.isEmpty()) || !isAllowed(element, name)) {
                throw place.refuse(Refusal.ATTRIBUTE, qualified(xml.getAttributePrefix(i), name));
            }
            checkLength(name, value, place);
            attributes.put(name, value);
        }
        return attributes;
    }

    private static boolean isAllowed(String element, String name) {
        if (name.equals("id") || OWN.getOrDefault(element, Set.of()).contains(name)) {
            return true;
        }
        if (WORDS.contains(element)) {
            return false;
        }
        return PAINT.contains(name) || (name.equals("transform") && !element.equals("svg"));
    }

    private static void checkLength(String name, String value, Place place) throws SymbolRefusedException {
        if (LONG.contains(name)) {
            if (value.length() > Limits.PATH_CHARACTERS) {
                throw place.refuse(Refusal.PATH_TOO_LONG, Integer.toString(value.length()));
            }
        } else if (value.length() > Limits.VALUE_CHARACTERS) {
            throw place.refuse(Refusal.VALUE, name + "=" + value);
        }
    }

    private static String qualified(String prefix, String name) {
        return prefix == null || prefix.isEmpty() ? name : prefix + ":" + name;
    }
}
