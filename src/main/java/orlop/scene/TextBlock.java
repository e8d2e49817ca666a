package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;

/** A few lines of text that stand together. Immutable. */
record TextBlock(List<Line> lines, double sizeMm) {
    /** Size of the font of all common texts: its capitals are 1.82 mm high (ISO 3098 asks for 1.8 at least). */
    static final double SIZE_MM = 2.5;

    /** Letters of a line that looks lost at the end of a paragraph. */
    private static final int SHORT = 3;

    private static final double PITCH_EM = 1.4;
    private static final double ABOVE_EM = 0.08;
    private static final double BELOW_EM = 0.22;
    private static final double UNDER_EM = 0.17;
    private static final double LINE_EM = 0.08;
    private static final TextMeasure MEASURE = TextMeasure.bundled();

    TextBlock {
        lines = List.copyOf(lines);
    }

    /** A piece of a line in one weight and ink, underlined or not. */
    record Run(String text, Weight weight, Ink ink, boolean underlined) {
        Run(String text, Weight weight, Ink ink) {
            this(text, weight, ink, false);
        }

        double width(double sizeMm) {
            return MEASURE.widthMm(text, sizeMm, weight);
        }
    }

    /** Runs that follow one another with two blanks between. */
    record Line(List<Run> runs) {
        Line {
            runs = List.copyOf(runs);
        }

        static Line of(String text, Weight weight, Ink ink) {
            return new Line(List.of(new Run(text, weight, ink)));
        }

        double width(double sizeMm) {
            double w = gap(sizeMm) * (runs.size() - 1);
            for (Run r : runs) {
                w += r.width(sizeMm);
            }
            return w;
        }

        static double gap(double sizeMm) {
            return MEASURE.widthMm("  ", sizeMm, Weight.REGULAR);
        }
    }

    static TextBlock of(List<Line> lines) {
        return new TextBlock(lines, SIZE_MM);
    }

    double width() {
        double widest = 0;
        for (Line l : lines) {
            widest = Math.max(widest, l.width(sizeMm));
        }
        return widest;
    }

    double height() {
        return sizeMm * ((lines.size() - 1) * PITCH_EM + cap() + ABOVE_EM + BELOW_EM);
    }

    private static double cap() {
        return MEASURE.capHeightEm(Weight.REGULAR);
    }

    /** The marks of the block in a rectangle of its size, its lines set as the side asks. */
    List<Mark> marks(Rect rect, Side side) {
        List<Mark> marks = new ArrayList<>();
        double y = rect.minY() + sizeMm * (ABOVE_EM + cap());
        for (Line l : lines) {
            double width = l.width(sizeMm);
            double x = switch (side) {
                case RIGHT -> rect.minX();
                case LEFT -> rect.maxX() - width;
                case ABOVE, BELOW -> rect.centreX() - width / 2;
            };
            for (Run r : l.runs) {
                double w = r.width(sizeMm);
                marks.add(new Mark.Text(x, y, Mark.Anchor.START, sizeMm, r.weight, r.ink, r.text, w));
                if (r.underlined) {
                    double under = y + UNDER_EM * sizeMm;
                    marks.add(Mark.Line.solid(LINE_EM * sizeMm, r.ink, new Point(x, under), new Point(x + w, under)));
                }
                x += w + Line.gap(sizeMm);
            }
            y += sizeMm * PITCH_EM;
        }
        return marks;
    }

    /** All its words, for a person who does not see it. */
    String words() {
        List<String> all = new ArrayList<>();
        for (Line l : lines) {
            all.add(String.join(" ", l.runs.stream().map(Run::text).toList()));
        }
        return String.join("; ", all);
    }

    /**
     * A text broken into lines of at most this width, at blanks if it can; what does not fit into so many lines is cut,
     * with an ellipsis.
     */
    static List<String> wrapped(String text, double widthMm, double sizeMm, Weight weight, int mostLines) {
        List<String> out = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            String rest = paragraph.strip();
            int before = out.size();
            do {
                int cut = fitting(rest, widthMm, sizeMm, weight);
                out.add(rest.substring(0, cut).strip());
                rest = rest.substring(cut).strip();
            } while (!rest.isEmpty());
            if (out.size() - before > 1) {
                accompany(out, widthMm, sizeMm, weight);
            }
        }
        if (out.size() <= mostLines) {
            return out;
        }
        List<String> kept = new ArrayList<>(out.subList(0, mostLines));
        kept.set(mostLines - 1, cut(kept.get(mostLines - 1) + "…", widthMm, sizeMm, weight));
        return kept;
    }

    /** A last line of a few letters gets the word before it for company. */
    private static void accompany(List<String> lines, double widthMm, double sizeMm, Weight weight) {
        int last = lines.size() - 1;
        String above = lines.get(last - 1);
        int blank = above.lastIndexOf(' ');
        String both = above.substring(blank + 1) + " " + lines.get(last);
        if (lines.get(last).length() <= SHORT && blank > 0 && MEASURE.widthMm(both, sizeMm, weight) <= widthMm) {
            lines.set(last - 1, above.substring(0, blank).strip());
            lines.set(last, both);
        }
    }

    /** A text cut to a width, with an ellipsis if anything is lost. */
    static String cut(String text, double widthMm, double sizeMm, Weight weight) {
        if (MEASURE.widthMm(text, sizeMm, weight) <= widthMm) {
            return text;
        }
        int n = text.length();
        while (n > 1 && MEASURE.widthMm(text.substring(0, n) + "…", sizeMm, weight) > widthMm) {
            n -= Character.isLowSurrogate(text.charAt(n - 1)) ? 2 : 1;
        }
        return text.substring(0, Math.max(0, n)).strip() + "…";
    }

    private static int fitting(String text, double widthMm, double sizeMm, Weight weight) {
        if (MEASURE.widthMm(text, sizeMm, weight) <= widthMm) {
            return text.length();
        }
        int n = 1;
        int blank = 0;
        while (n < text.length() && MEASURE.widthMm(text.substring(0, n + 1), sizeMm, weight) <= widthMm) {
            if (text.charAt(n) == ' ') {
                blank = n;
            }
            n++;
        }
        if (n < text.length() && text.charAt(n) == ' ') {
            blank = n;
        }
        int cut = blank > 0 ? blank : n;
        return cut < text.length() && Character.isLowSurrogate(text.charAt(cut)) ? cut + 1 : cut;
    }
}
