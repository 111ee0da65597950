package dapple.light.field;

import dapple.light.field.Quadrature.Allowed;
import dapple.light.geometry.Shadow;
import dapple.light.geometry.Vec;
import dapple.light.source.Beam;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The light of one straight chord of a source at one place. With the foot of the perpendicular at distance h, and φ the
 * angle from it along the chord, a chord whose light is c·(P − R)/r⁴ per length gives
 * D = c/(2h²) · [e_r (φ + sin φ cos φ) + e_x sin² φ] and scalar c/h² · sin φ, between its ends: exact, for every thin
 * tube and for every straight chord of a Lambertian surface [simons2001]. What shadows, screens, and the plane of the
 * receiver leave of it are pieces between exact bounds; through what depends on the angle it is integrated over φ.
 */
final class ChordLight {
    private static final int MOST_CUTS = 64;
    private static final double NO_DISTANCE = 1e-12;

    private final Quadrature overAngle = new Quadrature();
    private final double[] cuts = new double[MOST_CUTS];
    private final double[] hiddenLow = new double[MOST_CUTS];
    private final double[] hiddenHigh = new double[MOST_CUTS];
    private final double[] screenLow = new double[MOST_CUTS];
    private final double[] screenHigh = new double[MOST_CUTS];
    private final double[] interval = new double[2];
    private final Shadow shadow = new Shadow();
    private boolean hidesAnything;
    private final Screen[] active = new Screen[MOST_CUTS];
    private int activeCount;
    private int cutCount;
    private int hiddenCount;

    private final Paths paths;
    private double windowLow;
    private double windowHigh = 1;
    private View view = View.VECTOR;
    private Vec radial = Vec.UP;
    private Vec along = Vec.UP;
    private double distance;
    private double start;
    private double length;
    private double coefficient;
    private @Nullable Beam beam;
    private Vec aim = Vec.UP;

    ChordLight(Paths paths) {
        this.paths = paths;
    }

    void look(View newView) {
        view = newView;
        hidesAnything = false;
        windowLow = 0;
        windowHigh = 1;
    }

    /** Looks at a part of each chord alone, between two shares of it. */
    void window(double low, double high) {
        windowLow = low;
        windowHigh = high;
    }

    View view() {
        return view;
    }

    /** Whether a solid has hidden any part of a chord since the view was set. */
    boolean hidesAnything() {
        return hidesAnything;
    }

    Vec place() {
        return paths.place;
    }

    /** A chord whose light is c·(P − R)/r⁴ per length. */
    void addDiffuse(Vec middle, Vec axis, double ofLength, double c, double accuracy, Tally into) {
        beam = null;
        add(middle, axis, ofLength, c, accuracy, into);
    }

    /** A chord of a face with a beam: c · f(cos θ) · (P − R)/r³ per length. */
    void addBeam(Emitter.Plate face, double at, double c, Beam ofElements, double accuracy, Tally into) {
        beam = ofElements;
        aim = face.aim();
        add(face.middle(at), face.along(), face.length(at), c, accuracy, into);
    }

    /** A point with a beam: c · f(cos θ)/r². */
    void addPoint(Vec source, Vec towards, Beam ofPoint, double c, Tally into) {
        Vec way = source.minus(paths.place);
        double far = way.length();
        Vec direction = far > 0 ? way.times(1 / far) : way;
        if (view.isClipped() && !(direction.dot(view.facing()) > 0)) {
            return;
        }
        double light = c * ofPoint.towards(-direction.dot(towards)) / (far * far);
        if (!(light > 0)) {
            return;
        }
        light *= paths.share(source, direction);
        hidesAnything |= light == 0;
        into.x += light * direction.x();
        into.y += light * direction.y();
        into.z += light * direction.z();
        into.round += light;
    }

    private void add(Vec middle, Vec axis, double ofLength, double c, double accuracy, Tally into) {
        if (!measure(middle, axis, ofLength) || !(c > 0)) {
            return;
        }
        coefficient = c;
        double low = windowLow;
        double high = windowHigh;
        if (view.isClipped()) {
            double atA =
                    distance * view.facing().dot(radial) + start * view.facing().dot(along);
            double atB = atA + length * view.facing().dot(along);
            if (atA <= 0 && atB <= 0) {
                return;
            }
            low = atA < 0 ? Math.max(low, atA / (atA - atB)) : low;
            high = atB < 0 ? Math.min(high, atA / (atA - atB)) : high;
        }
        activeCount = 0;
        if (paths.solidCount == 0 && paths.screenCount == 0) {
            piece(low, high, 1, accuracy, into);
        } else {
            between(middle, low, high, accuracy, into);
        }
    }

    private void between(Vec middle, double low, double high, double accuracy, Tally into) {
        cutCount = 0;
        hiddenCount = 0;
        cut(low);
        cut(high);
        Vec half = along.times(length / 2);
        Vec a = middle.minus(half);
        Vec b = middle.plus(half);
        hide(a, b);
        screen(a, b);
        pieces(low, high, accuracy, into);
    }

