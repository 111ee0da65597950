package dapple.reading;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What was read or noted at points over a time: how far a walk is, or was. */
@Service
public class StepsTaken {
    private final ReadingRepository readings;
    private final UnreadPointRepository unreadPoints;

    StepsTaken(ReadingRepository readings, UnreadPointRepository unreadPoints) {
        this.readings = readings;
        this.unreadPoints = unreadPoints;
    }

    /** Over [from, to), oldest first. */
    @Transactional(readOnly = true)
    public List<StepTaken> at(long siteId, Collection<Long> points, Instant from, Instant to) {
        if (points.isEmpty()) {
            return List.of();
        }
        return Stream.concat(
                        readings.taken(siteId, points, from, to).stream(),
                        unreadPoints.noted(siteId, points, from, to).stream())
                .sorted(Comparator.comparing(StepTaken::at))
                .toList();
    }

    /** What is asked at points now and was read there before an instant. */
    @Transactional(readOnly = true)
    public Set<StepKnown> knownBefore(long siteId, Collection<Long> points, Instant before) {
        return points.isEmpty() ? Set.of() : Set.copyOf(readings.known(siteId, points, before));
    }
}
