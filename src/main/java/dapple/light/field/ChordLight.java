package dapple.light.field;

import dapple.light.field.Quadrature.Goal;
import dapple.light.geometry.Shadow;
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

    /** More than any solid has edges. */
    private static final int EDGES_A_SOLID = 32;

    private static final int EDGES_A_SCREEN = 8;

    private final Quadrature overAngle = new Quadrature();
    private final Shadow shadow = new Shadow();
    private final ThinLine piece = new ThinLine();
    private final Paths paths;
    private final Cuts cuts;
    private final double[] screenLow;
    private final double[] screenHigh;
    private final Part crossed = new Part();
    private final Screen[] active;
    private int activeCount;
    private View view = View.VECTOR;
    private boolean cutsSource;
    private double error;
    private boolean isTracing;
    private long pattern;
    private @Nullable Beams beams;
    private double ofBeams;

    private Chord chord = new Chord(Vec.UP, Vec.UP, 1);
    private Perpendicular axis = new Perpendicular(Vec.UP, Vec.UP, Vec.UP);
    private double coefficient;
    private @Nullable ChordBeam beam;
    private final Tally ofPiece = new Tally();

    ChordLight(Paths paths) {
        this.paths = paths;
        this.cuts = new Cuts(paths.shades.length, paths.partial.length);
        this.screenLow = new double[paths.partial.length];
        this.screenHigh = new double[paths.partial.length];
        this.active = new Screen[paths.partial.length];
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
    }

    /** The sum of the errors of the integrals over the angle since the view was set. */
    double error() {
        return error;
    }

    /**
     * Which edges bound what is seen of a chord, as a number: between two chords of a source with the same pattern its
     * light changes smoothly.
     */
    long pattern(Emitter.Seen seen, double at) {
        isTracing = true;
        pattern = 0;
        seen.chord(at, this, 1, new Tally());
        isTracing = false;
        return pattern;
    }

    /** Adds a chord's light as some beams, roughly. */
    void sample(Emitter.Seen seen, double at, double weight, Beams into) {
        beams = into;
        ofBeams = weight;
        seen.chord(at, this, 1, new Tally());
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
            light *= paths.ofPoint(source, x * near, y * near, z * near);
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
        if (!isTracing || cutsSource) {
            axis = new Perpendicular(chord.middle(), chord.along(), paths.place);
        }
        if (!(isTracing || (axis.distance() > NO_DISTANCE && c > 0))) {
            return;
        }
        if (beams != null) {
            sample(beams);
            return;
        }
        activeCount = 0;
        clip();
        if (cuts.high() > cuts.low()) {
            pieces(accuracy, into);
        }
    }

    /** Some points of the chord, each for a part of it. */
    private void sample(Beams into) {
        int parts = Beams.steps(chord.length() / axis.distance());
        for (int part = 0; part < parts; part++) {
            Vec source = chord.at((part + 0.5) / parts);
            Vec way = source.minus(paths.place);
            double near = 1 / way.length();
            Vec direction = way.times(near);
            double light = coefficient * near * near * (chord.length() / parts);
            light *= beam == null ? near : beam.beam().towards(-direction.dot(beam.aim()));
            light *= paths.ofPoint(source, direction.x(), direction.y(), direction.z());
            into.add(direction.x(), direction.y(), direction.z(), ofBeams * light);
        }
    }

    /** Begins with what lies in front of the plane. */
    private void clip() {
        double low = 0;
        double high = 1;
        if (cutsSource) {
            double slope = chord.length() * view.facing().dot(chord.along());
            double start = axis.distance() * axis.towards(view.facing())
                    + axis.along() * view.facing().dot(chord.along())
                    - slope / 2;
            low = start < 0 ? Math.max(low, slope > 0 ? -start / slope : 1) : low;
            high = start + slope < 0 ? Math.min(high, slope < 0 ? -start / slope : 0) : high;
        }
        cuts.begin(low, low > 0 ? 2 : 0, high, high < 1 ? 3 : 1);
    }

    private void pieces(double accuracy, Tally into) {
        if (!paths.isEven()) {
            cut();
        }
        for (int index = 1; index < cuts.count(); index++) {
            double from = cuts.at(index - 1);
            double to = cuts.at(index);
            double middle = (from + to) / 2;
            if (to > from && !cuts.isHidden(middle)) {
                if (isTracing) {
                    pattern = 31 * (31 * pattern + cuts.edge(index - 1)) + cuts.edge(index) + 1;
                } else {
                    piece(from, to, crossing(middle), accuracy, into);
                }
            }
        }
    }

    private void cut() {
        Vec a = chord.at(0);
        Vec b = chord.at(1);
        for (int index = 0; index < paths.shadeCount; index++) {
            if (paths.shades[index].shadow(a, b, shadow)) {
                cuts.hide(shadow, EDGES_A_SOLID * (index + 1));
            }
        }
        for (int index = 0; index < paths.partialCount; index++) {
            boolean any = paths.partial[index].crossing(paths.place, a, b, crossed);
            screenLow[index] = any ? crossed.low() : 2;
            screenHigh[index] = any ? crossed.high() : 2;
            cuts.add(screenLow[index], -EDGES_A_SCREEN * (index + 1) - crossed.lowEdge());
            cuts.add(screenHigh[index], -EDGES_A_SCREEN * (index + 1) - crossed.highEdge());
        }
    }

    /** The product of the partial filters that are alike at every angle; the others become active. */
    private double crossing(double at) {
        activeCount = 0;
        double share = 1;
        for (int index = 0; index < paths.partialCount; index++) {
            if (at > screenLow[index] && at < screenHigh[index]) {
                if (paths.partial[index].isAlikeAtEveryAngle()) {
                    share *= paths.partial[index].share(paths.quantity);
                } else {
                    active[activeCount++] = paths.partial[index];
                }
            }
        }
        return share;
    }

    private void piece(double from, double to, double share, double accuracy, Tally into) {
        if (!(share > 0)) {
            return;
        }
        double start = axis.along() - chord.length() / 2;
        double low = start + from * chord.length();
        double high = start + to * chord.length();
        boolean isClear = activeCount == 0 && paths.slantedCount == 0;
        if (isClear && beam == null) {
            closed(low, high, share, into);
        } else if (!isClear || !series(low, high, share, accuracy, into)) {
            Goal goal = Goal.even(view, accuracy);
            error += overAngle.integrate(
                    (tangent, node) -> atAngle(tangent, share, node), halfTangent(low), halfTangent(high), goal, into);
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
        double light = share * coefficient * step / axis.distance();
        if (beam == null) {
            light *= cos / axis.distance();
        } else {
            Vec aim = beam.aim();
            light *= beam.beam().towards(-(x * aim.x() + y * aim.y() + z * aim.z()));
        }
        for (int index = 0; index < paths.slantedCount; index++) {
            light *= paths.slanted[index].transmittance(paths.quantity, x, y, z);
        }
        for (int index = 0; index < activeCount; index++) {
            light *= active[index].transmittance(paths.quantity, x, y, z);
        }
        into.x += light * x;
        into.y += light * y;
        into.z += light * z;
        into.round += light;
    }
}
