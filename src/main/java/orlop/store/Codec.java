package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Checks;
import orlop.drawing.EfficiencyByLoad;
import orlop.drawing.Ledger;
import orlop.drawing.Message;
import orlop.drawing.Named;
import orlop.drawing.Point;
import orlop.drawing.TerminalRef;

/** How one type of value stands in the file. */
sealed interface Codec {
    /**
     * The value of a JSON value.
     *
     * @throws Trouble if it has another type
     * @throws Checks.OutOfRange if it is refused; the caller knows the key
     */
    Object read(JsonNode node) throws Trouble;

    void write(JsonOut out, Object value);

    /** The trouble of a value of the wrong type. */
    static Trouble wrong(String type, JsonNode found) {
        return Trouble.of("store.wrong-type", Message.of("store.type." + type), shown(found));
    }

    /** A value as it is shown in a message. */
    static Object shown(JsonNode found) {
        if (found.isObject()) {
            return Message.of("store.type.object");
        }
        return found.isArray()
                ? Message.of("store.type.list")
                : Message.quote(new JsonOut().tree(found).toString());
    }

    /** Any text. */
    record Text() implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!node.isTextual()) {
                throw wrong("text", node);
            }
            return node.textValue();
        }

        @Override
        public void write(JsonOut out, Object value) {
            out.text((String) value);
        }
    }

    /** A number. */
    record Decimal() implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!node.isNumber()) {
                throw wrong("number", node);
            }
            return node.doubleValue() + 0.0; // there is no negative zero in a drawing
        }

        @Override
        public void write(JsonOut out, Object value) {
            out.number((Double) value);
        }
    }

    /** A whole number; 2.0 is one too. */
    record Whole() implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (node.isInt()) {
                return node.intValue();
            }
            if (node.isNumber()) {
                BigDecimal d = node.decimalValue();
                if (d.abs().compareTo(BigDecimal.valueOf(Integer.MAX_VALUE)) <= 0
                        && d.stripTrailingZeros().scale() <= 0) {
                    return d.intValueExact();
                }
            }
            throw wrong("whole", node);
        }

        @Override
        public void write(JsonOut out, Object value) {
            out.number((Integer) value);
        }
    }

    /** True or false. */
    record Flag() implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!node.isBoolean()) {
                throw wrong("flag", node);
            }
            return node.booleanValue();
        }

        @Override
        public void write(JsonOut out, Object value) {
            out.raw(value.toString());
        }
    }

    /** One of the words of an enumeration. */
    record Word(Map<String, Object> constants) implements Codec {
        private static final int FEW = 10;

        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!node.isTextual()) {
                throw wrong("word", node);
            }
            Object constant = constants.get(node.textValue());
            if (constant == null) {
                String found = node.textValue();
                throw constants.size() <= FEW
                        ? Trouble.of("store.unknown-word", Message.quote(found), List.copyOf(constants.keySet()))
                        : Trouble.of(
                                "store.unknown-word-of-many",
                                Message.quote(found),
                                Spelling.nearest(found, constants.keySet(), 5));
            }
            return constant;
        }

        @Override
        public void write(JsonOut out, Object value) {
            out.text(((Named) value).word());
        }
    }

    /** A cross-section: a number, or "auto" for null. It is always written, so that a choice left to Orlop is seen. */
    record Area() implements Codec {
        static final String AUTO = "auto";

        @Override
        public Object read(JsonNode node) throws Trouble {
            if (node.isTextual() && node.textValue().equals(AUTO)) {
                return AUTO;
            }
            if (!node.isNumber()) {
                throw wrong("area", node);
            }
            return node.doubleValue() + 0.0;
        }

        @Override
        public void write(JsonOut out, Object value) {
            out.number((Double) value);
        }
    }

    /** A place on a sheet: two numbers. */
    record Spot() implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!node.isArray() || node.size() != 2) {
                throw wrong("point", node);
            }
            for (int i = 0; i < 2; i++) {
                if (!node.get(i).isNumber()) {
                    throw wrong("number", node.get(i)).within(i);
                }
            }
            return new Point(node.get(0).doubleValue() + 0.0, node.get(1).doubleValue() + 0.0);
        }

        @Override
        public void write(JsonOut out, Object value) {
            Point p = (Point) value;
            out.raw("[").number(p.xMm()).raw(", ").number(p.yMm()).raw("]");
        }
    }

    /** Steps of load in percent and efficiency: {@code [[10, 0.8], [50, 0.91]]}. */
    record Steps() implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!node.isArray()) {
                throw wrong("steps", node);
            }
            List<EfficiencyByLoad.Step> steps = new ArrayList<>();
            for (int i = 0; i < node.size(); i++) {
                JsonNode pair = node.get(i);
                if (!pair.isArray()
                        || pair.size() != 2
                        || !pair.get(0).isNumber()
                        || !pair.get(1).isNumber()) {
                    throw wrong("step", pair).within(i);
                }
                steps.add(new EfficiencyByLoad.Step(
                        pair.get(0).doubleValue(), pair.get(1).doubleValue()));
            }
            return new EfficiencyByLoad(steps);
        }

        @Override
        public void write(JsonOut out, Object value) {
            String before = "[";
            for (EfficiencyByLoad.Step s : ((EfficiencyByLoad) value).steps()) {
                out.raw(before).raw("[").number(s.loadPercent());
                out.raw(", ").number(s.efficiency()).raw("]");
                before = ", ";
            }
            out.raw("]");
        }
    }

    /** {@code COMPONENT.TERMINAL}. */
    record End() implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!node.isTextual()) {
                throw wrong("terminal", node);
            }
            return TerminalRef.parse(node.textValue(), "terminal");
        }

        @Override
        public void write(JsonOut out, Object value) {
            out.text(value.toString());
        }
    }

    /** A list of like values. */
    record Items(Codec item) implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!node.isArray()) {
                throw wrong("list", node);
            }
            List<Object> list = new ArrayList<>(node.size());
            for (int i = 0; i < node.size(); i++) {
                try {
                    list.add(item.read(node.get(i)));
                } catch (Trouble t) {
                    throw t.within(i);
                } catch (Checks.OutOfRange e) {
                    throw Trouble.range(e, e.field()).within(i);
                }
            }
            return list;
        }

        @Override
        public void write(JsonOut out, Object value) {
            out.raw("[");
            String comma = "";
            for (Object v : (List<?>) value) {
                out.raw(comma);
                item.write(out, v);
                comma = ", ";
            }
            out.raw("]");
        }
    }

    /** An object whose keys are ids. */
    record Table(Codec value) implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            if (!(node instanceof ObjectNode)) {
                throw wrong("object", node);
            }
            Ledger<Object> ledger = Ledger.empty();
            for (Map.Entry<String, JsonNode> e : node.properties()) {
                try {
                    ledger = ledger.with(e.getKey(), value.read(e.getValue()));
                } catch (Trouble t) {
                    throw t.within(e.getKey());
                }
            }
            return ledger;
        }

        @Override
        public void write(JsonOut out, Object ledger) {
            out.open();
            for (Map.Entry<String, ?> e : (Ledger<?>) ledger) {
                out.key(e.getKey());
                value.write(out, e.getValue());
            }
            out.close();
        }
    }

    /** A record of its own. */
    record Part(Shape shape) implements Codec {
        @Override
        public Object read(JsonNode node) throws Trouble {
            return shape.read(node);
        }

        @Override
        public void write(JsonOut out, Object value) {
            shape.write(out, value);
        }
    }

    /** Whether null stands in the file for "not known". */
    static boolean isNull(@Nullable JsonNode node) {
        return node == null || node.isNull();
    }
}
