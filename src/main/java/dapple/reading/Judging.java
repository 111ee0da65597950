package dapple.reading;

import dapple.light.metrology.RepeatsTaken;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;

/**
 * Judges the readings of a visit by what was in force when each was taken: the needs of those who lived there, the
 * meter's calibration, whether the lamps were planned off. A verdict that no longer says the same is replaced and kept.
 */
@Service
class Judging {
    private final ReadingRepository readings;
    private final RepeatsOnRecord repeats;
    private final VerdictRepository verdicts;
    private final GroundsKnown known;
    private final Clock clock;

    Judging(
            ReadingRepository readings,
            RepeatsOnRecord repeats,
            VerdictRepository verdicts,
            GroundsKnown known,
            Clock clock) {
        this.readings = readings;
        this.repeats = repeats;
        this.verdicts = verdicts;
        this.known = known;
        this.clock = clock;
    }

    /**
     * Judges every reading of a visit that nothing supersedes and nobody has withdrawn.
     *
     * @return those of which something else is said than before
     */
    List<Reading> judge(Visit visit) {
        Instant now = clock.instant();
        List<Reading> visited = readings.currentOfVisit(visit.id());
        Map<Long, List<Verdict>> found = found(visit, visited, now);
        Map<Long, List<Verdict>> standing =
                verdicts.currentOfVisit(visit.id()).stream().collect(Collectors.groupingBy(Verdict::readingId));
        List<Reading> changed = visited.stream()
                .filter(reading -> record(
                        found.getOrDefault(reading.id(), List.of()),
                        standing.getOrDefault(reading.id(), List.of()),
                        now))
                .toList();
        verdicts.flush();
        return changed;
    }

    private Map<Long, List<Verdict>> found(Visit visit, List<Reading> visited, Instant now) {
        Map<Long, RepeatsTaken> repeated = repeats.ofVisit(visit.id());
        Grounds grounds = known.ofVisit(visit.siteId(), visit.enclosureId());
        List<Calibrated> calibrated = visited.stream()
                .map(reading -> Calibrated.of(
                        reading.shown(), behind(reading, Optional.ofNullable(repeated.get(reading.id()))), grounds))
                .toList();
        return Finding.of(calibrated, grounds).stream()
                .map(finding -> new Verdict(visit.siteId(), finding, now))
                .collect(Collectors.groupingBy(Verdict::readingId));
    }

    private static List<Double> behind(Reading reading, Optional<RepeatsTaken> repeated) {
        return repeated.map(taken -> RepeatsOnRecord.behind(reading, taken)).orElse(List.of());
    }

    /** Leaves what says the same as what stands; whether there was anything else. */
    private boolean record(List<Verdict> found, List<Verdict> standing, Instant now) {
        List<Verdict> outdated = new ArrayList<>(standing);
        List<Verdict> unsaid = found.stream()
                .filter(verdict -> outdated.stream()
                        .filter(verdict::saysTheSameAs)
                        .findFirst()
                        .map(outdated::remove)
                        .isEmpty())
                .toList();
        verdicts.saveAll(unsaid);
        outdated.forEach(verdict -> verdict.replace(now));
        return !unsaid.isEmpty() || !outdated.isEmpty();
    }
}
