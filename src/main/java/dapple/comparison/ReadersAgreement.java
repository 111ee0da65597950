package dapple.comparison;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How well people agree who read one quantity at the same point within a day, with the same meter.
 *
 * @param asked how many repeats were asked for and are done, or past their time
 * @param done how many of these were read again
 * @param byOneMeter how many of these with the same meter
 * @param within how many of these lie within 15 % of their median, or one step of the display
 * @param spread median of (larger − smaller)/median, a share; empty: there are none
 */
record ReadersAgreement(Quantity quantity, int asked, int done, int byOneMeter, int within, Optional<Double> spread) {
    /** Of each quantity of which repeats were asked for. */
    static List<ReadersAgreement> of(List<RepeatAsked> repeats, Instant now) {
        List<RepeatAsked> over =
                repeats.stream().filter(repeat -> !repeat.isWaiting(now)).toList();
        return Arrays.stream(Quantity.values())
                .map(quantity -> of(
                        quantity,
                        over.stream()
                                .filter(repeat -> repeat.quantity() == quantity)
                                .toList()))
                .filter(agreement -> agreement.asked() > 0)
                .toList();
    }

    private static ReadersAgreement of(Quantity quantity, List<RepeatAsked> over) {
        List<RepeatAsked> alike =
                over.stream().filter(RepeatAsked::isByOneMeter).toList();
        return new ReadersAgreement(
                quantity,
                over.size(),
                (int) over.stream()
                        .filter(repeat -> repeat.second().isPresent())
                        .count(),
                alike.size(),
                (int) alike.stream().filter(RepeatAsked::agrees).count(),
                median(alike.stream()
                        .flatMap(repeat -> repeat.spread().stream())
                        .sorted()
                        .toList()));
    }

    private static Optional<Double> median(List<Double> sorted) {
        int size = sorted.size();
        return size == 0 ? Optional.empty() : Optional.of((sorted.get((size - 1) / 2) + sorted.get(size / 2)) / 2);
    }
}
