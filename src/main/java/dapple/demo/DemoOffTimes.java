package dapple.demo;

import dapple.demo.DemoRows.Space;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** When lamps of the demo are off on purpose: winters at rest, summers outdoors. */
@Component
@Profile("demo")
class DemoOffTimes {
    private static final Duration YEAR = Duration.ofDays(365);
    private static final Duration SINCE = Duration.ofDays(10);
    private static final Duration STILL = Duration.ofDays(80);

    /** Where somebody rests each winter, whatever the day of the year on which the demo is started. */
    private static final String RESTING_NOW = "Winter rest";

    private static final Map<String, Season> SEASONS = Map.of(
            "E27", new Season(MonthDay.of(6, 1), 92, "Outdoors for the summer"),
            "E30", new Season(MonthDay.of(12, 1), 84, "Winter rest in the cold room"));

    private final Enclosures enclosures;

    DemoOffTimes(Enclosures enclosures) {
        this.enclosures = enclosures;
    }

    /** Plans the times of an enclosure, each when it begins. */
    void plan(DemoStory story, Space space, long enclosure, Consumer<Instant> time) {
        of(story, space).forEach(off -> {
            time.accept(off.from());
            enclosures.planOff(
                    story.members().siteId(),
                    new PlannedOffTime(enclosure, off.from(), Optional.of(off.to()), off.reason()),
                    story.members().supervisor());
        });
    }

    /** Whether nobody reads there because the lamps are off. */
    static boolean isOff(DemoStory story, Space space, Instant at) {
        return of(story, space).stream().anyMatch(off -> !at.isBefore(off.from()) && at.isBefore(off.to()));
    }

    private static List<Off> of(DemoStory story, Space space) {
        Instant now = story.now();
        if (space.plannedOff()) {
            return List.of(resting(now.minus(YEAR)), resting(now));
        }
        Season season = SEASONS.get(space.code());
        return season == null ? List.of() : season.times(story.begin(), now);
    }

    private static Off resting(Instant about) {
        return new Off(about.minus(SINCE), about.plus(STILL), RESTING_NOW);
    }

    private record Off(Instant from, Instant to, String reason) {}

    private record Season(MonthDay first, int days, String reason) {
        /** Those that lie within a time, or have begun in it. */
        List<Off> times(Instant begin, Instant end) {
            LocalDate from = LocalDate.ofInstant(begin, DemoTeam.ZONE);
            LocalDate to = LocalDate.ofInstant(end, DemoTeam.ZONE);
            return IntStream.rangeClosed(from.getYear(), to.getYear())
                    .mapToObj(first::atYear)
                    .filter(day -> day.isAfter(from) && day.isBefore(to))
                    .map(day -> new Off(midnight(day), midnight(day.plusDays(days)), reason))
                    .toList();
        }

        private static Instant midnight(LocalDate day) {
            return day.atStartOfDay(DemoTeam.ZONE).toInstant();
        }
    }
}
