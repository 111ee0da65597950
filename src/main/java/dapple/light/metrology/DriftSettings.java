package dapple.light.metrology;

import dapple.light.quantity.Check;

/**
 * What is assumed of meters and houses, and when a finding is made. All of it ours, no source, unless said.
 *
 * @param lnCalibration standard deviation of ln of the gain of one meter over another, before any reading
 * @param lnMismatch the same of one set of lamps against another, for a meter whose response is not quite the weight
 * @param lnDay standard deviation of what all readings by one meter in one week share: its warmth, who held it
 * @param declineShare standard deviation of the share by which all stated declines may be wrong together
 * @param threshold z, standard deviations that the likeliest change must stand out by, over all weeks in which it may
 *     have begun
 * @param least least change of ln gain that is told, whatever its z
 */
public record DriftSettings(
        double lnCalibration, double lnMismatch, double lnDay, double declineShare, double threshold, double least) {
    /** Of the threshold, see docs/physics.md: in at most 5 of 100 collections a false finding within 18 months. */
    public static final DriftSettings USUAL = new DriftSettings(0.2, 0.04, 0.013, 0.5, 4.4, 0.03);

    public DriftSettings {
        Check.within("calibration", lnCalibration, Double.MIN_NORMAL, 10, "");
        Check.within("mismatch", lnMismatch, 0, 10, "");
        Check.within("scatter of days", lnDay, Double.MIN_NORMAL, 10, "");
        Check.within("share of declines", declineShare, Double.MIN_NORMAL, 10, "");
        Check.within("threshold", threshold, 1, 100, "");
        Check.within("least change", least, 0, 10, "");
    }

    public DriftSettings withThreshold(double other) {
        return new DriftSettings(lnCalibration, lnMismatch, lnDay, declineShare, other, least);
    }
}
