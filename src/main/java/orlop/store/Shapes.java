package orlop.store;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Acceptance;
import orlop.drawing.Cable;
import orlop.drawing.Cableway;
import orlop.drawing.Component;
import orlop.drawing.DayPlan;
import orlop.drawing.EfficiencyByLoad;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Ledger;
import orlop.drawing.Link;
import orlop.drawing.LoadState;
import orlop.drawing.Location;
import orlop.drawing.Measurement;
import orlop.drawing.Named;
import orlop.drawing.Nature;
import orlop.drawing.Note;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;
import orlop.drawing.Vessel;

/**
 * The shapes of every object in the file, found by reflection from the records of the drawing.
 *
 * <p>All that is said here by hand is which keys a file must give and where the defaults of the others come from.
 */
final class Shapes {
    static final String KIND = "kind";

    private static final Codec TEXT = new Codec.Text();
    private static final Set<Class<?>> FLAT =
            Set.of(Place.class, Cable.Construction.class, Cable.Return.class, Cable.Measured.class);
    /** Written even where they are the default: a component without them would move when others change. */
    private static final Set<String> ALWAYS = Set.of("sheet", "at");

    static final Shape LOAD_STATE = shape(LoadState.class, Set.of(), g -> LoadState.DEFAULT);
    static final Shape STEP = shape(
            DayPlan.Step.class,
            Set.of("condition", "hours"),
            g -> new DayPlan.Step(g.text("condition"), (Double) g.get("hours")));
    static final Shape VESSEL = shape(Vessel.class, Set.of(), g -> Vessel.named(""));
    static final Shape SYSTEM = shape(
            ElectricalSystem.class,
            Set.of("id", "nature", "nominalV"),
            g -> ElectricalSystem.of(g.text("id"), (Nature) g.get("nature"), (Double) g.get("nominalV")));
    static final Shape CONDITION =
            shape(OperatingCondition.class, Set.of("id"), g -> OperatingCondition.asDrawn(g.text("id"), ""));
    static final Shape LOCATION = shape(
            Location.class,
            Set.of("id"),
            g -> new Location(g.text("id"), "", null, false, false, false, false, Extras.NONE));
    static final Shape SHEET = shape(Sheet.class, Set.of("id"), g -> Sheet.of(g.text("id"), ""));
    static final Shape CABLE = shape(
            Cable.class,
            Set.of("id", "from", "to"),
            g -> Cable.of(g.text("id"), (TerminalRef) g.get("from"), (TerminalRef) g.get("to")));
    static final Shape LINK = shape(
            Link.class, Set.of("from", "to"), g -> Link.of((TerminalRef) g.get("from"), (TerminalRef) g.get("to")));
    static final Shape CABLEWAY = shape(
            Cableway.class,
            Set.of("id", "lengthM"),
            g -> new Cableway(g.text("id"), "", "", "", (Double) g.get("lengthM"), Extras.NONE));
    static final Shape NOTE = shape(
            Note.class,
            Set.of("id", "sheet", "at", "text", "heightMm"),
            g -> new Note(
                    g.text("id"),
                    g.text("sheet"),
                    (Point) g.get("at"),
                    g.text("text"),
                    (Double) g.get("heightMm"),
                    Extras.NONE));
    static final Shape MEASUREMENT = shape(
            Measurement.class,
            Set.of("id", "item", "quantity", "value"),
            g -> new Measurement(
                    g.text("id"),
                    g.text("item"),
                    g.text("quantity"),
                    (Double) g.get("value"),
                    "",
                    "",
                    "",
                    Extras.NONE));
    static final Shape ACCEPTANCE = shape(
            Acceptance.class,
            Set.of("id", "rule", "item", "reason"),
            g -> new Acceptance(
                    g.text("id"), g.text("rule"), g.text("item"), g.text("reason"), "", "", List.of(), Extras.NONE));
    static final Shape DAY_PLAN =
            shape(DayPlan.class, Set.of("id"), g -> new DayPlan(g.text("id"), "", List.of(), Extras.NONE));
    /** Filled as kinds are met: a drawing has few of them, and each costs a start something. */
    private static final Map<Kind, Shape> COMPONENTS = new ConcurrentHashMap<>();

