package orlop.scene;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.layout.TextMeasure.Weight;

/** One stroke of the pen. Sizes are in millimetres on the sheet. */
public sealed interface Mark permits Mark.Line, Mark.Area, Mark.Disc, Mark.Box, Mark.SymbolAt, Mark.Text {

    /** How a line is broken. */
    enum Dash {
        SOLID,
        /** Strokes of 1.2 mm, gaps of 0.8 mm: what is not there. */
        DASHED
    }

    /** Which part of a text stands at its point. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** One case for each mark. */
    interface Cases<R> {
        R line(Line m);

        R area(Area m);

        R disc(Disc m);

        R box(Box m);

        R symbol(SymbolAt m);

        R text(Text m);
    }

    /** Calls the case of this mark: forgetting one does not compile. */
    <R> R match(Cases<R> cases);

    /**
     * An open line, its corners mitred and its ends cut square.
     *
     * @param points at least two
     * @param widthMm above 0
     * @param roundEnds whether the ends are half discs instead
     */
    record Line(List<Point> points, double widthMm, Dash dash, boolean roundEnds, Ink ink) implements Mark {
        public Line {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("a line has two points or more");
            }
        }

        /** A solid line with square ends. */
        public static Line solid(double widthMm, Ink ink, Point... points) {
            return new Line(List.of(points), widthMm, Dash.SOLID, false, ink);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.line(this);
        }
    }

    /**
     * A closed outline.
     *
     * @param points its corners, three or more
     * @param fill null leaves it empty
     * @param stroke null leaves it without an edge
     * @param widthMm of the edge
     */
    record Area(
            List<Point> points,
            @Nullable Ink fill,
            @Nullable Ink stroke,
            double widthMm) implements Mark {
        public Area {
            points = List.copyOf(points);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.area(this);
        }
    }

    /** A disc; null inks leave it empty or without an edge. */
    record Disc(
            double xMm,
            double yMm,
            double radiusMm,
            @Nullable Ink fill,
            @Nullable Ink stroke,
            double widthMm) implements Mark {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.disc(this);
        }
    }

    /** An upright rectangle; null inks leave it empty or without an edge. */
    record Box(Rect rect, @Nullable Ink fill, @Nullable Ink stroke, double widthMm, Dash dash) implements Mark {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.box(this);
        }
    }

    /**
     * A symbol of the library: mirrored (left and right exchanged), then turned clockwise, then scaled, then moved to its
     * point. Its letters and signs that stay upright only move with it.
     *
     * @param name of the symbol in the library
     * @param rotationDegree 0, 90, 180 or 270
     * @param scale 1 is the size of the module of 2.5 mm; its lines are scaled too
     */
    record SymbolAt(String name, double xMm, double yMm, int rotationDegree, boolean mirrored, Ink ink, double scale)
            implements Mark {
        /** A symbol in its own size. */
        public SymbolAt(String name, double xMm, double yMm, int rotationDegree, boolean mirrored, Ink ink) {
            this(name, xMm, yMm, rotationDegree, mirrored, ink, 1);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.symbol(this);
        }
    }

    /**
     * One line of text.
     *
     * @param xMm where its anchor stands
     * @param yMm its base line
     * @param sizeMm size of the font (its em), not the height of a letter
     * @param text not empty
     * @param widthMm how wide it is by the font's own advances, whatever font a viewer has
     */
    record Text(
            double xMm, double yMm, Anchor anchor, double sizeMm, Weight weight, Ink ink, String text, double widthMm)
            implements Mark {
        /** Where it starts. */
        public double leftMm() {
            return switch (anchor) {
                case START -> xMm;
                case MIDDLE -> xMm - widthMm / 2;
                case END -> xMm - widthMm;
            };
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.text(this);
        }
    }
}
