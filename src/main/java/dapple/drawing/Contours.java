package dapple.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Outlines of where a table of amounts reaches a level: each square of the table is cut by straight lines between
 * points on its sides, linear between two neighbours, and the pieces are joined to closed lines. Around the table lies
 * nothing, so that every outline is closed.
 */
public final class Contours {
    /** By row, then by column, with nothing around them. */
    private final double[][] around;

    private final int rows;
    private final int columns;

    /** Amounts by row, then by column. */
    public Contours(double[][] amounts) {
        this.rows = amounts.length;
        this.columns = amounts[0].length;
        this.around = new double[rows + 2][columns + 2];
        Arrays.stream(around).forEach(row -> Arrays.fill(row, Double.NEGATIVE_INFINITY));
        for (int row = 0; row < rows; row++) {
            System.arraycopy(amounts[row], 0, around[row + 1], 1, columns);
        }
    }

    /** A point of an outline, in columns and rows of the table. */
    public record Point(double column, double row) {}

    private record Piece(Point from, Point to) {}

    /** Closed lines, each with what reaches the level on one side. */
    public List<List<Point>> at(double level) {
        Map<Point, List<Point>> next = new HashMap<>();
        for (int row = -1; row < rows; row++) {
            for (int column = -1; column < columns; column++) {
                if (isCrossed(column, row, level)) {
                    for (Piece piece : pieces(column, row, level)) {
                        next.computeIfAbsent(piece.from(), unused -> new ArrayList<>())
                                .add(piece.to());
                    }
                }
            }
        }
        return joined(next);
    }

    /**
     * Where the level is crossed inside the table: the outlines without what runs along its border, open where they meet
     * it.
     */
    public List<List<Point>> linesAt(double level) {
        return at(level).stream()
                .flatMap(outline -> insideParts(outline).stream())
                .toList();
    }

    private List<List<Point>> insideParts(List<Point> outline) {
        int start = 0;
        while (start < outline.size() && !isAlongBorder(outline, start)) {
            start++;
        }
        if (start == outline.size()) {
            List<Point> closed = new ArrayList<>(outline);
            closed.add(outline.get(0));
            return List.of(closed);
        }
        List<List<Point>> parts = new ArrayList<>();
        List<Point> part = new ArrayList<>();
        for (int step = 1; step <= outline.size(); step++) {
            int at = (start + step) % outline.size();
            part.add(outline.get(at));
            if (isAlongBorder(outline, at)) {
                parts.add(part);
                part = new ArrayList<>();
            }
        }
        return parts.stream().filter(found -> found.size() > 1).toList();
    }

    /** Whether the piece from a point of an outline to the next runs along the border. */
    private boolean isAlongBorder(List<Point> outline, int index) {
        Point one = outline.get(index);
        Point other = outline.get((index + 1) % outline.size());
        double lastColumn = columns - 1;
        double lastRow = rows - 1;
        return (one.column() == other.column() && (one.column() == 0 || one.column() == lastColumn))
                || (one.row() == other.row() && (one.row() == 0 || one.row() == lastRow));
    }

    private static List<List<Point>> joined(Map<Point, List<Point>> next) {
        List<List<Point>> lines = new ArrayList<>();
        List<Point> starts = next.keySet().stream()
                .sorted((one, other) -> one.row() == other.row()
                        ? Double.compare(one.column(), other.column())
                        : Double.compare(one.row(), other.row()))
                .toList();
        for (Point start : starts) {
            List<Point> line = new ArrayList<>();
            List<Point> ways = next.getOrDefault(start, List.of());
            while (!ways.isEmpty()) {
                Point reached = ways.remove(0);
                line.add(reached);
                ways = next.getOrDefault(reached, List.of());
            }
            if (line.size() > 2) {
                lines.add(line);
            }
        }
        return lines;
    }

    /** The pieces in the square between a place of the table and its neighbours, the higher side on the left. */
    private List<Piece> pieces(int column, int row, double level) {
        double[] corners = {
            amount(column, row), amount(column + 1, row), amount(column + 1, row + 1), amount(column, row + 1)
        };
        double[][] places = {{column, row}, {column + 1, row}, {column + 1, row + 1}, {column, row + 1}};
        List<Point> entries = new ArrayList<>();
        List<Point> exits = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            int end = (side + 1) % 4;
            boolean fromHigh = corners[side] >= level;
            if (fromHigh != corners[end] >= level) {
                Point crossing = between(places[side], corners[side], places[end], corners[end], level);
                (fromHigh ? exits : entries).add(crossing);
            }
        }
        List<Piece> pieces = new ArrayList<>();
        for (int index = 0; index < exits.size(); index++) {
            if (!exits.get(index).equals(entries.get(index))) {
                pieces.add(new Piece(exits.get(index), entries.get(index)));
            }
        }
        return pieces;
    }

    /** Asked of every square, of which few are: it makes no objects. */
    private boolean isCrossed(int column, int row, double level) {
        double[] low = around[row + 1];
        double[] high = around[row + 2];
        boolean isHigh = low[column + 1] >= level;
        return isHigh != low[column + 2] >= level
                || isHigh != high[column + 1] >= level
                || isHigh != high[column + 2] >= level;
    }

    private double amount(int column, int row) {
        return around[row + 1][column + 1];
    }

    /** Reckoned from the lower side, so that both squares of a side find the same. */
    private Point between(double[] one, double atOne, double[] other, double atOther, double level) {
        if (atOne > atOther) {
            return between(other, atOther, one, atOne, level);
        }
        double share = atOne == Double.NEGATIVE_INFINITY ? 1 : (level - atOne) / (atOther - atOne);
        return new Point(one[0] + share * (other[0] - one[0]), one[1] + share * (other[1] - one[1]));
    }
}
