package dapple.light.dose;

import dapple.light.quantity.Check;
import dapple.light.spectrum.KeeperLimit;
import java.util.List;

/**
 * What fell on the hand and face of who read meters in a working day, as if bare and where the sensor was: the worst case.
 * Weighed against two limits for 8 hours: {@value KeeperLimit#ACTINIC_JOULES_PER_SQUARE_METRE} J/m² weighted for skin and eyes,
 * and 10,000 J/m² from 315 to 400 nm for eyes [icnirp2004, directive2006].
 *
 * @param uvIndexMinutes UV index × minutes
 * @param actinicJoulesPerSquareMetre weighted for skin and eyes
 * @param uvaJoulesPerSquareMetre 315 to 400 nm, unweighted; of lamps without spectrum nothing is known, so nothing is in it
 * @param isAssumed whether a lamp's spectrum had to be replaced by the rule of thumb
 */
public record KeeperDose(
        double uvIndexMinutes, double actinicJoulesPerSquareMetre, double uvaJoulesPerSquareMetre, boolean isAssumed) {
    public static final KeeperDose NONE = new KeeperDose(0, 0, 0, false);

    /**
     * Of lamps without spectrum: UV index × hours until 30 J/m², 0.6; the short end of what lamps have been found to allow
     * (computed from spectra of lamps; from memory which).
     */
    public static final double UV_INDEX_HOURS_WITHOUT_SPECTRUM = 0.6;

    /** The share of a limit from which shield and sleeves are asked for: half, before it is reached (ours, no source). */
    static final double COVER_SHARE = 0.5;

    private static final double MINUTES_PER_HOUR = 60;

    /**
     * What light does to people, per unit of UV index and minute.
     *
     * @param actinicPerUvIndexMinute J/m² weighted for skin and eyes
     * @param uvaPerUvIndexMinute J/m² from 315 to 400 nm
     * @param isAssumed whether a lamp's spectrum had to be replaced by the rule of thumb
     */
    public record Hazard(double actinicPerUvIndexMinute, double uvaPerUvIndexMinute, boolean isAssumed) {
        /** Of lamps without spectrum. */
        public static final Hazard WITHOUT_SPECTRUM = new Hazard(
                KeeperLimit.ACTINIC_JOULES_PER_SQUARE_METRE / (UV_INDEX_HOURS_WITHOUT_SPECTRUM * MINUTES_PER_HOUR),
                0,
                true);

        public Hazard {
            Check.notNegative("actinic exposure", actinicPerUvIndexMinute, "J/m²");
            Check.notNegative("UVA exposure", uvaPerUvIndexMinute, "J/m²");
        }
    }

    /** What to do about a dose. */
    public enum Advice {
        NONE,
        /** Shield and sleeves from now on. */
        COVER,
        /** A limit is reached: somebody else goes on. */
        STOP
    }

    public KeeperDose {
        Check.notNegative("UV index minutes", uvIndexMinutes, "");
        Check.notNegative("actinic exposure", actinicJoulesPerSquareMetre, "J/m²");
        Check.notNegative("UVA exposure", uvaJoulesPerSquareMetre, "J/m²");
    }

    /**
     * With so long in some light.
     *
     * @param uvIndex where hand and face are, at least 0
     * @param minutes at least 0
     */
    public KeeperDose with(double uvIndex, double minutes, Hazard hazard) {
        Check.notNegative("UV index", uvIndex, "");
        Check.notNegative("time", minutes, "min");
        double taken = uvIndex * minutes;
        return plus(new KeeperDose(
                taken,
                taken * hazard.actinicPerUvIndexMinute(),
                taken * hazard.uvaPerUvIndexMinute(),
                taken > 0 && hazard.isAssumed()));
    }

    public KeeperDose plus(KeeperDose other) {
        return new KeeperDose(
                uvIndexMinutes + other.uvIndexMinutes,
                actinicJoulesPerSquareMetre + other.actinicJoulesPerSquareMetre,
                uvaJoulesPerSquareMetre + other.uvaJoulesPerSquareMetre,
                isAssumed || other.isAssumed);
    }

    public static KeeperDose sum(List<KeeperDose> doses) {
        return doses.stream().reduce(NONE, KeeperDose::plus);
    }

    /** The dose over the limit that binds: 1 when it is reached. */
    public double share() {
        return Math.max(actinicShare(), uvaShare());
    }

    /** The limit that is nearer; skin and eyes where both are as near. */
    public KeeperLimit.Binding binding() {
        return uvaShare() > actinicShare() ? KeeperLimit.Binding.UVA_EYE : KeeperLimit.Binding.ACTINIC;
    }

    public Advice advice() {
        if (share() >= 1) {
            return Advice.STOP;
        }
        return share() >= COVER_SHARE ? Advice.COVER : Advice.NONE;
    }

    private double actinicShare() {
        return actinicJoulesPerSquareMetre / KeeperLimit.ACTINIC_JOULES_PER_SQUARE_METRE;
    }

    private double uvaShare() {
        return uvaJoulesPerSquareMetre / KeeperLimit.UVA_EYE_JOULES_PER_SQUARE_METRE;
    }
}
