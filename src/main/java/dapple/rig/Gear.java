package dapple.rig;

import dapple.light.quantity.Check;
import java.util.Optional;

/**
 * What stands between the mains and a lamp.
 *
 * @param ballast empty: not known
 * @param control empty: not known
 * @param voltageRatio of a dimmed lamp: rms voltage over the rated one, 0.4 to 1; empty: not dimmed, or not known how far
 */
public record Gear(Optional<Ballast> ballast, Optional<LampControl> control, Optional<Double> voltageRatio) {
    public static final Gear UNKNOWN = new Gear(Optional.empty(), Optional.empty(), Optional.empty());
    public static final double LEAST_VOLTAGE_RATIO = 0.4;

    public Gear {
        voltageRatio.ifPresent(ratio -> Check.within("voltage over the rated one", ratio, LEAST_VOLTAGE_RATIO, 1, ""));
        if (voltageRatio.isPresent() && !control.equals(Optional.of(LampControl.DIMMED))) {
            throw new IllegalArgumentException("only a dimmed lamp may have less than its voltage, was " + control);
        }
    }

    public static Gear on(Ballast ballast) {
        return new Gear(Optional.of(ballast), Optional.empty(), Optional.empty());
    }

    public static Gear dimmedTo(double voltageRatio) {
        return new Gear(Optional.empty(), Optional.of(LampControl.DIMMED), Optional.of(voltageRatio));
    }

    public static Gear by(LampControl control) {
        return new Gear(Optional.empty(), Optional.of(control), Optional.empty());
    }

    public Gear on(Optional<Ballast> other) {
        return new Gear(other, control, voltageRatio);
    }

    public boolean isDimmed() {
        return control.filter(LampControl.DIMMED::equals).isPresent();
    }
}
