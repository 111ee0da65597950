package dapple.light.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Outlines of where a table of amounts reaches a level: each square of the table is cut by straight lines between
 * points on its sides, linear between two neighbours, and the pieces are joined to closed lines. Around the table lies
 * nothing, so that every line is closed.
 */
final class Contours {
    private final double[][] amounts;

    /** Amounts by row, then by column. */
    Contours(double[][] amounts) {
        this.amounts = amounts;
    }

    /** A point of an outline, in columns and rows of the table. */
    record Point(double column, double row) {}

    private record Piece(Point from, Point to) {}

    /** Closed lines, each with what reaches the level on one side. */
    List<List<Point>> at(double level) {
        Map<Point, List<Point>> next = new HashMap<>();
        for (int row = -1; row < amounts.length; row++) {
            for (int column = -1; column < amounts[0].length; column++) {
                for (Piece piece : pieces(column, row, level)) {
                    next.computeIfAbsent(piece.from(), unused -> new ArrayList<>())
                            .add(piece.to());
                }
            }
        }
        return joined(next);
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

    private double amount(int column, int row) {
        boolean isInside = row >= 0 && row < amounts.length && column >= 0 && column < amounts[0].length;
        return isInside ? amounts[row][column] : Double.NEGATIVE_INFINITY;
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
