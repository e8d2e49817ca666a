package orlop.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Every kind of component: its word in the file, its group, the letter code of its tags (IEC 81346-2), its terminals
 * and its particulars with defaults.
 */
public enum Kind implements Named {
    BATTERY(Group.SOURCES, "GB", Terminals.TWO, Source.Battery::defaults),
    SHORE_PEDESTAL(Group.SOURCES, "GA", Terminals.ONE, Source.ShorePedestal::defaults),
    SHORE_INLET(Group.SOURCES, "XD", Terminals.TWO, Source.ShoreInlet::defaults),
    GENERATOR(Group.SOURCES, "GA", Terminals.ONE, Source.Generator::defaults),
    ALTERNATOR(Group.SOURCES, "GA", Terminals.ONE, Source.Alternator::defaults),
    PV_ARRAY(Group.SOURCES, "GC", Terminals.ONE, Source.PvArray::defaults),
    TURBINE(Group.SOURCES, "GA", Terminals.ONE, Source.Turbine::defaults),
    SUPPLY(Group.SOURCES, "G", Terminals.TWO, Source.Supply::defaults),
    CURRENT_SUPPLY(Group.SOURCES, "G", Terminals.TWO, Source.CurrentSupply::defaults),
    LIMITED_SUPPLY(Group.SOURCES, "G", Terminals.TWO, Source.LimitedSupply::defaults),
    POWER_SUPPLY(Group.SOURCES, "G", Terminals.TWO, Source.PowerSupply::defaults),

    INVERTER(Group.CONVERSION, "TB", Terminals.TWO, Conversion.Inverter::defaults),
    INVERTER_CHARGER(Group.CONVERSION, "TB", Terminals.THREE, Conversion.InverterCharger::defaults),
    CHARGER(Group.CONVERSION, "TB", Terminals.TWO, Conversion.Charger::defaults),
    DC_DC_CONVERTER(Group.CONVERSION, "TB", Terminals.TWO, Conversion.DcDcConverter::defaults),
    CHARGE_CONTROLLER(Group.CONVERSION, "TB", Terminals.TWO, Conversion.ChargeController::defaults),
    TRANSFORMER(Group.CONVERSION, "TA", Terminals.TWO, Conversion.Transformer::defaults),
    FREQUENCY_CONVERTER(Group.CONVERSION, "TB", Terminals.TWO, Conversion.FrequencyConverter::defaults),
    CONVERTER(Group.CONVERSION, "T", Terminals.TWO, Conversion.PlainConverter::defaults),

    BUSBAR(Group.DISTRIBUTION, "WC", Terminals.ANY, Distribution.Busbar::defaults),
    DISTRIBUTION_BOARD(Group.DISTRIBUTION, "UC", Terminals.ANY, Distribution.DistributionBoard::defaults),
    JUNCTION(Group.DISTRIBUTION, "XD", Terminals.ANY, Distribution.Junction::defaults),
    TERMINAL(Group.DISTRIBUTION, "XD", Terminals.TWO, Distribution.Terminal::defaults),
    SHEET_LINK(Group.DISTRIBUTION, "XL", Terminals.ONE, Distribution.SheetLink::defaults),
    IMPEDANCE(Group.DISTRIBUTION, "R", Terminals.TWO, Distribution.Impedance::defaults),

    FUSE(Group.PROTECTION, "FC", Terminals.TWO, Protection.Fuse::defaults),
    CIRCUIT_BREAKER(Group.PROTECTION, "FC", Terminals.TWO, Protection.CircuitBreaker::defaults),
    RESIDUAL_CURRENT_DEVICE(Group.PROTECTION, "FB", Terminals.TWO, Protection.ResidualCurrentDevice::defaults),
    SURGE_ARRESTER(Group.PROTECTION, "FA", Terminals.ONE, Protection.SurgeArrester::defaults),
    GALVANIC_ISOLATOR(Group.PROTECTION, "FE", Terminals.TWO, Protection.GalvanicIsolator::defaults),
    INSULATION_MONITOR(Group.PROTECTION, "PG", Terminals.ONE, Protection.InsulationMonitor::defaults),

