package dapple.light.spectrum;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * How long a person may stay in the light before the first of two daily limits is reached: t = H/E [icnirp2004,
 * directive2006]. A limit that takes more than 8 hours is absent: it does not bind in a working day.
 *
 * @param actinicMinutes skin and eyes
 * @param uvaEyeMinutes eyes, looking at the lamp
 */
public record KeeperLimit(OptionalDouble actinicMinutes, OptionalDouble uvaEyeMinutes) {
    /** Weighted radiant exposure of skin and eyes in 8 hours: 30 J/m² [icnirp2004, directive2006]. */
    public static final double ACTINIC_JOULES_PER_SQUARE_METRE = 30;

    /** Radiant exposure of the eyes, 315 to 400 nm, in 8 hours: 10,000 J/m² [icnirp2004, directive2006]. */
    public static final double UVA_EYE_JOULES_PER_SQUARE_METRE = 10_000;

    private static final double LONGEST_MINUTES = 480;
    private static final double SECONDS_PER_MINUTE = 60;

    /** The limit that is reached first. */
    public enum Binding {
        ACTINIC("actinic"),
        UVA_EYE("uvaEye");

        private final String code;

        Binding(String code) {
            this.code = code;
        }

        /** The name in documents. */
        public String code() {
            return code;
        }
    }

    /**
     * What light allows.
     *
     * @param actinicWattsPerSquareMetre weighted for skin and eyes, at least 0
     * @param uvaWattsPerSquareMetre 315 to 400 nm, unweighted, at least 0
     */
    public static KeeperLimit of(double actinicWattsPerSquareMetre, double uvaWattsPerSquareMetre) {
        return new KeeperLimit(
                minutes(ACTINIC_JOULES_PER_SQUARE_METRE, actinicWattsPerSquareMetre),
                minutes(UVA_EYE_JOULES_PER_SQUARE_METRE, uvaWattsPerSquareMetre));
    }

    private static OptionalDouble minutes(double joulesPerSquareMetre, double wattsPerSquareMetre) {
        double minutes = joulesPerSquareMetre / wattsPerSquareMetre / SECONDS_PER_MINUTE;
        return minutes <= LONGEST_MINUTES ? OptionalDouble.of(minutes) : OptionalDouble.empty();
    }

    /** Until the first limit is reached; absent where neither is within 8 hours. */
    public OptionalDouble minutes() {
        return DoubleStream.concat(actinicMinutes.stream(), uvaEyeMinutes.stream())
                .min();
    }

    /** Which limit is reached first; skin and eyes where both are reached at once. */
    public Optional<Binding> binding() {
        double actinic = actinicMinutes.orElse(Double.POSITIVE_INFINITY);
        double uvaEye = uvaEyeMinutes.orElse(Double.POSITIVE_INFINITY);
        if (minutes().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(actinic <= uvaEye ? Binding.ACTINIC : Binding.UVA_EYE);
    }
}
