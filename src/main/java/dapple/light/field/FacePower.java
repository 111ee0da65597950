package dapple.light.field;

import dapple.light.geometry.Vec;

/**
 * The light of a face whose elements have a beam cos^n θ. All elements have the place at the same height h before them,
 * and so their light is a power of their distance alone, h^n r^−n−3 times the way, of which {@link PowerMean} gives the
 * mean over the face or over a piece of a chord.
 */
final class FacePower {
    private final Plate plate;
    private final double exponent;

    /** The share h²/r² at which the beam is faint. */
    private final double faintRise;

    private final PowerMean onAxis;
    private final PowerMean outwards;
    private final PowerMean round;
    private final PowerMean across;
    private final PowerMean lengthwise;
    private final PowerMean roundPiece;

    FacePower(Plate plate, double exponent) {
        this.plate = plate;
        this.exponent = exponent;
        this.faintRise = Math.pow(FAINT, 2 / exponent);
        double power = (exponent + 3) / 2;
        this.onAxis = PowerMean.ofPower(power, 2);
        this.outwards = PowerMean.ofWay(power, 2);
        this.round = PowerMean.ofPower((exponent + 2) / 2, 2);
        this.across = PowerMean.ofPower(power, 1);
        this.lengthwise = PowerMean.ofWay(power, 1);
        this.roundPiece = PowerMean.ofPower((exponent + 2) / 2, 1);
    }

    /**
     * Adds the light of the whole face, of intensity 1 on the axis.
     *
     * @return the estimated error of the view's figure, or {@link Emitter#UNKNOWN}, with nothing added
     */
    double ofFace(Vec place, View view, double accuracy, Tally into) {
        Vec way = place.minus(plate.centre);
        double height = way.dot(plate.aim);
        double square = way.dot(way);
        double rise = height * height / square;
        double tau = plate.radius * plate.radius / square;
        double needed = accuracy * view.obliqueness(way) / 2;
        PowerMean.Sum up = onAxis.at(tau, rise, needed);
        PowerMean.Sum out = outwards.at(tau, rise, needed);
        PowerMean.Sum all = view.countsRound() ? round.at(tau, rise, needed) : up;
        double worst = Math.max(all.error(), Math.max(up.error(), out.error()));
        if (!(worst < Double.POSITIVE_INFINITY)) {
            return Emitter.UNKNOWN;
        }
        double middle = Math.pow(rise, exponent / 2) / square;
        double away = Math.sqrt(square);
        double outwardsAmount = middle * out.value() / away;
        into.add(way, -outwardsAmount);
        into.add(plate.aim, (outwardsAmount - middle * up.value() / away) * height);
        into.round += middle * all.value();
        return middle * worst;
    }

    /** Nothing more than this share of what it has on its axis is looked at as perhaps negligible. */
    private static final double FAINT = 1e-5;

    /**
     * What an element in the middle would give if it were as near to the foot of the perpendicular as the edge is; infinite
     * where that is not faint.
     */
    double most(Vec place, double height) {
        Vec way = place.minus(plate.centre);
        if (height * height > faintRise * way.dot(way)) {
            return Double.POSITIVE_INFINITY;
        }
        double out = Math.sqrt(Math.max(0, way.dot(way) - height * height));
        double aside = Math.max(0, out - plate.radius);
        double square = height * height + aside * aside;
        return Math.pow(height * height / square, exponent / 2) / square;
    }

    /**
     * Adds the light of a piece of a chord, h^n r^−n−3 times the way per length.
     *
     * @param height h of the place over the face, m
     * @param low where the piece begins, along the chord from the foot of the perpendicular, m
     * @param high where it ends, m
     * @return the estimated error of the vector, or {@link Emitter#UNKNOWN}, with nothing added
     */
    double ofPiece(Perpendicular axis, Vec along, double height, double low, double high, double accuracy, Tally into) {
        double middle = (low + high) / 2;
        double half = (high - low) / 2;
        double square = axis.distance() * axis.distance() + middle * middle;
        double rise = axis.distance() * axis.distance() / square;
        double tau = half * half / square;
        PowerMean.Sum beside = across.at(tau, rise, accuracy);
        PowerMean.Sum ahead = lengthwise.at(tau, rise, accuracy);
        PowerMean.Sum all = roundPiece.at(tau, rise, accuracy);
        double worst = Math.max(all.error(), Math.max(beside.error(), ahead.error()));
        if (!(worst < Double.POSITIVE_INFINITY)) {
            return Emitter.UNKNOWN;
        }
        double amount = 2 * half * Math.pow(height * height / square, exponent / 2) / square;
        double away = Math.sqrt(square);
        into.addChord(
                axis, amount * beside.value() * axis.distance() / away, along, amount * ahead.value() * middle / away);
        into.round += amount * all.value();
        return amount * worst;
    }
}
