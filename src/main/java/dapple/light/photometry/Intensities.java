package dapple.light.photometry;

import dapple.light.quantity.Check;
import dapple.light.source.Beam;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Luminous intensity by direction, type C: θ from straight down, φ around; between the angles of the table straight in both,
 * 0 beyond the last θ. What a table leaves out by symmetry is folded back: one φ stands for all, 0 to 90° for four quarters,
 * 0 to 180° for two halves.
 */
public final class Intensities {
    private static final double WHOLE_TURN = 360;
    private static final double HALF_TURN = 180;

    private final double[] thetaDegrees;
    private final double[] phiDegrees;
    private final double[][] candela;

    /**
     * A table.
     *
     * @param thetaDegrees two or more, ascending from 0 or 90 to 90 or 180
     * @param phiDegrees ascending from 0 to 0, 90, 180 or 360
     * @param candela for each φ one for each θ, 0 to 1e9
     * @throws IllegalArgumentException if the table is not like this
     */
    public Intensities(double[] thetaDegrees, double[] phiDegrees, double[][] candela) {
        checkAscending("θ", thetaDegrees);
        checkAscending("φ", phiDegrees);
        if (thetaDegrees.length < 2 || !isEdge(thetaDegrees[0], 0, 90) || !isEdge(last(thetaDegrees), 90, 180)) {
            throw new IllegalArgumentException("θ must be two or more, from 0 or 90 to 90 or 180");
        }
        if (phiDegrees.length < 1 || phiDegrees[0] != 0 || !isEdge(last(phiDegrees), 0, 90, 180, 360)) {
            throw new IllegalArgumentException("φ must go from 0 to 0, 90, 180 or 360");
        }
        if (candela.length != phiDegrees.length
                || Arrays.stream(candela).anyMatch(row -> row.length != thetaDegrees.length)) {
            throw new IllegalArgumentException("there must be an intensity for each pair of angles");
        }
        Arrays.stream(candela)
                .flatMapToDouble(Arrays::stream)
                .forEach(found -> Check.within("intensity", found, 0, 1e9, "cd"));
        this.thetaDegrees = thetaDegrees.clone();
        this.phiDegrees = phiDegrees.clone();
        this.candela = Arrays.stream(candela).map(double[]::clone).toArray(double[][]::new);
    }

    private static void checkAscending(String what, double[] angles) {
        for (int index = 1; index < angles.length; index++) {
            if (!(angles[index] > angles[index - 1])) {
                throw new IllegalArgumentException(what + " must ascend, " + angles[index] + " does not");
            }
        }
    }

    private static boolean isEdge(double found, double... allowed) {
        return Arrays.stream(allowed).anyMatch(edge -> edge == found);
    }

    private static double last(double[] angles) {
        return angles[angles.length - 1];
    }

    /** Whether one φ stands for all. */
    public boolean isRound() {
        return phiDegrees.length == 1;
    }

    /**
     * Intensity in a direction, cd.
     *
     * @param theta from straight down, 0 to 180°
     * @param phi around, any angle, °
     */
    public double candela(double theta, double phi) {
        Check.within("θ", theta, 0, HALF_TURN, "°");
        Check.within("φ", phi, -1e6, 1e6, "°");
        double folded = folded(phi);
        int above = Math.max(1, above(phiDegrees, folded));
        if (isRound() || above == phiDegrees.length) {
            return ofRow(phiDegrees.length - 1, theta);
        }
        double share = (folded - phiDegrees[above - 1]) / (phiDegrees[above] - phiDegrees[above - 1]);
        return (1 - share) * ofRow(above - 1, theta) + share * ofRow(above, theta);
    }

    private double folded(double phi) {
        double turned = ((phi % WHOLE_TURN) + WHOLE_TURN) % WHOLE_TURN;
        if (last(phiDegrees) == WHOLE_TURN) {
            return turned;
        }
        double half = turned > HALF_TURN ? WHOLE_TURN - turned : turned;
        return last(phiDegrees) == HALF_TURN ? half : Math.min(half, HALF_TURN - half);
    }