    ISOLATOR(Group.SWITCHING, "QB", Terminals.TWO, Switching.Isolator::defaults),
    CHANGEOVER_SWITCH(Group.SWITCHING, "QC", Terminals.THREE, Switching.Changeover::defaults),
    CONTACTOR(Group.SWITCHING, "QA", Terminals.TWO, Switching.Contactor::defaults),
    DIODE_ISOLATOR(Group.SWITCHING, "RA", Terminals.THREE, Switching.DiodeIsolator::defaults),
    COMBINING_RELAY(Group.SWITCHING, "QA", Terminals.TWO, Switching.CombiningRelay::defaults),
    DIODE(Group.SWITCHING, "RA", Terminals.TWO, Switching.Diode::defaults),

    LOAD(Group.LOADS, "E", Terminals.TWO, Consumer.PlainLoad::defaults),
    MOTOR(Group.LOADS, "MA", Terminals.ONE, Consumer.Motor::defaults),
    HEATER(Group.LOADS, "EB", Terminals.ONE, Consumer.Heater::defaults),
    LIGHTING(Group.LOADS, "EA", Terminals.ONE, Consumer.Lighting::defaults),
    ELECTRONICS(Group.LOADS, "P", Terminals.ONE, Consumer.Electronics::defaults),
    SOCKET_OUTLET(Group.LOADS, "XD", Terminals.ONE, Consumer.SocketOutlet::defaults),
    SHORT_TIME_MACHINE(Group.LOADS, "MA", Terminals.ONE, Consumer.ShortTimeMachine::defaults),

    HULL(Group.EARTH_AND_METERS, "XE", Terminals.ANY, Earth.Hull::defaults),
    HULL_BOND(Group.EARTH_AND_METERS, "XE", Terminals.TWO, Earth.HullBond::defaults),
    ENGINE_BLOCK(Group.EARTH_AND_METERS, "XE", Terminals.ANY, Earth.EngineBlock::defaults),
    PROTECTIVE_EARTH_BAR(Group.EARTH_AND_METERS, "WE", Terminals.ANY, Earth.ProtectiveEarthBar::defaults),
    NEUTRAL_EARTH_LINK(Group.EARTH_AND_METERS, "XE", Terminals.TWO, Earth.NeutralEarthLink::defaults),
    SHUNT(Group.EARTH_AND_METERS, "BC", Terminals.TWO, Earth.Shunt::defaults),
    METER(Group.EARTH_AND_METERS, "PG", Terminals.ONE, Earth.Meter::defaults);

    private static final Map<String, Kind> BY_WORD =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Kind::word, k -> k));

    private final Group group;
    private final String letters;
    private final Terminals terminals;

    @SuppressWarnings("ImmutableEnumChecker") // a reference to a static method: it has no state
    private final Supplier<? extends Particulars> defaults;

    Kind(Group group, String letters, Terminals terminals, Supplier<? extends Particulars> defaults) {
        this.group = group;
        this.letters = letters;
        this.terminals = terminals;
        this.defaults = defaults;
    }

    /** The kind of this word of the file, if there is one. */
    public static Optional<Kind> ofWord(String word) {
        return Optional.ofNullable(BY_WORD.get(word));
    }

    /** The group of the locker in which it lies. */
    public Group group() {
        return group;
    }

    /** The letter code of its tags, IEC 81346-2 (from memory where the subclass is concerned). */
    public String letters() {
        return letters;
    }

    /** The terminals of the kind itself; {@link Particulars#terminals()} may add to them. */
    public Terminals terminals() {
        return terminals;
    }

    /** Whether all its terminals are one piece of metal, and cables end anywhere on it: bars, boards, joints, the hull. */
    public boolean isOnePiece() {
        return terminals == Terminals.ANY;
    }

    /** Fresh particulars with every default. */
    public Particulars defaults() {
        return defaults.get();
    }

    /** Whether it spans two systems (terminal 1 and 2 in different ones) and so has {@code systems} in the file. */
    public boolean spansSystems() {
        return group == Group.CONVERSION;
    }

    /** The text key of the trade's term for it. */
    public Message term() {
        return Message.of("drawing.kind." + word());
    }

    /** Which terminals a kind has. */
    public enum Terminals {
        ONE,
        TWO,
        THREE,
        /** Any name is a terminal: what {@link Kind#isOnePiece is one piece}. */
        ANY;

        /** The fixed names in order; none where any name will do. */
        public List<String> names() {
            return switch (this) {
                case ONE -> List.of("1");
                case TWO -> List.of("1", "2");
                case THREE -> List.of("1", "2", "3");
                case ANY -> List.of();
            };
        }
    }
}
