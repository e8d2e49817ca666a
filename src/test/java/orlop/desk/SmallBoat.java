package orlop.desk;

import java.util.List;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;

/** A battery, an isolator and a lamp on one sheet. */
final class SmallBoat {
    private SmallBoat() {}

    static Drawing drawing() {
        Drawing d = Drawing.empty("Skerry Wren")
                .with(Sheet.of("1", "All of it"))
                .with(Sheet.of("2", "The rest"))
                .with(ElectricalSystem.of("12", Nature.DC, 12))
                .with(ElectricalSystem.of("230", Nature.AC1, 230))
                .with(OperatingCondition.asDrawn("sail", "Under sail"));
        d = put(d, "GB1", Kind.BATTERY, 50, 150);
        d = put(d, "QB1", Kind.ISOLATOR, 50, 100);
        d = put(d, "EA1", Kind.LIGHTING, 150, 150);
        d = run(d, "W1", "GB1.1", "QB1.2", 2);
        return run(d, "W2", "QB1.1", "EA1.1", 6.5);
    }

    static Drawing put(Drawing d, String id, Kind kind, double x, double y) {
        return d.with(Component.of(id, kind, Place.at("1", x, y), List.of("12")));
    }

    static Drawing run(Drawing d, String id, String from, String to, double lengthM) {
        return d.with(Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))
                .withLengthM(lengthM));
    }
}
