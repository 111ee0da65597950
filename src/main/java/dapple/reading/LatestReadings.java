package dapple.reading;

import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.target.EarlierReadings;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;

/** Keeps the newest reading of each point at hand, in the transaction that records or judges one. */
@Service
class LatestReadings implements EarlierReadings {
    /** How far back the run of one state is looked for; a longer run begins at the oldest of them. */
    private static final Limit LOOKED_AT = Limit.of(120);

    private final ReadingRepository readings;
    private final LatestReadingRepository latest;

    LatestReadings(ReadingRepository readings, LatestReadingRepository latest) {
        this.readings = readings;
        this.latest = latest;
    }

    @Override
    public boolean existAt(long siteId) {
        return latest.existsBySiteId(siteId);
    }

    /** Nothing is at hand of a point whose every reading is withdrawn or context. */
    void refresh(long siteId, long pointId, Quantity quantity) {
        Optional<LatestReading> before = latest.findByPointIdAndQuantity(pointId, quantity);
        List<JudgedReading> run = gravest(readings.newestFirst(pointId, quantity, LOOKED_AT));
        if (run.isEmpty()) {
            before.ifPresent(latest::delete);
            latest.flush();
            return;
        }
        JudgedReading newest = run.get(0);
        Instant since = since(run);
        before.ifPresentOrElse(
                row -> row.become(newest, since), () -> latest.save(new LatestReading(siteId, newest, since)));
        latest.flush();
    }

    /** The gravest verdict of each reading; a verdict without state is the least grave. */
    private static List<JudgedReading> gravest(List<JudgedReading> newestFirst) {
        Map<Long, JudgedReading> byReading = new LinkedHashMap<>();
        newestFirst.forEach(one -> byReading.merge(one.readingId(), one, LatestReadings::graver));
        return List.copyOf(byReading.values());
    }

    private static JudgedReading graver(JudgedReading one, JudgedReading other) {
        Comparator<JudgedReading> byGravity = Comparator.comparingInt(LatestReadings::rank);
        return byGravity.compare(other, one) < 0 ? other : one;
    }

    private static int rank(JudgedReading reading) {
        return reading.state().map(State::ordinal).orElse(State.values().length);
    }

    private static Instant since(List<JudgedReading> newestFirst) {
        Optional<State> now = newestFirst.get(0).state();
        return newestFirst.stream()
                .takeWhile(reading -> reading.state().equals(now))
                .map(JudgedReading::takenAt)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }
}
