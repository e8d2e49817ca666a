package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Conversion;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Earth;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.Particulars;
import orlop.drawing.Protection;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.drawing.Unit;
import orlop.drawing.Words;

/** The main particulars of a component in a few figures, as they stand beside its symbol. */
final class ParticularsText implements Particulars.Cases<List<String>> {
    private final Drawing drawing;
    private final Component component;
    private final Words words;

    private ParticularsText(Drawing drawing, Component component, Words words) {
        this.drawing = drawing;
        this.component = component;
        this.words = words;
    }

    /** The figures with blanks between; "" if nothing worth writing is known. */
    static String of(Drawing drawing, Component c, Words words) {
        List<String> parts = c.particulars().match(new ParticularsText(drawing, c, words));
        String between = c.particulars() instanceof Consumer ? Format.DOT : " ";
        return String.join(between, parts.stream().filter(p -> !p.isEmpty()).toList());
    }

    @Override
    public List<String> source(Source s) {
        if (s instanceof Source.Battery b) {
            return List.of(
                    words.pattern("scene.chemistry." + b.chemistry().word()).orElse(""),
                    nominal(),
                    unit(b.capacityAh(), Unit.AMPERE_HOUR));
        }
        if (s instanceof Source.ShorePedestal p) {
            return List.of(nominal(), unit(p.ratingA(), Unit.AMPERE));
        }
        if (s instanceof Source.ShoreInlet p) {
            return List.of(nominal(), unit(p.ratingA(), Unit.AMPERE));
        }
        if (s instanceof Source.Generator g) {
            return List.of(nominal(), with("scene.part.kva", g.ratedKva()));
        }
        if (s instanceof Source.Alternator a) {
            return List.of(nominal(), unit(a.hotOutputA(), Unit.AMPERE));
        }
        if (s instanceof Source.PvArray p) {
            return List.of(modules(p));
        }
        if (s instanceof Source.Turbine t) {
            return List.of(nominal(), unit(t.ratedA(), Unit.AMPERE));
        }
        return List.of(nominal());
    }

    /** "2 × 3 × 110 W"; of modules of unknown power how many there are, of one alone nothing. */
    private String modules(Source.PvArray p) {
        String how = p.inSeries() + " × " + p.inParallel();
        if (p.moduleW() != null) {
            return how + " × " + power(p.moduleW());
        }
        return p.inSeries() * p.inParallel() > 1 ? how : "";
    }

    @Override
    public List<String> conversion(Conversion c) {
        if (c instanceof Conversion.Inverter i) {
            return List.of(voltages(), voltAmpere(i.ratedVa()));
        }
        if (c instanceof Conversion.InverterCharger i) {
            return List.of(voltages(), voltAmpere(i.ratedVa()), unit(i.chargeA(), Unit.AMPERE));
        }
        if (c instanceof Conversion.Charger i) {
            return List.of(voltages(), unit(i.ratedA(), Unit.AMPERE));
        }
        if (c instanceof Conversion.DcDcConverter i) {
            return List.of(voltages(), power(i.ratedW()));
        }
        if (c instanceof Conversion.ChargeController i) {
            return List.of(unit(i.maxInputV(), Unit.VOLT), unit(i.ratedA(), Unit.AMPERE));
        }
        if (c instanceof Conversion.Transformer t) {
            return List.of(voltages(), with("scene.part.kva", t.ratedKva()));
        }
        if (c instanceof Conversion.FrequencyConverter f) {
            return List.of(voltages(), voltAmpere(f.ratedVa()));
        }
        return List.of(voltages());
    }

    @Override
    public List<String> distribution(Distribution d) {
        if (d instanceof Distribution.Busbar b) {
            return List.of(unit(b.ratingA(), Unit.AMPERE));
        }
        if (d instanceof Distribution.Terminal t) {
            return List.of(t.strip(), unit(t.ratingA(), Unit.AMPERE));
        }
        return List.of();
    }

