package dapple.light.field;

import dapple.light.geometry.Shadow;
import dapple.light.geometry.Vec;

/**
 * What can be seen of one chord from a place: the pieces between the edges of shadows, of filters and of the receiver's
 * plane, and what each piece passes.
 */
final class Sight {
    /** More than any solid or filter has edges. */
    private static final int EDGES = 32;

    private static final int START = 0;
    private static final int END = 1;
    private static final int CLIPPED_START = 2;
    private static final int CLIPPED_END = 3;
    private static final int OF_BEAM = -1_000_000;

    private final Paths paths;
    private final Cuts cuts;
    private final Shadow shadow = new Shadow();
    private final Part crossed = new Part();
    private final double[] screenLow;
    private final double[] screenHigh;
    private final Screen[] active;
    private int activeCount;

    Sight(Paths paths) {
        this.paths = paths;
        this.cuts = new Cuts(paths.shades.length, paths.partial.length, Reflector.MOST_EDGES);
        this.screenLow = new double[paths.partial.length];
        this.screenHigh = new double[paths.partial.length];
        this.active = new Screen[paths.partial.length];
    }

    /** Looks at a chord of which the receiver's plane cuts off nothing. */
    void look(Chord chord) {
        cuts.begin(0, START, 1, END);
        cut(chord);
    }

    /** Looks at what lies in front of a plane: n · (P − R) is linear along the chord. */
    void look(Chord chord, Perpendicular axis, Vec facing) {
        double slope = chord.length() * facing.dot(chord.along());
        double start = axis.distance() * axis.towards(facing) + axis.along() * facing.dot(chord.along()) - slope / 2;
        double low = start < 0 ? (slope > 0 ? -start / slope : 1) : 0;
        double high = start + slope < 0 ? (slope < 0 ? -start / slope : 0) : 1;
        cuts.begin(low, low > 0 ? CLIPPED_START : START, high, high < 1 ? CLIPPED_END : END);
        cut(chord);
    }

    private void cut(Chord chord) {
        activeCount = 0;
        if (paths.isEven() || !(cuts.high() > cuts.low())) {
            return;
        }
        Vec a = chord.at(0);
        Vec b = chord.at(1);
        for (int index = 0; index < paths.shadeCount; index++) {
            if (paths.shades[index].shadow(a, b, shadow)) {
                cuts.hide(shadow, EDGES * (index + 1));
            }
        }
        for (int index = 0; index < paths.partialCount; index++) {
            boolean any = paths.partial[index].crossing(paths.place, a, b, crossed);
            screenLow[index] = any ? crossed.low() : 2;
            screenHigh[index] = any ? crossed.high() : 2;
            cuts.add(screenLow[index], -EDGES * (index + 1) - crossed.lowEdge());
            cuts.add(screenHigh[index], -EDGES * (index + 1) - crossed.highEdge());
        }
    }

    /**
     * Cuts where the edges of a face's beam lie: since all of the face has the place at the same height before it, they
     * are circles around the foot of the perpendicular on the face.
     */
    void cutEdges(Chord chord, Perpendicular axis, ChordBeam beam) {
        double start = axis.along() - chord.length() / 2;
        double asideSquare = axis.distance() * axis.distance() - beam.height() * beam.height();
        for (int edge = 0; edge < beam.edgeTangents().size(); edge++) {
            double radius = beam.height() * beam.edgeTangents().get(edge);
            double halfSquare = radius * radius - asideSquare;
            if (halfSquare > 0) {
                double half = Math.sqrt(halfSquare);
                cuts.add((-half - start) / chord.length(), OF_BEAM - 2 * edge);
                cuts.add((half - start) / chord.length(), OF_BEAM - 2 * edge - 1);
            }
        }
    }

    /** The number of pieces, seen or not. */
    int pieces() {
        return cuts.count() - 1;
    }

    /** Where a piece begins, as a share of the chord; it ends where the next begins. */
    double at(int piece) {
        return cuts.at(piece);
    }

    boolean isSeen(int piece) {
        double from = cuts.at(piece);
        double to = cuts.at(piece + 1);
        return to > from && !cuts.isHidden((from + to) / 2);
    }

    /**
     * Which edges bound what is seen, and which filters each piece crosses, as a number: between two chords of a source
     * with the same pattern the light changes smoothly.
     */
    long pattern() {
        long pattern = 0;
        for (int piece = 0; piece < pieces(); piece++) {
            if (isSeen(piece)) {
                pattern = 31 * (31 * pattern + cuts.edge(piece)) + cuts.edge(piece + 1) + 1;
                pattern = 31 * pattern + crossed(piece);
            }
        }
        return pattern;
    }

    private long crossed(int piece) {
        long crossed = 0;
        for (int index = 0; index < paths.partialCount; index++) {
            crossed = 2 * crossed + (isCrossed(index, piece) ? 1 : 0);
        }
        return crossed;
    }

    private boolean isCrossed(int screen, int piece) {
        double middle = (cuts.at(piece) + cuts.at(piece + 1)) / 2;
        return middle > screenLow[screen] && middle < screenHigh[screen];
    }

    /** Turns to one piece: what passes there at every angle alike. */
    double pass(int piece) {
        activeCount = 0;
        double share = 1;
        for (int index = 0; index < paths.partialCount; index++) {
            if (isCrossed(index, piece)) {
                if (paths.partial[index].isAlikeAtEveryAngle()) {
                    share *= paths.partial[index].share(paths.quantity);
                } else {
                    active[activeCount++] = paths.partial[index];
                }
            }
        }
        return share;
    }

    /** Whether the piece passes the same at every angle. */
    boolean isEven() {
        return activeCount == 0 && paths.slantedCount == 0;
    }

    /** What the piece passes in a direction, beside what it passes at every angle alike. */
    double pass(double x, double y, double z) {
        double share = 1;
        for (int index = 0; index < paths.slantedCount; index++) {
            share *= paths.slanted[index].transmittance(paths.quantity, x, y, z);
        }
        for (int index = 0; index < activeCount; index++) {
            share *= active[index].transmittance(paths.quantity, x, y, z);
        }
        return share;
    }
}
