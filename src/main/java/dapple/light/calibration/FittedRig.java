package dapple.light.calibration;

import dapple.light.quantity.Interval;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A rig as its readings have it, over what is stated of it.
 *
 * @param residuals in the order of the readings
 */
public record FittedRig(
        List<Factor> lamps, List<Factor> covers, List<Factor> meters, List<AtReading> residuals, Quality quality)
        implements RigResult {
    /** Largest standard uncertainty of ln f by the readings alone with which a lamp counts as told by them (ours). */
    public static final double TOLD = 0.5;

    /** Beyond so many standard uncertainties something does not belong together (ours, see docs/physics.md). */
    public static final double MOST = 4;

    /** The same where the ratio is doubtful as well. */
    public static final double MUCH = 2.5;

    public FittedRig {
        lamps = List.copyOf(lamps);
        covers = List.copyOf(covers);
        meters = List.copyOf(meters);
        residuals = List.copyOf(residuals);
    }

    /**
     * What one lamp, cover or meter gives over what is stated.
     *
     * @param relative standard uncertainty of the value, over it
     * @param interval 95 %
     * @param inStandardUnits how far what is stated lies from what the readings say
     * @param isTold whether the readings alone say it; if not, it is mostly what was stated
     * @param together the value while all others are free as well
     */
    public record Factor(
            String name,
            double value,
            double relative,
            Interval interval,
            double inStandardUnits,
            boolean isTold,
            double together) {}

    /**
     * One reading under the fitted rig.
     *
     * @param light what the fitted rig gives there
     * @param expected what this meter should have shown of it
     * @param inStandardUnits (reading − expected)/u, as the other readings have it
     */
    public record AtReading(RigReading reading, double light, double expected, double inStandardUnits) {
        /** Reading over what is expected; empty in the dark. */
        public Optional<Double> ratio() {
            return expected > 0 ? Optional.of(reading.value() / expected) : Optional.empty();
        }
    }

    /** What of a rig does not belong together. */
    public enum Part {
        POINT,
        LAMP,
        COVER,
        METER
    }

    /**
     * Something to look at.
     *
     * @param factor what was found over what was expected; infinite where no light at all was
     * @param inStandardUnits how far apart they are
     */
    public record Doubt(Part part, String name, double factor, double inStandardUnits) {
        /** How many standard uncertainties apart, either way. */
        public double size() {
            return Math.abs(inStandardUnits);
        }

        /** Whether something was read where nothing should be, which no factor says. */
        public boolean isInTheDark() {
            return Double.isInfinite(factor);
        }

        public boolean isMore() {
            return inStandardUnits > 0;
        }
    }

    /**
     * All that meter and model do not explain, the worst first; none: they agree. A cover that cannot be told from its lamps
     * stands behind them.
     *
     * @param usual ratios of a reading to its prediction that need no notice
     */
    public List<Doubt> doubts(Interval usual) {
        Stream<Doubt> points = residuals.stream()
                .map(one -> new Doubt(
                        Part.POINT,
                        one.reading().point(),
                        one.ratio().orElse(Double.POSITIVE_INFINITY),
                        one.inStandardUnits()));
        return Stream.of(points, of(Part.LAMP, lamps), of(Part.METER, meters), of(Part.COVER, told()))
                .flatMap(each -> each)
                .filter(doubt -> isDoubtful(doubt, usual))
                .sorted(Comparator.comparingDouble((Doubt doubt) -> -doubt.size()))
                .toList();
    }

    private List<Factor> told() {
        return covers.stream().filter(Factor::isTold).toList();
    }

    private static Stream<Doubt> of(Part part, List<Factor> factors) {
        return factors.stream()
                .map(factor -> new Doubt(
                        part,
                        factor.name(),
                        part == Part.METER ? factor.together() : factor.value(),
                        factor.inStandardUnits()));
    }

    private static boolean isDoubtful(Doubt doubt, Interval usual) {
        double far = doubt.size();
        return far > MOST || (far > MUCH && !doubt.isInTheDark() && !usual.contains(doubt.factor()));
    }
}
