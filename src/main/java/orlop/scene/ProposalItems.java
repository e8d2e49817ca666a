package orlop.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.drawing.Words;
import orlop.findings.Finding;
import orlop.layout.Label;
import orlop.layout.Rect;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/** The markers of findings at their places, and the devices that they propose, dashed, with rating and question mark. */
final class ProposalItems {
    static final String SYMBOL = "proposed-fuse";
    private static final double LEADER_MM = 0.18;

    private ProposalItems() {}

    /** {@code 200 A gG ?}. */
    static TextBlock rating(SheetView view, FoundPlace f) {
        return TextBlock.of(List.of(Line.of(ratingText(view, f), Weight.BOLD, Ink.DANGER)));
    }

    private static String ratingText(SheetView view, FoundPlace f) {
        Finding.Proposed p = f.finding().proposed();
        if (p == null) {
            throw new IllegalArgumentException("finding " + f.number() + " proposes nothing");
        }
        Quantity rating = new Quantity(p.ratingA(), Unit.AMPERE);
        String family = ParticularsText.family(view.words(), p.family());
        return view.words()
                .text(Message.of("scene.proposed.rating", rating, family))
                .replace("  ", " ");
    }

    static void draw(ItemMaker items, SheetView view, List<FoundPlace> found, SheetComposer.Composed composed) {
        for (FoundPlace f : found) {
            FoundPlace.Proposal p = f.proposal();
            if (p != null) {
                proposal(items, view, f, p, composed);
            }
        }
        for (FoundPlace f : found) {
            marker(items, view.words(), f, composed);
        }
    }

    private static void proposal(
            ItemMaker items, SheetView view, FoundPlace f, FoundPlace.Proposal p, SheetComposer.Composed composed) {
        List<Mark> marks = new ArrayList<>();
        int turn = p.standing() ? 0 : 90;
        marks.add(new Mark.SymbolAt(SYMBOL, p.at().xMm(), p.at().yMm(), turn, false, Ink.DANGER));
        Rect bounds = f.target();
        SheetComposer.PutLabel label = composed.label(MadeLabels.Kind.PROPOSAL, f.key());
        if (label != null && label.block() != null) {
            Label.Put put = label.put();
            TextBlock block = label.block();
            SheetItems.leader(marks, put, LEADER_MM, Ink.DANGER);
            marks.addAll(block.marks(put.rect(), put.side()));
            bounds = bounds.union(put.rect());
        }
        String title = view.words().text(Message.of("scene.proposed", p.cable(), ratingText(view, f)));
        items.add(Role.PROPOSED, Integer.toString(f.index()), title, bounds, marks, data("cable", p.cable(), f));
    }

    private static void marker(ItemMaker items, Words words, FoundPlace f, SheetComposer.Composed composed) {
        SheetComposer.PutLabel label = composed.label(MadeLabels.Kind.MARKER, f.key());
        if (label == null) {
            return;
        }
        Label.Put put = label.put();
        Finding finding = f.finding();
        String number = Integer.toString(f.number());
        List<Mark> marks = new ArrayList<>();
        SheetItems.leader(marks, put, LEADER_MM, Marker.ink(finding.severity()));
        Rect r = put.rect();
        marks.addAll(Marker.marks(finding.severity(), r.centreX(), r.centreY(), number, finding.accepted()));
        String kind = words.text("scene.severity." + finding.severity().word());
        String title = words.text(Message.of("scene.finding", number, kind, finding.title()));
        items.add(
                Role.FINDING,
                Integer.toString(f.index()),
                title,
                r,
                marks,
                data("item", finding.place().item(), f));
    }

    /** {@code number} is the one that stands on the sheet. */
    private static Map<String, String> data(String key, String item, FoundPlace f) {
        Map<String, String> data = new LinkedHashMap<>();
        data.put("number", Integer.toString(f.number()));
        data.put("rule", f.finding().rule());
        data.put(key, item);
        return data;
    }
}
