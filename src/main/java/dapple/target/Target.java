package dapple.target;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.species.UvZone;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One version of what a species needs.
 *
 * @param id of the version
 * @param number of the version within the species, from 1
 * @param inForceFrom its approval, or the start of the record
 */
public record Target(
        long id,
        long speciesId,
        int number,
        UvZone zone,
        Instant approvedAt,
        Instant inForceFrom,
        List<SourcedLimit> sourcedLimits) {
    /** A time before any reading, whenever that is taken in. */
    static final Instant START_OF_RECORD = Instant.EPOCH;

    /** Whether readings taken before its approval are judged by it too. */
    public boolean isForEarlierReadings() {
        return inForceFrom.isBefore(approvedAt);
    }

    /**
     * What readings of a quantity are judged by. The UV index is judged by a whole set of limits or not at all; of any
     * other quantity each place may be limited alone.
     */
    public Optional<Limits> limits(Quantity quantity) {
        Optional<Band> basking = band(quantity, LimitPlace.BASKING);
        Optional<Band> shade = band(quantity, LimitPlace.SHADE);
        Optional<Band> ceiling = band(quantity, LimitPlace.CEILING);
        long said =
                Stream.of(basking, shade, ceiling).filter(Optional::isPresent).count();
        if (said < (quantity == Quantity.UV_INDEX ? 3 : 1)) {
            return Optional.empty();
        }
        return Optional.of(new Limits(
                basking.orElse(Band.OPEN),
                shade.orElse(Band.OPEN),
                ceiling.map(Band::high).orElse(Limits.NO_CEILING)));
    }

    private Optional<Band> band(Quantity quantity, LimitPlace place) {
        return sourcedLimits.stream()
                .filter(limit -> limit.quantity() == quantity && limit.place() == place)
                .map(SourcedLimit::band)
                .findFirst();
    }
}
