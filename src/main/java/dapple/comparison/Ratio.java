package dapple.comparison;

import dapple.light.judging.MeterUncertainty;
import dapple.light.metrology.Compared;
import dapple.light.metrology.DeclineOfClass;
import dapple.light.metrology.DriftSettings;
import dapple.light.metrology.LampSet;
import dapple.light.metrology.PairedMeters;
import dapple.light.metrology.PairedOccasion;
import dapple.meter.MeterFacts;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How two meters compared: ln(first/second), the median of each occasion, occasions weighted by 1/s². They agree where
 * |ln ratio| ≤ √(U₁² + U₂² + U²), U₁ and U₂ the stated expanded uncertainties as shares of what was read, U that of the
 * ratio; so laboratories are compared (the Eₙ number, from memory).
 *
 * @param pairs how many points gave a ratio
 * @param lnRatio of the first meter's readings over the second's
 * @param lnExpanded U, expanded uncertainty of the ratio (coverage factor 2) without what each meter's readings share
 * @param lnAllowed what they may differ by within what is stated of them
 */
record Ratio(MeterFacts first, MeterFacts second, int pairs, double lnRatio, double lnExpanded, double lnAllowed) {
    /** How well a sensor is put at the same place and angle once more, standard uncertainty as a share (ours). */
    static final double PLACING = 0.05;

    /** In dimmer light than so many steps of the display a ratio says nothing (ours). */
    private static final int LEAST_STEPS = 3;

    private static final double COVERAGE_FACTOR = 2;
    private static final double PERCENT = 100;

    /** Within one hour lamps do not decline. */
    private static final LampSet STEADY = new LampSet("within the hour", new DeclineOfClass(0, 0, 0));

    /** Of every two meters that read a point within an hour, brightly enough for their displays. */
    static List<Ratio> of(List<MeterRead> reads, Map<Long, MeterFacts> meters, Map<Long, Long> enclosures) {
        List<Compared> compared = reads.stream()
                .flatMap(read -> compared(read, meters, enclosures).stream())
                .toList();
        return PairedMeters.of(compared, DriftSettings.USUAL).stream()
                .flatMap(paired -> of(paired, reads, meters).stream())
                .sorted(Comparator.comparing((Ratio ratio) -> ratio.first().code())
                        .thenComparing(ratio -> ratio.second().code()))
                .toList();
    }

    private static Optional<Compared> compared(
            MeterRead read, Map<Long, MeterFacts> meters, Map<Long, Long> enclosures) {
        return Optional.ofNullable(meters.get(read.meterId()))
                .filter(meter ->
                        read.amount() >= LEAST_STEPS * meter.uncertainty().resolution())
                .map(meter -> new Compared(
                        String.valueOf(read.meterId()),
                        String.valueOf(read.pointId()),
                        new LampSet(STEADY.key() + enclosures.get(read.pointId()), STEADY.decline()),
                        read.at(),
                        Math.log(read.amount()),
                        own(meter, read.amount())));
    }

    /** Placing and the step r of the display, r/√12, as a share. */
    private static double own(MeterFacts meter, double amount) {
        return Math.hypot(PLACING, meter.uncertainty().resolution() / Math.sqrt(12) / amount);
    }

    private static Optional<Ratio> of(PairedMeters paired, List<MeterRead> reads, Map<Long, MeterFacts> meters) {
        return Optional.ofNullable(meters.get(Long.valueOf(paired.first())))
                .flatMap(first -> Optional.ofNullable(meters.get(Long.valueOf(paired.second())))
                        .map(second -> of(paired.occasions(), first, second, reads)));
    }

    private static Ratio of(
            List<PairedOccasion> occasions, MeterFacts first, MeterFacts second, List<MeterRead> reads) {
        double weights = 0;
        double sum = 0;
        int pairs = 0;
        for (PairedOccasion occasion : occasions) {
            double weight = 1 / (occasion.standardError() * occasion.standardError());
            weights += weight;
            sum += weight * occasion.lnRatio();
            pairs += occasion.pairs();
        }
        double expanded = COVERAGE_FACTOR / Math.sqrt(weights);
        double allowed = Math.hypot(Math.hypot(stated(first, reads), stated(second, reads)), expanded);
        return new Ratio(first, second, pairs, sum / weights, expanded, allowed);
    }

    /** Stated expanded uncertainty at the middle of what it read, as a share. */
    private static double stated(MeterFacts meter, List<MeterRead> reads) {
        List<Double> amounts = reads.stream()
                .filter(read -> read.meterId() == meter.id() && read.amount() > 0)
                .map(MeterRead::amount)
                .sorted()
                .toList();
        MeterUncertainty stated = meter.uncertainty();
        double middle = amounts.get(amounts.size() / 2);
        return stated.expanded(middle) / middle;
    }

    public boolean agrees() {
        return Math.abs(lnRatio) <= lnAllowed;
    }

    /** By how much the first shows more than the second, percent. */
    public double percent() {
        return percent(lnRatio);
    }

    public double lowPercent() {
        return percent(lnRatio - lnExpanded);
    }

    public double highPercent() {
        return percent(lnRatio + lnExpanded);
    }

    public double allowedPercent() {
        return percent(lnAllowed);
    }

    private static double percent(double ln) {
        return PERCENT * Math.expm1(ln);
    }
}
