package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Ledger;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.Vessel;

/** Tree to drawing. The first thing that is no drawing is trouble. */
final class DrawingReader {
    private static final Codec.Word KINDS = Shapes.words(Kind.class);

    private interface ItemReader {
        Object read(JsonNode item) throws Trouble;
    }

    private final ObjectNode root;

    private DrawingReader(ObjectNode root) {
        this.root = root;
    }

    static Drawing read(JsonNode root) throws Trouble {
        if (!(root instanceof ObjectNode object)) {
            throw Trouble.of("store.no-drawing");
        }
        FormatVersion.check(object);
        return new DrawingReader(object).drawing();
    }

    private Drawing drawing() throws Trouble {
        Extras extras = Shape.extras(root, keys());
        Vessel vessel = vessel();
        Ledger<ElectricalSystem> systems = list(Section.SYSTEMS, Shapes.SYSTEM);
        var conditions = list(Section.CONDITIONS, Shapes.CONDITION);
        var locations = list(Section.LOCATIONS, Shapes.LOCATION);
        Ledger<Sheet> sheets = sheets(list(Section.SHEETS, Shapes.SHEET));
        return new Drawing(
                vessel,
                systems,
                conditions,
                locations,
                sheets,
                components(sheets),
                list(Section.CABLES, Shapes.CABLE),
                list(Section.LINKS, Shapes.LINK),
                list(Section.CABLEWAYS, Shapes.CABLEWAY),
                list(Section.NOTES, Shapes.NOTE),
                list(Section.MEASUREMENTS, Shapes.MEASUREMENT),
                list(Section.ACCEPTED, Shapes.ACCEPTANCE),
                list(Section.DAY_PLANS, Shapes.DAY_PLAN),
                extras);
    }

    /** The keys of the outermost object. */
    static Set<String> keys() {
        Set<String> keys = new LinkedHashSet<>(List.of(Section.VERSION, Section.VESSEL));
        Section.ALL.forEach(s -> keys.add(s.key()));
        return keys;
    }

    private Vessel vessel() throws Trouble {
        JsonNode node = root.get(Section.VESSEL);
        try {
            return node == null ? Vessel.named("") : (Vessel) Shapes.VESSEL.read(node);
        } catch (Trouble t) {
            throw t.within(Section.VESSEL);
        }
    }

    private <V> Ledger<V> list(Section<V> section, Shape shape) throws Trouble {
        return items(section, shape::read);
    }

    @SuppressWarnings("unchecked") // the shape of a section makes the records of its ledger
    private <V> Ledger<V> items(Section<V> section, ItemReader reader) throws Trouble {
        JsonNode items = array(section.key());
        Ledger<V> ledger = Ledger.empty();
        for (int i = 0; i < items.size(); i++) {
            try {
                Object item = reader.read(items.get(i));
                String id = section.id().apply(item);
                if (ledger.contains(id)) {
                    throw Trouble.of("store.duplicate-id", id).within("id");
                }
                ledger = ledger.with(id, (V) item);
            } catch (Trouble t) {
                throw t.within(i).within(section.key());
            }
        }
        return ledger;
    }

    private JsonNode array(String key) throws Trouble {
        JsonNode items = root.get(key);
        if (items == null) {
            return JsonNodeFactory.instance.arrayNode();
        }
        if (!items.isArray()) {
            throw Codec.wrong("list", items).within(key);
        }
        return items;
    }

    /** The sheets, with a sheet "1" made if there is none and a component says nothing of its sheet. */
    private Ledger<Sheet> sheets(Ledger<Sheet> sheets) throws Trouble {
        if (sheets.isEmpty()) {
            for (JsonNode c : array(Section.COMPONENTS.key())) {
                if (!c.has("sheet")) {
                    return sheets.with("1", Sheet.of("1", ""));
                }
            }
        }
        return sheets;
    }

    private Ledger<Component> components(Ledger<Sheet> sheets) throws Trouble {
        String first = sheets.isEmpty() ? "1" : sheets.iterator().next().getKey();
        AutoPlaces places = new AutoPlaces(array(Section.COMPONENTS.key()), first);
        return items(Section.COMPONENTS, node -> component(node, places));
    }

    private static Object component(JsonNode node, AutoPlaces places) throws Trouble {
        ObjectNode object = Shape.object(node);
        Kind kind = kind(object);
        Place place = places.next(object);
        return Shapes.component(kind)
                .read(object, g -> Component.of(g.text("id"), kind, place, Shapes.texts(g.get(Leaf.Systems.SEVERAL))));
    }

    private static Kind kind(ObjectNode object) throws Trouble {
        JsonNode word = object.get(Shapes.KIND);
        if (word == null) {
            for (Map.Entry<String, JsonNode> e : object.properties()) {
                if (Spelling.meant(e.getKey(), Set.of(Shapes.KIND)).isPresent()) {
                    throw Trouble.of("store.misspelt", orlop.drawing.Message.quote(e.getKey()), Shapes.KIND)
                            .withKey(e.getKey());
                }
            }
            throw Trouble.of("store.missing", Shapes.KIND);
        }
        try {
            return (Kind) KINDS.read(word);
        } catch (Trouble t) {
            throw t.within(Shapes.KIND);
        }
    }
}
