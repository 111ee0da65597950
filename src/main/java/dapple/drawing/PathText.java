package dapple.drawing;

import java.util.ArrayList;
import java.util.List;

/** Writes lines as the data of one SVG path: relative, in tenths of a unit, thinned to what can be seen. */
final class PathText {
    /** How far a thinned line may lie off, in units: less than its stroke is wide. */
    private static final double OFF = 0.4;

    private final StringBuilder text = new StringBuilder();

    /** Closed lines as one path. */
    static String closed(List<List<Spot>> lines) {
        PathText path = new PathText();
        lines.forEach(line -> path.write(thinnedRing(line), "z"));
        return path.text.toString();
    }

    /** Open lines as one path. */
    static String open(List<List<Spot>> lines) {
        PathText path = new PathText();
        lines.forEach(line -> path.write(thinned(line), ""));
        return path.text.toString();
    }

    /** A ring is thinned in two halves, since its end is its beginning. */
    private static List<Spot> thinnedRing(List<Spot> ring) {
        int half = ring.size() / 2;
        if (half < 2) {
            return ring;
        }
        List<Spot> back = new ArrayList<>(ring.subList(half, ring.size()));
        back.add(ring.get(0));
        List<Spot> thin = new ArrayList<>(thinned(ring.subList(0, half + 1)));
        List<Spot> rest = thinned(back);
        thin.addAll(rest.subList(1, rest.size() - 1));
        return thin;
    }

    /** By Douglas and Peucker: keeps the point that lies farthest off, as long as it can be seen [douglas1973]. */
    static List<Spot> thinned(List<Spot> line) {
        if (line.size() < 3) {
            return line;
        }
        int farthest = 0;
        double most = OFF;
        for (int index = 1; index < line.size() - 1; index++) {
            double off = line.get(index).distance(line.get(0), line.get(line.size() - 1));
            if (off > most) {
                most = off;
                farthest = index;
            }
        }
        if (farthest == 0) {
            return List.of(line.get(0), line.get(line.size() - 1));
        }
        List<Spot> thin = new ArrayList<>(thinned(line.subList(0, farthest + 1)));
        List<Spot> rest = thinned(line.subList(farthest, line.size()));
        thin.addAll(rest.subList(1, rest.size()));
        return thin;
    }

    private void write(List<Spot> line, String end) {
        long x = tenths(line.get(0).x());
        long y = tenths(line.get(0).y());
        text.append('M').append(number(x)).append(' ').append(number(y)).append('l');
        String between = "";
        for (Spot spot : line.subList(1, line.size())) {
            long nextX = tenths(spot.x());
            long nextY = tenths(spot.y());
            if (nextX != x || nextY != y) {
                text.append(between)
                        .append(number(nextX - x))
                        .append(nextY < y ? "" : " ")
                        .append(number(nextY - y));
                between = " ";
            }
            x = nextX;
            y = nextY;
        }
        text.append(between.isEmpty() ? "0 0" : "").append(end);
    }

    private static long tenths(double number) {
        return Math.round(number * 10);
    }

    private static String number(long tenths) {
        String sign = tenths < 0 ? "-" : "";
        long size = Math.abs(tenths);
        return sign + size / 10 + (size % 10 == 0 ? "" : "." + size % 10);
    }
}
