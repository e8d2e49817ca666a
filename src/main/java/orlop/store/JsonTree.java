package orlop.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;

/**
 * Reads strict JSON into a tree within bounds of depth, length and number, so that no text takes long or much memory.
 * A duplicate key is refused.
 */
final class JsonTree {
    /** Deeper than any drawing goes, with room for what a later version may add. */
    static final int MAX_DEPTH = 32;

    static final int MAX_STRING = 100_000;
    static final int MAX_NUMBER = 200;
    /** A drawing of 100,000 components and 100,000 cables has about 3 million. */
    static final int MAX_TOKENS = 4_000_000;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            // no symbol table: a text of many colliding keys would make it throw
            .configure(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES, false)
            .configure(JsonFactory.Feature.INTERN_FIELD_NAMES, false)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_DEPTH + 1)
                    .maxStringLength(MAX_STRING)
                    .maxNameLength(1_000)
                    .maxNumberLength(MAX_NUMBER)
                    .maxTokenCount(MAX_TOKENS)
                    .build())
            .build();
    private static final JsonNodeFactory NODES = new JsonNodeFactory(true);

    private final JsonParser parser;
    private JsonNode root = NullNode.getInstance();

    private JsonTree(JsonParser parser) {
        this.parser = parser;
    }

    /** A parser over this text, with every bound. */
    static JsonParser parser(char[] text) throws IOException {
        return FACTORY.createParser(text);
    }

    /** The tree of a text that holds one JSON value. Trouble brings what has been read of it. */
    static JsonNode read(char[] text) throws Trouble {
        try (JsonParser p = parser(text)) {
            JsonTree tree = new JsonTree(p);
            try {
                return tree.document(text);
            } catch (Trouble t) {
                throw t.in(tree.root);
            }
        } catch (IOException e) {
            throw new AssertionError("a text in memory cannot fail to be read", e);
        }
    }

    private JsonNode document(char[] text) throws Trouble, IOException {
        try {
            JsonToken first = parser.nextToken();
            if (first == null) {
                throw Trouble.of("store.empty").at(1, 1);
            }
            value(first, 0, node -> root = node);
            ended();
            return root;
        } catch (JsonProcessingException e) {
            throw explained(e, text);
        }
    }

    private void ended() throws Trouble, IOException {
        boolean ended;
        try {
            ended = parser.nextToken() == null;
        } catch (JsonProcessingException e) {
            ended = false;
        }
        if (!ended) {
            throw here(Trouble.of("store.trailing"), parser.currentTokenLocation());
        }
    }

    /** Reads a value. It is put where it belongs before it is filled, so that trouble inside it finds the ids around. */
    private void value(JsonToken token, int depth, Consumer<JsonNode> put) throws IOException, Trouble {
        switch (token) {
            case START_OBJECT -> {
                ObjectNode node = NODES.objectNode();
                put.accept(node);
                object(node, depth + 1);
            }
            case START_ARRAY -> {
                ArrayNode node = NODES.arrayNode();
                put.accept(node);
                array(node, depth + 1);
            }
            default -> put.accept(scalar(token));
        }
    }

    private JsonNode scalar(JsonToken token) throws IOException, Trouble {
        return switch (token) {
            case VALUE_STRING -> TextNode.valueOf(parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(token);
            case VALUE_TRUE -> BooleanNode.TRUE;
            case VALUE_FALSE -> BooleanNode.FALSE;
            case VALUE_NULL -> NullNode.getInstance();
            default -> throw new AssertionError("no value starts with " + token);
        };
    }

    private void object(ObjectNode node, int depth) throws IOException, Trouble {
        bounded(depth);
        for (JsonToken t = parser.nextToken(); t != JsonToken.END_OBJECT; t = parser.nextToken()) {
            String key = parser.currentName();
            if (node.has(key)) {
                throw here(Trouble.of("store.duplicate-key", Message.quote(key)), parser.currentTokenLocation());
            }
            value(parser.nextToken(), depth, child -> node.set(key, child));
        }
    }

    private void array(ArrayNode node, int depth) throws IOException, Trouble {
        bounded(depth);
        for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
            value(t, depth, node::add);
        }
    }

    private void bounded(int depth) throws Trouble {
        if (depth > MAX_DEPTH) {
            throw here(Trouble.of("store.too-deep", MAX_DEPTH), parser.currentTokenLocation());
        }
    }

    private JsonNode number(JsonToken token) throws IOException, Trouble {
        String text = parser.getText();
        if (token == JsonToken.VALUE_NUMBER_INT && text.length() <= 9) {
            return IntNode.valueOf(Integer.parseInt(text));
        }
        double d = Double.parseDouble(text);
        boolean zero = text.chars().takeWhile(c -> c != 'e' && c != 'E').allMatch(c -> "-.0".indexOf(c) >= 0);
        if (Double.isInfinite(d) || (d == 0 && !zero)) {
            throw here(Trouble.of("store.number", Message.quote(text)), parser.currentTokenLocation());
        }
        return DecimalNode.valueOf(zero ? BigDecimal.ZERO : new BigDecimal(text));
    }

    private Trouble explained(JsonProcessingException e, char[] text) {
        JsonLocation at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
        if (e instanceof StreamConstraintsException) {
            return here(Trouble.of("store.too-long", MAX_STRING, MAX_NUMBER), at);
        }
        int offset = (int) at.getCharOffset();
        if (e instanceof JsonEOFException || offset >= text.length || offset < 0) {
            return here(Trouble.of("store.cut-off"), at);
        }
        int start = e.getOriginalMessage().contains(" token '") ? wordStart(text, offset) : offset;
        String found = String.valueOf(text, start, Math.max(1, offset - start));
        return here(Trouble.of("store.syntax", Message.quote(found)), at)
                .at(at.getLineNr(), at.getColumnNr() - (offset - start));
    }

    /** Where a word starts that ends here: the parser tells the place behind a word that it does not know. */
    private static int wordStart(char[] text, int end) {
        int i = end;
        while (i > 0 && Character.isLetterOrDigit(text[i - 1])) {
            i--;
        }
        return i;
    }

    /** Puts the line, the column and the path of the parser into the trouble. */
    private Trouble here(Trouble trouble, JsonLocation at) {
        for (JsonStreamContext c = parser.getParsingContext(); c != null && !c.inRoot(); c = c.getParent()) {
            Object step = step(c);
            if (step != null) {
                trouble.within(step);
            }
        }
        return trouble.at(at.getLineNr(), at.getColumnNr());
    }

    private static @Nullable Object step(JsonStreamContext c) {
        if (c.inArray()) {
            return c.hasCurrentIndex() ? c.getCurrentIndex() : null;
        }
        return c.getCurrentName();
    }
}
