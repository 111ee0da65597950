package dapple.season;

import dapple.animal.Animals;
import dapple.animal.Occupant;
import dapple.enclosure.EnclosureFacts;
import dapple.people.SignedIn;
import dapple.rig.BurnHours;
import dapple.rig.FittingFacts;
import dapple.rig.Rig;
import dapple.target.Targets;
import dapple.target.VersionDetails;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Gathers what the timers of an enclosure do over a year. */
@Component
class YearOfTimers {
    private static final double SECONDS_PER_HOUR = 3600;

    private final BurnHours burnHours;
    private final Animals animals;
    private final Targets targets;
    private final Clock clock;

    YearOfTimers(BurnHours burnHours, Animals animals, Targets targets, Clock clock) {
        this.burnHours = burnHours;
        this.animals = animals;
        this.targets = targets;
        this.clock = clock;
    }

    TimersShown of(SignedIn me, EnclosureFacts enclosure, Rig rig) {
        Instant now = clock.instant();
        LocalDate today = LocalDate.ofInstant(now, me.zone());
        Year year = Year.from(today);
        Instant newYear = year.atDay(1).atStartOfDay(me.zone()).toInstant();
        Map<Long, Double> burnt = burnHours.within(me.siteId(), rig, newYear, now, me.zone());
        List<TimerRow> rows = rig.fittings().stream()
                .map(fitting -> new TimerRow(
                        fitting,
                        year,
                        Optional.ofNullable(burnt.get(fitting.lamp().id())),
                        toBurn(me, fitting, now)))
                .toList();
        return TimersShown.of(today, rows, new LightYear(year, rig.fittings()), wanted(me, enclosure, now));
    }

    private static Optional<Double> toBurn(SignedIn me, FittingFacts fitting, Instant now) {
        Instant end = now.atZone(me.zone()).plusYears(1).toInstant();
        return fitting.hanging()
                .timer()
                .map(timer -> timer.onWithin(now, end, me.zone()).toSeconds() / SECONDS_PER_HOUR);
    }

    private List<Wanted> wanted(SignedIn me, EnclosureFacts enclosure, Instant now) {
        Map<Long, String> names = animals.occupants(me.siteId(), enclosure.id(), now).stream()
                .collect(Collectors.toMap(
                        occupant -> occupant.animal().speciesId(), Occupant::scientificName, (one, same) -> one));
        if (names.isEmpty()) {
            return List.of();
        }
        Map<Long, VersionDetails> inForce = targets.versionsInForce(me.siteId(), names.keySet(), now);
        return names.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .flatMap(species -> Optional.ofNullable(inForce.get(species.getKey()))
                        .flatMap(VersionDetails::photoperiod)
                        .map(photoperiod -> new Wanted(species.getValue(), photoperiod))
                        .stream())
                .toList();
    }
}