    @Override
    public List<String> protection(Protection p) {
        if (p instanceof Protection.Fuse f) {
            return List.of(unit(f.ratingA(), Unit.AMPERE), family(words, f.family()));
        }
        if (p instanceof Protection.CircuitBreaker b) {
            return List.of(unit(b.ratingA(), Unit.AMPERE), family(words, b.family()));
        }
        if (p instanceof Protection.ResidualCurrentDevice r) {
            return List.of(
                    with("scene.part.ma", r.residualMilliA()),
                    r.type().isEmpty() ? "" : words.text(Message.of("scene.part.type", r.type())),
                    unit(r.ratingA(), Unit.AMPERE),
                    family(words, r.family()));
        }
        if (p instanceof Protection.SurgeArrester s) {
            return List.of(unit(s.maxV(), Unit.VOLT));
        }
        return p instanceof Protection.GalvanicIsolator g ? List.of(unit(g.ratingA(), Unit.AMPERE)) : List.of();
    }

    @Override
    public List<String> switching(Switching s) {
        if (s instanceof Switching.Isolator i) {
            return List.of(unit(i.ratingA(), Unit.AMPERE));
        }
        if (s instanceof Switching.Changeover c) {
            return List.of(unit(c.ratingA(), Unit.AMPERE));
        }
        if (s instanceof Switching.Contactor c) {
            return List.of(unit(c.ratingA(), Unit.AMPERE));
        }
        if (s instanceof Switching.DiodeIsolator d) {
            return List.of(unit(d.ratingA(), Unit.AMPERE));
        }
        return s instanceof Switching.CombiningRelay c ? List.of(unit(c.ratingA(), Unit.AMPERE)) : List.of();
    }

    @Override
    public List<String> consumer(Consumer c) {
        List<String> parts = new ArrayList<>();
        if (c instanceof Consumer.PlainLoad l) {
            parts.add(power(l.powerW()));
            parts.add(unit(l.currentA(), Unit.AMPERE));
            parts.add(unit(l.resistanceOhm(), Unit.OHM));
        } else if (c instanceof Consumer.Motor m) {
            parts.add(power(m.shaftW()));
        } else if (c instanceof Consumer.Heater h) {
            parts.add(power(h.powerW()));
        } else if (c instanceof Consumer.Lighting l) {
            parts.add(points(l.points()));
            parts.add(power(l.powerW()));
        } else if (c instanceof Consumer.Electronics e) {
            parts.add(power(e.powerW()));
        } else if (c instanceof Consumer.SocketOutlet s) {
            parts.add(unit(s.ratingA(), Unit.AMPERE));
            parts.add(points(s.points()));
        } else if (c instanceof Consumer.ShortTimeMachine m) {
            parts.add(power(m.powerW()));
        }
        if (c.vital()) {
            parts.add(words.text("scene.vital"));
        }
        return parts;
    }

    @Override
    public List<String> earth(Earth e) {
        if (e instanceof Earth.Shunt s) {
            return List.of(unit(s.ratingA(), Unit.AMPERE));
        }
        return e instanceof Earth.HullBond b ? List.of(unit(b.areaMm2(), Unit.SQUARE_MILLIMETRE)) : List.of();
    }

    private String points(int n) {
        return n == 1 ? "" : words.text(Message.of("scene.part.points", n));
    }

    private String nominal() {
        ElectricalSystem s = drawing.systems().get(component.systems().get(0));
        return s == null ? "" : Format.q(s.nominalV(), Unit.VOLT);
    }

    private String voltages() {
        List<String> all = new ArrayList<>();
        for (String id : component.systems()) {
            ElectricalSystem s = drawing.systems().get(id);
            if (s != null && all.size() < 2) {
                all.add(Format.number(s.nominalV()));
            }
        }
        return all.isEmpty() ? "" : String.join("/", all) + " " + Unit.VOLT.sign();
    }

    private String voltAmpere(@Nullable Double va) {
        if (va == null) {
            return "";
        }
        return va < 1000
                ? words.text(Message.of("scene.part.va", Format.number(va)))
                : with("scene.part.kva", va / 1000);
    }

    private String with(String key, @Nullable Double value) {
        return value == null ? "" : words.text(Message.of(key, Format.number(value)));
    }

    private static String unit(@Nullable Double value, Unit unit) {
        return value == null ? "" : Format.q(value, unit);
    }

    private static String power(@Nullable Double watt) {
        return watt == null ? "" : Format.power(watt);
    }

    /** The short name of a family of devices as it stands beside a symbol: gG, B, type F. */
    static String family(Words words, String family) {
        return family.isEmpty() ? "" : words.pattern("scene.family." + family).orElse(family);
    }
}
