package dapple.agreement;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The meters of one quantity at a site.
 *
 * @param readings how many were compared
 * @param meters each since its newest calibration
 * @param pairs of these
 */
record QuantityShown(
        Quantity quantity, Instant computedAt, int readings, List<MeterShown> meters, List<PairShown> pairs) {
    QuantityShown {
        meters = List.copyOf(meters);
        pairs = List.copyOf(pairs);
    }

    public boolean isOnlyOne() {
        return meters.stream().map(MeterShown::meterId).distinct().count() == 1;
    }

    public Optional<MeterShown> of(long meterId) {
        return meters.stream().filter(meter -> meter.meterId() == meterId).findFirst();
    }

    /** With so many of the newest weeks of each meter. */
    QuantityShown withNewest(int weeks) {
        return new QuantityShown(
                quantity,
                computedAt,
                readings,
                meters.stream().map(meter -> meter.withNewest(weeks)).toList(),
                pairs);
    }
}
