package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Checks;

/** One key of an object in the file and the record component that it stands for. */
sealed interface Leaf {
    /** The name by which templates ask for it: the record component's. */
    String name();

    /** The keys under which it may stand. */
    Set<String> keys();

    /** Whether a file must give it. */
    boolean required();

    /** Whether the object has one of the keys. */
    boolean standsIn(ObjectNode object);

    /** Its value, null for "not known". Only for an object in which it stands. */
    @Nullable
    Object read(ObjectNode object) throws Trouble;

    /** Writes key and value, unless the value is the default and need not be written. */
    void write(JsonOut out, @Nullable Object value, @Nullable Object defaultValue);

    /** Where in the record it comes from. */
    Method accessor();

    /** A key with one codec. */
    record Single(String name, Codec codec, boolean nullable, boolean required, boolean always, Method accessor)
            implements Leaf {
        @Override
        public Set<String> keys() {
            return Set.of(name);
        }

        @Override
        public boolean standsIn(ObjectNode object) {
            return object.has(name);
        }

        @Override
        public @Nullable Object read(ObjectNode object) throws Trouble {
            JsonNode node = object.get(name);
            if (nullable && Codec.isNull(node)) {
                return null;
            }
            try {
                Object value = codec.read(node);
                return codec instanceof Codec.Area && value.equals(Codec.Area.AUTO) ? null : value;
            } catch (Trouble t) {
                throw t.within(name);
            } catch (Checks.OutOfRange e) {
                throw Trouble.range(e, name).within(name);
            }
        }

        @Override
        public void write(JsonOut out, @Nullable Object value, @Nullable Object defaultValue) {
            if (value == null) {
                if (codec instanceof Codec.Area) {
                    out.key(name).text(Codec.Area.AUTO);
                }
            } else if (required || always || !value.equals(defaultValue)) {
                codec.write(out.key(name), value);
            }
        }
    }

    /** The systems of a component: {@code "system": "24"} or {@code "systems": ["24", "230"]}. */
    record Systems(Method accessor) implements Leaf {
        static final String ONE = "system";
        static final String SEVERAL = "systems";
        static final Codec LIST = new Codec.Items(new Codec.Text());

        @Override
        public String name() {
            return SEVERAL;
        }

        @Override
        public Set<String> keys() {
            return Set.of(ONE, SEVERAL);
        }

        @Override
        public boolean required() {
            return true;
        }

        @Override
        public boolean standsIn(ObjectNode object) {
            return object.has(ONE) || object.has(SEVERAL);
        }

        @Override
        public Object read(ObjectNode object) throws Trouble {
            if (object.has(ONE) && object.has(SEVERAL)) {
                throw Trouble.of("store.system-twice").withKey(SEVERAL);
            }
            String key = object.has(ONE) ? ONE : SEVERAL;
            try {
                return key.equals(ONE)
                        ? List.of(new Codec.Text().read(object.get(ONE)))
                        : LIST.read(object.get(SEVERAL));
            } catch (Trouble t) {
                throw t.within(key);
            }
        }

        @Override
        public void write(JsonOut out, @Nullable Object value, @Nullable Object defaultValue) {
            if (value instanceof List<?> list && list.size() == 1) {
                out.key(ONE).text(list.get(0).toString());
            } else if (value != null) {
                LIST.write(out.key(SEVERAL), value);
            }
        }
    }
}
