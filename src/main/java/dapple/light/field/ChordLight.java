package dapple.light.field;

import dapple.light.field.Quadrature.Goal;
import dapple.light.geometry.Vec;
import dapple.light.source.Beam;
import org.jspecify.annotations.Nullable;

/**
 * The light of one straight chord of a source at one place, a {@link ThinLine}. What shadows, filters, and the plane of
 * the receiver leave of it are pieces between exact bounds; through what depends on the angle it is integrated over
 * t = tan(φ/2), in which sine and cosine are rational.
 */
final class ChordLight {
    /** Nearer to its line than this a chord has no light that could be told, m. */
    static final double NO_DISTANCE = 1e-12;

    /** Times the half-width of a beam, as a half tangent, beside which a chord is cut. */
    private static final double FALL_OFF = 0.75;

    private final Quadrature overAngle = new Quadrature();
    private final ThinLine piece = new ThinLine();
    private final Paths paths;
    private final Sight sight;
    private View view = View.VECTOR;
    private boolean cutsSource;
    private double error;
    private double taken;
    private boolean isTracing;
    private @Nullable Beams beams;
    private double ofBeams;

    private Chord chord = new Chord(Vec.UP, Vec.UP, 1);
    private Perpendicular axis = new Perpendicular(Vec.UP, Vec.UP, Vec.UP);
    private double coefficient;
    private double perAngle;
    private @Nullable ChordBeam beam;
    private final Tally ofPiece = new Tally();
    private final Tally unused = new Tally();

    ChordLight(Paths paths) {
        this.paths = paths;
        this.sight = new Sight(paths);
    }

    /**
     * Looks in another view.
     *
     * @param isCut whether its plane cuts the source
     */
    void look(View newView, boolean isCut) {
        view = newView;
        cutsSource = isCut;
        error = 0;
        taken = 0;
    }

    /** Looks only at what points pass beside a share that has been taken. */
    void lookBeside(double share) {
        taken = share;
    }

    /** The sum of the errors of the integrals over the angle since the view was set. */
    double error() {
        return error;
    }

    /** The pattern of what can be seen of a chord, see {@link Sight#pattern}. */
    long pattern(Emitter.Seen seen, double at) {
        isTracing = true;
        seen.chord(at, this, 1, unused);
        isTracing = false;
        return sight.pattern();
    }

    /** The pattern of the chord that was looked at last. */
    long pattern() {
        return sight.pattern();
    }

    /** Adds a chord's light as some beams, roughly. */
    void sample(Emitter.Seen seen, double at, double weight, Beams into) {
        beams = into;
        ofBeams = weight;
        seen.chord(at, this, 1, unused);
        beams = null;
    }

    /** A chord whose light is c·(P − R)/r⁴ per length. */
    void addDiffuse(Chord ofSource, double c, double accuracy, Tally into) {
        beam = null;
        add(ofSource, c, accuracy, into);
    }

    /** A chord of a face with a beam: c · f(cos θ) · (P − R)/r³ per length. */
    void addBeam(Chord ofFace, ChordBeam ofElements, double c, double accuracy, Tally into) {
        beam = ofElements;
        add(ofFace, c, accuracy, into);
    }

    /** A point with a beam: c · f(cos θ)/r². */
    void addPoint(Vec source, Vec towards, Beam ofPoint, double c, Tally into) {
        double x = source.x() - paths.place.x();
        double y = source.y() - paths.place.y();
        double z = source.z() - paths.place.z();
        double square = x * x + y * y + z * z;
        double near = 1 / Math.sqrt(square);
        Vec facing = view.facing();
        if (cutsSource && !(x * facing.x() + y * facing.y() + z * facing.z() > 0)) {
            return;
        }
        double cosine = -(x * towards.x() + y * towards.y() + z * towards.z()) * near;
        double light = cosine > 0 ? c * ofPoint.towards(cosine) / square : 0;
        if (light > 0) {
            light *= paths.ofPoint(source, x * near, y * near, z * near) - taken;
            if (beams != null) {
                beams.add(near * x, near * y, near * z, ofBeams * light);
                return;
            }
            into.x += light * near * x;
            into.y += light * near * y;
            into.z += light * near * z;
            into.round += light;
        }
    }

    private void add(Chord newChord, double c, double accuracy, Tally into) {
        chord = newChord;
        coefficient = c;
        boolean hasEdges = beam != null && !beam.edgeTangents().isEmpty();
        if (isTracing && !cutsSource && !hasEdges) {
            sight.look(chord);
            return;
        }
        axis = new Perpendicular(chord.middle(), chord.along(), paths.place);
        if (isTracing) {
            look();
        } else if (axis.distance() > NO_DISTANCE && c > 0) {
            addSeen(accuracy, into);
        }
    }