    /** The foot of the perpendicular and its distance; whether there is one. */
    private boolean measure(Vec middle, Vec axis, double ofLength) {
        double x = middle.x() - paths.place.x();
        double y = middle.y() - paths.place.y();
        double z = middle.z() - paths.place.z();
        double onAxis = x * axis.x() + y * axis.y() + z * axis.z();
        x -= onAxis * axis.x();
        y -= onAxis * axis.y();
        z -= onAxis * axis.z();
        distance = Math.sqrt(x * x + y * y + z * z);
        along = axis;
        length = ofLength;
        start = onAxis - ofLength / 2;
        if (!(distance > NO_DISTANCE)) {
            return false;
        }
        radial = new Vec(x / distance, y / distance, z / distance);
        return true;
    }

    private void cut(double at) {
        if (cutCount < MOST_CUTS) {
            cuts[cutCount++] = at;
        }
    }

    private void hide(Vec a, Vec b) {
        for (int index = 0; index < paths.solidCount; index++) {
            if (paths.solids[index].shadow(paths.place, a, b, shadow) && hiddenCount < MOST_CUTS) {
                hiddenLow[hiddenCount] = shadow.low();
                hiddenHigh[hiddenCount++] = shadow.high();
                hidesAnything = true;
                cut(shadow.low());
                cut(shadow.high());
            }
        }
    }

    private void screen(Vec a, Vec b) {
        for (int index = 0; index < paths.screenCount; index++) {
            boolean crossed = paths.screens[index].crossing(paths.place, a, b, interval);
            screenLow[index] = crossed ? interval[0] : 2;
            screenHigh[index] = crossed ? interval[1] : 2;
            if (crossed) {
                cut(interval[0]);
                cut(interval[1]);
            }
        }
    }

    private void pieces(double low, double high, double accuracy, Tally into) {
        Arrays.sort(cuts, 0, cutCount);
        for (int index = 1; index < cutCount; index++) {
            double from = Math.max(low, cuts[index - 1]);
            double to = Math.min(high, cuts[index]);
            if (to > from && !isHidden((from + to) / 2)) {
                piece(from, to, screens((from + to) / 2), accuracy, into);
            }
        }
    }

    private boolean isHidden(double at) {
        for (int index = 0; index < hiddenCount; index++) {
            if (at > hiddenLow[index] && at < hiddenHigh[index]) {
                return true;
            }
        }
        return false;
    }

    /** The product of the screens that are alike at every angle; the others become active. */
    private double screens(double at) {
        activeCount = 0;
        double share = 1;
        for (int index = 0; index < paths.screenCount; index++) {
            if (at > screenLow[index] && at < screenHigh[index]) {
                if (paths.screens[index].isAlikeAtEveryAngle()) {
                    share *= paths.screens[index].transmittance(paths.quantity, radial);
                } else {
                    active[activeCount++] = paths.screens[index];
                }
            }
        }
        return share;
    }

    private void piece(double from, double to, double share, double accuracy, Tally into) {
        if (!(share > 0)) {
            return;
        }
        double low = start + from * length;
        double high = start + to * length;
        if (beam == null && activeCount == 0) {
            closed(low, high, share, into);
        } else {
            overAngle.integrate(
                    (phi, node) -> atAngle(phi, share, node),
                    Math.atan2(low, distance),
                    Math.atan2(high, distance),
                    view,
                    Rule.SEVEN,
                    1,
                    new Allowed(accuracy, 0),
                    into);
        }
    }

    private void closed(double low, double high, double share, Tally into) {
        double square = distance * distance;
        double toLow = 1 / Math.sqrt(square + low * low);
        double toHigh = 1 / Math.sqrt(square + high * high);
        double sinLow = low * toLow;
        double sinHigh = high * toHigh;
        double angle = Math.atan2(distance * (high - low), square + low * high);
        double scale = share * coefficient / square;
        double across = scale / 2 * (angle + distance * (sinHigh * toHigh - sinLow * toLow));
        double lengthwise = scale / 2 * (sinHigh - sinLow) * (sinHigh + sinLow);
        into.x += across * radial.x() + lengthwise * along.x();
        into.y += across * radial.y() + lengthwise * along.y();
        into.z += across * radial.z() + lengthwise * along.z();
        into.round += scale * (sinHigh - sinLow);
    }

    private void atAngle(double phi, double share, Tally into) {
        double cos = Math.cos(phi);
        double sin = Math.sin(phi);
        Vec direction = new Vec(
                cos * radial.x() + sin * along.x(),
                cos * radial.y() + sin * along.y(),
                cos * radial.z() + sin * along.z());
        double light = share * coefficient;
        if (beam == null) {
            light *= cos / (distance * distance);
        } else {
            light *= beam.towards(-direction.dot(aim)) / distance;
        }
        for (int index = 0; index < activeCount; index++) {
            light *= active[index].transmittance(paths.quantity, direction);
        }
        into.x += light * direction.x();
        into.y += light * direction.y();
        into.z += light * direction.z();
        into.round += light;
    }
}
