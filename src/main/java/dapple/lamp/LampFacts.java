package dapple.lamp;

import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One lamp as fittings and predictions need it.
 *
 * @param burnHoursAtEntry how long it had burnt when it was entered, h; empty: not known
 * @param measured its own, the newest of each quantity
 */
public record LampFacts(
        long id,
        String tag,
        LampModelFacts model,
        Optional<Double> burnHoursAtEntry,
        Optional<LocalDate> boughtOn,
        List<LampOutput> measured,
        Optional<Instant> retiredAt) {

    public LampFacts {
        measured = List.copyOf(measured);
    }

    public boolean isInUse() {
        return retiredAt.isEmpty();
    }

    /**
     * What it gives of each quantity: measured of itself, else what its model states, else what follows from these by the
     * spectrum of its model.
     */
    public List<LampOutput> outputs() {
        Set<Quantity> known = measured.stream().map(LampOutput::quantity).collect(Collectors.toSet());
        Stream<LampOutput> ofModel = model.outputs().stream()
                .filter(output -> output.mark() != SourceMark.COMPUTED && !known.contains(output.quantity()));
        return model.evidence()
                .complete(Stream.concat(measured.stream(), ofModel).toList());
    }
}
