package dapple.light.metrology;

import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.MeterUncertainty;
import dapple.light.metrology.Contribution.Basis;
import dapple.light.quantity.Check;
import dapple.light.quantity.Interval;
import java.util.List;

/**
 * The uncertainty of the median of n repeats: as the meter's, the stated share for repeats replaced by s/√n with
 * n − 1 degrees of freedom [jcgm100, 4.2.3] where that is greater; s is the standard deviation of the repeats.
 *
 * @param repeats at least 2, corrected
 * @param statedShare standard uncertainty that the meter's already holds for repeats, a share of the reading; 0 where
 *     none is stated
 */
public record RepeatScatter(Repeats repeats, double statedShare) {
    public RepeatScatter {
        Check.within("number of repeats", repeats.amounts().size(), 2, Integer.MAX_VALUE, "");
        Check.within("stated share", statedShare, 0, 1, "");
    }

    /** The median from y − U to y + U, cut off at 0; never narrower than by the meter alone. */
    public MeasuredAmount around(MeterUncertainty meter) {
        double amount = repeats.median();
        if (seen().at(amount) <= stated().at(amount)) {
            return meter.around(amount);
        }
        double expanded = Math.max(meter.expanded(amount), budget(meter).expanded(amount));
        return new MeasuredAmount(amount, new Interval(Math.max(0, amount - expanded), amount + expanded));
    }

    private UncertaintyBudget budget(MeterUncertainty meter) {
        double whole = meter.share() / 2;
        double rest = Math.sqrt(Math.max(0, whole * whole - statedShare * statedShare));
        return new UncertaintyBudget(
                List.of(
                        Contribution.ofShare(Cause.CALIBRATION, new Evaluation.Standard(rest)),
                        Contribution.ofAmount(Cause.CALIBRATION, new Evaluation.Expanded(meter.absolute(), 2)),
                        seen()),
                meter.resolution());
    }

    private Contribution seen() {
        Evaluation scatter =
                new Evaluation.Scatter(standardDeviation(), repeats.amounts().size());
        return new Contribution(Cause.REPEATS, Basis.AMOUNT, scatter, 1);
    }

    /** s² = Σ (x − mean)²/(n − 1) [jcgm100, eq. 4]. */
    private double standardDeviation() {
        List<Double> amounts = repeats.amounts();
        double mean =
                amounts.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double squares = amounts.stream()
                .mapToDouble(amount -> (amount - mean) * (amount - mean))
                .sum();
        return Math.sqrt(squares / (amounts.size() - 1));
    }

    private Contribution stated() {
        return Contribution.ofShare(Cause.REPEATS, new Evaluation.Standard(statedShare));
    }
}
