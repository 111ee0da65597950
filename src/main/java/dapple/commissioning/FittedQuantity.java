package dapple.commissioning;

import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.light.calibration.FittedRig;
import dapple.light.calibration.FittedRig.Doubt;
import dapple.light.calibration.FittedRig.Factor;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.prediction.Predicted;
import dapple.rig.CoverFacts;
import java.util.List;
import java.util.Optional;

/**
 * What readings of one quantity say of a rig.
 *
 * @param fitted empty if the fit came to no end
 * @param doubts what meter and model do not explain, the worst first
 */
public record FittedQuantity(
        Quantity quantity,
        List<AtPoint> points,
        List<OfLamp> lamps,
        List<OfCover> covers,
        Optional<FittedRig> fitted,
        List<Doubt> doubts) {
    public FittedQuantity {
        points = List.copyOf(points);
        lamps = List.copyOf(lamps);
        covers = List.copyOf(covers);
        doubts = List.copyOf(doubts);
    }

    boolean agrees() {
        return fitted.isPresent() && doubts.isEmpty();
    }

    /**
     * One reading.
     *
     * @param predicted by what is stated
     * @param ratio of the reading to that
     * @param light what the fitted rig gives there
     * @param left ratio of the reading to what it should be then
     */
    public record AtPoint(
            Taken taken,
            Optional<Predicted> predicted,
            Optional<Double> ratio,
            Optional<Double> light,
            Optional<Double> left,
            boolean isDoubted) {}

    /**
     * One lamp.
     *
     * @param stated what counts until now
     * @param measured what it gives by the readings
     */
    public record OfLamp(LampFacts lamp, LampOutput stated, LampOutput measured, Interval within, Factor factor) {
        /** Whether the readings alone say it, so that it is kept. */
        public boolean isTold() {
            return factor.isTold();
        }
    }

    /**
     * One cover.
     *
     * @param share that one layer passes by the readings, at the angles of the points; empty: it stays as stated
     */
    public record OfCover(CoverFacts facts, Factor factor, Optional<Double> share) {
        public boolean isTold() {
            return share.isPresent();
        }

        /** Whether the readings say it, and that it is as its weave says. */
        public boolean isConfirmed() {
            return share.isEmpty() && factor.isTold();
        }
    }
}