    /** The index of the first angle above one; their number if there is none. */
    private static int above(double[] angles, double wanted) {
        return (int) Arrays.stream(angles).takeWhile(angle -> angle <= wanted).count();
    }

    private double ofRow(int row, double theta) {
        if (theta < thetaDegrees[0] || theta > last(thetaDegrees)) {
            return 0;
        }
        int above = Math.min(thetaDegrees.length - 1, above(thetaDegrees, theta));
        double share = (theta - thetaDegrees[above - 1]) / (thetaDegrees[above] - thetaDegrees[above - 1]);
        return candela[row][above - 1] + share * (candela[row][above] - candela[row][above - 1]);
    }

    /** All the light that the table gives, lm: ∫∫ I sin θ dθ dφ, exact for straight lines between its angles. */
    public double lumens() {
        return lumens(HALF_TURN);
    }

    /** What of it goes down, to θ = 90°, lm. */
    public double lumensDown() {
        return lumens(HALF_TURN / 2);
    }

    private double lumens(double toTheta) {
        double[] mean = mean();
        double sum = 0;
        for (int index = 1; index < thetaDegrees.length && thetaDegrees[index] <= toTheta; index++) {
            sum += ofZone(thetaDegrees[index - 1], thetaDegrees[index], mean[index - 1], mean[index]);
        }
        return 2 * Math.PI * sum;
    }

    /** ∫ (a + b θ) sin θ dθ = −(a + b θ) cos θ + b sin θ. */
    private static double ofZone(double fromDegrees, double toDegrees, double low, double high) {
        double from = Math.toRadians(fromDegrees);
        double to = Math.toRadians(toDegrees);
        double slope = (high - low) / (to - from);
        return low * Math.cos(from) - high * Math.cos(to) + slope * (Math.sin(to) - Math.sin(from));
    }

    /** The mean over φ for each θ: trapezoids, exact for straight lines. */
    private double[] mean() {
        return IntStream.range(0, thetaDegrees.length).mapToDouble(this::mean).toArray();
    }

    private double mean(int column) {
        if (isRound()) {
            return candela[0][column];
        }
        double sum = 0;
        for (int row = 1; row < phiDegrees.length; row++) {
            double width = phiDegrees[row] - phiDegrees[row - 1];
            sum += width * (candela[row][column] + candela[row - 1][column]) / 2;
        }
        return sum / last(phiDegrees);
    }

    /** Intensity straight down, cd, along the aim of a lamp; 0 where the table begins at 90°. */
    public double candelaAlongAim() {
        return thetaDegrees[0] == 0 ? mean(0) : 0;
    }

    /**
     * How far a direction lies at most from the mean around the aim, over the intensity along the aim: what the round beam of
     * {@link #beam()} leaves out. Infinite where nothing goes along the aim.
     */
    public double unevenness() {
        double[] mean = mean();
        double most = 0;
        for (double[] row : candela) {
            for (int column = 0; column < row.length && thetaDegrees[column] <= HALF_TURN / 2; column++) {
                most = Math.max(most, Math.abs(row[column] - mean[column]));
            }
        }
        return most == 0 ? 0 : most / candelaAlongAim();
    }

    /**
     * The beam for a spot that aims along θ = 0: the mean around the aim. Empty where nothing goes along the aim, for a beam
     * is 1 there. What goes beyond 90° is left out, as of every beam.
     */
    public Optional<Beam.Table> beam() {
        double along = candelaAlongAim();
        if (!(along > 0)) {
            return Optional.empty();
        }
        double[] relative = Arrays.stream(mean()).map(mean -> mean / along).toArray();
        boolean isTooHollow = Arrays.stream(relative).anyMatch(share -> !(share <= 1e6));
        return isTooHollow ? Optional.empty() : Optional.of(new Beam.Table(thetaDegrees, relative));
    }
}
