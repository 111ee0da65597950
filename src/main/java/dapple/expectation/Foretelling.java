package dapple.expectation;

import dapple.enclosure.PointFacts;
import dapple.light.expectation.Ageing;
import dapple.light.expectation.Expected;
import dapple.light.expectation.PastReading;
import dapple.light.quantity.Quantity;
import dapple.prediction.Predicted;
import dapple.prediction.PredictedLight;
import dapple.reading.RecentReading;
import dapple.rig.FittingFacts;
import dapple.rig.Rig;
import dapple.rig.RigScene;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is expected under the present rigs at one instant; what belongs to a whole enclosure is worked out once. */
final class Foretelling {
    private static final double SECONDS_PER_DAY = 86_400;
    private static final double SECONDS_PER_HOUR = 3600;

    private final Map<Long, Rig> rigById;
    private final ZoneId zone;
    private final Instant now;
    private final Map<Burning, Ageing> ageings = new HashMap<>();
    private final Map<Long, PredictedLight> predictions = new HashMap<>();

    Foretelling(Map<Long, Rig> rigById, ZoneId zone, Instant now) {
        this.rigById = rigById;
        this.zone = zone;
        this.now = now;
    }

    /** The lamps of an enclosure that give of a quantity. */
    private record Burning(long enclosureId, Quantity quantity) {}

    /**
     * By the readings since the light was changed, newest first; without any, by what is predicted, if it is whole.
     *
     * @param resolution step of the display that it is read by
     */
    Optional<Expected> of(PointFacts point, Quantity quantity, List<RecentReading> past, double resolution) {
        if (past.isEmpty()) {
            return predicted(point, quantity)
                    .map(light -> Expected.from(quantity, light.amount(), light.interval(), resolution));
        }
        Ageing ageing = ageings.computeIfAbsent(new Burning(point.enclosureId(), quantity), this::ageing);
        return Optional.of(Expected.from(quantity, past.stream().map(this::past).toList(), ageing, resolution));
    }

    private PastReading past(RecentReading reading) {
        double seconds = Math.max(0, Duration.between(reading.takenAt(), now).toSeconds());
        return new PastReading(reading.amount(), seconds / SECONDS_PER_DAY);
    }

    private Optional<Predicted> predicted(PointFacts point, Quantity quantity) {
        return Optional.ofNullable(rigById.get(point.enclosureId()))
                .map(rig ->
                        predictions.computeIfAbsent(rig.enclosureId(), unused -> PredictedLight.of(RigScene.of(rig))))
                .flatMap(light -> Optional.ofNullable(light.at(point).get(quantity)))
                .filter(Predicted::isWhole);
    }

    private Ageing ageing(Burning burning) {
        return Ageing.mean(
                Optional.ofNullable(rigById.get(burning.enclosureId())).map(Rig::fittings).orElse(List.of()).stream()
                        .filter(fitting -> fitting.lamp().model().lampClass().gives(burning.quantity()))
                        .map(this::ageing)
                        .toList());
    }

    /** By the hours of the day that has passed; a lamp whose timer is not known is taken to lose nothing. */
    private Ageing ageing(FittingFacts fitting) {
        Instant dayBefore = now.minus(Duration.ofDays(1));
        double hoursADay = fitting.hanging()
                .timer()
                .map(timer -> timer.onWithin(dayBefore, now, zone).toSeconds() / SECONDS_PER_HOUR)
                .orElse(0.0);
        return Ageing.of(fitting.lamp().model().lampClass().usualLossPerHour(), Math.min(24, hoursADay));
    }
}