    private void look() {
        if (cutsSource) {
            sight.look(chord, axis, view.facing());
        } else {
            sight.look(chord);
        }
        if (beam != null && !beam.edgeTangents().isEmpty()) {
            sight.cutEdges(chord, axis, beam);
        }
    }

    private void addSeen(double accuracy, Tally into) {
        double distance = axis.distance();
        perAngle = beam == null ? coefficient / (distance * distance) : coefficient / distance;
        if (beams != null) {
            sample(beams);
            return;
        }
        look();
        for (int index = 0; index < sight.pieces(); index++) {
            if (sight.isSeen(index)) {
                piece(sight.at(index), sight.at(index + 1), sight.pass(index), accuracy, into);
            }
        }
    }

    /** Some points of the chord, by equal steps of the angle. */
    private void sample(Beams into) {
        double start = axis.along() - chord.length() / 2;
        double low = 2 * Math.atan(halfTangent(start));
        double high = 2 * Math.atan(halfTangent(start + chord.length()));
        int parts = Beams.steps(high - low);
        Vec along = chord.along();
        for (int part = 0; part < parts; part++) {
            double angle = low + (high - low) * (part + 0.5) / parts;
            double cos = Math.cos(angle);
            double sin = Math.sin(angle);
            double x = cos * axis.x() + sin * along.x();
            double y = cos * axis.y() + sin * along.y();
            double z = cos * axis.z() + sin * along.z();
            Vec source = chord.at((axis.distance() * sin / cos - start) / chord.length());
            double light = given(cos, x, y, z) * (high - low) / parts * paths.ofPoint(source, x, y, z);
            into.add(x, y, z, ofBeams * light);
        }
    }

    /** What the chord gives from a direction, per angle along it. */
    private double given(double cos, double x, double y, double z) {
        if (beam == null) {
            return perAngle * cos;
        }
        Vec aim = beam.aim();
        return perAngle * beam.beam().towards(-(x * aim.x() + y * aim.y() + z * aim.z()));
    }

    private void piece(double from, double to, double share, double accuracy, Tally into) {
        if (!(share > 0)) {
            return;
        }
        double start = axis.along() - chord.length() / 2;
        double low = start + from * chord.length();
        double high = start + to * chord.length();
        if (sight.isEven() && beam == null) {
            closed(low, high, share, into);
        } else if (!sight.isEven() || !series(low, high, share, accuracy, into)) {
            overAngles(halfTangent(low), halfTangent(high), share, accuracy, into);
        }
    }

    /** Over the half tangent, cut where a beam falls off fast beside the foot of the perpendicular. */
    private void overAngles(double low, double high, double share, double accuracy, Tally into) {
        double fallOff = beam == null ? 1 : FALL_OFF / beam.narrowness();
        double from = low;
        for (double cut = -fallOff; from < high; cut = cut < 0 ? fallOff : high) {
            double to = Math.min(high, cut);
            if (to > from) {
                error += overAngle.integrate(
                        (tangent, node) -> atAngle(tangent, share, node),
                        from,
                        to,
                        Goal.ofAngles(view, accuracy, beam != null),
                        into);
                from = to;
            }
        }
    }

    /** A piece of a face by the powers of its distance; whether it could be done. */
    private boolean series(double low, double high, double share, double accuracy, Tally into) {
        if (beam == null || beam.power() == null) {
            return false;
        }
        ofPiece.clear();
        double ofUnit = beam.power().ofPiece(axis, chord.along(), beam.height(), low, high, accuracy, ofPiece);
        if (ofUnit < 0) {
            return false;
        }
        into.add(ofPiece, share * coefficient);
        error += share * coefficient * ofUnit;
        return true;
    }

    private double halfTangent(double along) {
        double distance = axis.distance();
        return along / (distance + Math.sqrt(distance * distance + along * along));
    }

    private void closed(double low, double high, double share, Tally into) {
        piece.between(axis.distance(), low, high);
        double scale = share * coefficient / (axis.distance() * axis.distance());
        into.addChord(axis, scale * piece.across, chord.along(), scale * piece.lengthwise);
        into.round += scale * piece.round;
    }

    private void atAngle(double tangent, double share, Tally into) {
        double step = 2 / (1 + tangent * tangent);
        double cos = step - 1;
        double sin = step * tangent;
        Vec along = chord.along();
        double x = cos * axis.x() + sin * along.x();
        double y = cos * axis.y() + sin * along.y();
        double z = cos * axis.z() + sin * along.z();
        double light = share * step * given(cos, x, y, z) * sight.pass(x, y, z);
        into.x += light * x;
        into.y += light * y;
        into.z += light * z;
        into.round += light;
    }
}