    private static final Place ANYWHERE = Place.at("1", 0, 0);

    private Shapes() {}

    /** The shape of the components of a kind. */
    static Shape component(Kind kind) {
        return COMPONENTS.computeIfAbsent(kind, Shapes::made);
    }

    private static Shape made(Kind kind) {
        Plan plan = plan(Component.class, Set.of("id"), kind.defaults().getClass());
        return new Shape(
                plan, g -> Component.of(g.text("id"), kind, ANYWHERE, texts(g.get(Leaf.Systems.SEVERAL))), kind);
    }

    /** The words of an enumeration, in its order. */
    static Codec.Word words(Class<?> type) {
        Map<String, Object> constants = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            constants.put(((Named) constant).word(), constant);
        }
        return new Codec.Word(Collections.unmodifiableMap(constants));
    }

    static List<String> texts(Object list) {
        return ((List<?>) list).stream().map(Object::toString).toList();
    }

    private static Shape shape(Class<?> type, Set<String> required, Shape.Template template) {
        return new Shape(plan(type, required, null), template, null);
    }

    private static Plan plan(Class<?> type, Set<String> required, @Nullable Class<?> particulars) {
        List<Plan.Part> parts = new ArrayList<>();
        for (RecordComponent c : type.getRecordComponents()) {
            parts.add(part(c, required, particulars));
        }
        return new Plan(constructor(type), List.copyOf(parts));
    }

    private static Plan.Part part(RecordComponent c, Set<String> required, @Nullable Class<?> particulars) {
        if (c.getType() == Extras.class) {
            return new Plan.Keep(c.getAccessor());
        }
        if (particulars != null && c.getType() == Particulars.class) {
            return new Plan.Flat(c.getAccessor(), plan(particulars, Set.of(), null));
        }
        if (FLAT.contains(c.getType())) {
            return new Plan.Flat(c.getAccessor(), plan(c.getType(), Set.of(), null));
        }
        if (particulars != null && c.getName().equals(Leaf.Systems.SEVERAL)) {
            return new Plan.AtKey(new Leaf.Systems(c.getAccessor()));
        }
        boolean nullable = c.getAnnotatedType().isAnnotationPresent(Nullable.class);
        boolean area = c.getDeclaringRecord() == Cable.class && c.getName().equals("areaMm2");
        return new Plan.AtKey(new Leaf.Single(
                c.getName(),
                area ? new Codec.Area() : codec(c.getGenericType()),
                nullable,
                required.contains(c.getName()),
                c.getDeclaringRecord() == Place.class && ALWAYS.contains(c.getName()),
                c.getAccessor()));
    }

    private static Codec codec(Type type) {
        if (type instanceof ParameterizedType p) {
            Codec inner = codec(p.getActualTypeArguments()[0]);
            return p.getRawType() == Ledger.class ? new Codec.Table(inner) : new Codec.Items(inner);
        }
        if (type == String.class) {
            return TEXT;
        }
        if (type == double.class || type == Double.class) {
            return new Codec.Decimal();
        }
        if (type == int.class || type == Integer.class) {
            return new Codec.Whole();
        }
        return type == boolean.class ? new Codec.Flag() : object((Class<?>) type);
    }

    private static Codec object(Class<?> type) {
        if (type.isEnum()) {
            return words(type);
        }
        if (type == EfficiencyByLoad.class) {
            return new Codec.Steps();
        }
        if (type == Point.class) {
            return new Codec.Spot();
        }
        if (type == TerminalRef.class) {
            return new Codec.End();
        }
        if (type == LoadState.class) {
            return new Codec.Part(LOAD_STATE);
        }
        if (type == DayPlan.Step.class) {
            return new Codec.Part(STEP);
        }
        throw new AssertionError("no codec for " + type);
    }

    private static Constructor<?> constructor(Class<?> type) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return type.getConstructor(types);
        } catch (NoSuchMethodException e) {
            throw new AssertionError("a record has a public canonical constructor: " + type, e);
        }
    }
}
