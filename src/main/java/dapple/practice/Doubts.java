package dapple.practice;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** From when to when the readings of a site's meters are in doubt, by meter. */
public record Doubts(Map<Long, List<Doubt>> byMeter) {
    public Doubts {
        byMeter = Map.copyOf(byMeter);
    }

    /** Why a reading is in doubt; none: nothing speaks against it. */
    public Optional<Doubt> of(long meterId, Instant takenAt) {
        return byMeter.getOrDefault(meterId, List.of()).stream()
                .filter(doubt -> doubt.covers(takenAt))
                .findFirst();
    }

    /** A drop that no good check has answered yet. */
    Optional<Doubt> open(long meterId) {
        return byMeter.getOrDefault(meterId, List.of()).stream()
                .filter(doubt -> doubt.until().isEmpty())
                .findFirst();
    }
}
