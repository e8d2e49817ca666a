package orlop.editor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import orlop.desk.Review;
import orlop.desk.SessionState;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Sheet;
import orlop.findings.Finding;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** Where findings are: on which sheet, and where on it. */
final class FindingPlaces {
    private FindingPlaces() {}

    /**
     * A finding, by its place in the list of all.
     *
     * @param number from 1
     * @param label the number that stands on its sheet
     */
    record Numbered(int number, Finding finding, int label) {
        Numbered(int number, Finding finding) {
            this(number, finding, number);
        }
    }

    /** The findings that nobody lives with, of the sheet that is shown, in the order of the numbers on it. */
    static List<Numbered> ofSheet(SessionState s, Scene scene) {
        List<Numbered> all = new ArrayList<>();
        for (Numbered n : ofSheet(s)) {
            all.add(new Numbered(
                    n.number(), n.finding(), scene.findingNumber(n.number()).orElse(n.number())));
        }
        all.sort(Comparator.comparingInt(Numbered::label));
        return all;
    }

    /** The findings that nobody lives with, of the sheet that is shown, the gravest first. */
    static List<Numbered> ofSheet(SessionState s) {
        List<Numbered> all = new ArrayList<>();
        for (Numbered n : all(s)) {
            String sheet = sheet(s.drawing(), n.finding());
            if (sheet.equals(s.sheet()) || sheet.isEmpty()) {
                all.add(n);
            }
        }
        return all;
    }

    /** Those of the sheet that is shown with which somebody lives, in the order of the numbers on it. */
    static List<Numbered> acceptedOfSheet(SessionState s, Scene scene) {
        return withAccepted(s).stream()
                .filter(n -> n.finding().accepted())
                .filter(n -> {
                    String sheet = sheet(s.drawing(), n.finding());
                    return sheet.equals(s.sheet()) || sheet.isEmpty();
                })
                .map(n -> new Numbered(
                        n.number(), n.finding(), scene.findingNumber(n.number()).orElse(n.number())))
                .sorted(Comparator.comparingInt(Numbered::label))
                .toList();
    }

    /** Whether the note of a finding stands in the margin: only the gravest have the room, see {@link Notes#MOST}. */
    @SuppressWarnings("ReferenceEquality") // two findings may say the same of two places
    static boolean noted(SessionState s, Scene scene, Finding f) {
        List<Numbered> here = f.accepted() ? acceptedOfSheet(s, scene) : ofSheet(s);
        return here.stream().limit(Notes.MOST).anyMatch(n -> n.finding() == f);
    }

    /** All findings that nobody lives with. */
    static List<Numbered> all(SessionState s) {
        return withAccepted(s).stream().filter(n -> !n.finding().accepted()).toList();
    }

    /** All findings, also those with which somebody lives. */
    static List<Numbered> withAccepted(SessionState s) {
        List<Numbered> all = new ArrayList<>();
        Review r = s.review();
        for (int i = 0; r != null && i < r.findings().size(); i++) {
            all.add(new Numbered(i + 1, r.findings().get(i)));
        }
        return all;
    }

    /**
     * Id of the sheet of the item of which a finding speaks; the first sheet's if it speaks of the whole drawing, "" if
     * of nothing that is drawn.
     */
    static String sheet(Drawing d, Finding f) {
        String item = f.place().item();
        if (item.isEmpty()) {
            return d.sheets().stream().findFirst().map(Sheet::id).orElse("");
        }
        Cable w = d.cables().get(item);
        Component c = d.components().get(w == null ? item : (f.place().atFrom() ? w.from() : w.to()).component());
        return c == null ? "" : c.place().sheet();
    }

    /** Where the marker of a finding stands, or else the item of which it speaks. */
    static Optional<Rect> bounds(SessionState s, Scene scene, Finding f) {
        Review r = s.review();
        int number = r == null ? 0 : index(r.findings(), f) + 1;
        String subject = Integer.toString(number);
        List<SceneItem> marks = scene.items().stream()
                .filter(i -> (i.role() == Role.FINDING || i.role() == Role.PROPOSED)
                        && i.subject().equals(subject))
                .toList();
        if (!marks.isEmpty()) {
            return marks.stream().map(SceneItem::bounds).reduce(Rect::union);
        }
        return scene.items().stream()
                .filter(i -> i.subject().equals(f.place().item())
                        && (i.role() == Role.COMPONENT || i.role() == Role.BAR || i.role() == Role.CABLE))
                .map(SceneItem::bounds)
                .findFirst();
    }

    @SuppressWarnings("ReferenceEquality") // two findings may say the same of two places
    private static int index(List<Finding> all, Finding f) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) == f) {
                return i;
            }
        }
        return -1;
    }
}
