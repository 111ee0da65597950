package dapple.demo;

import dapple.demo.DemoRows.Kind;
import dapple.meter.MeterFacts;
import dapple.reading.ReadingIntake;
import dapple.reading.SheetReading;
import dapple.species.SpeciesFacts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** The demo's people, meters, species, lamps and enclosures, and all that was read there. */
@Component
@Profile("demo")
class DemoCollection {
    private final DemoTeam team;
    private final DemoMeters meters;
    private final DemoSpecies species;
    private final DemoLamps lamps;
    private final DemoHouses houses;
    private final DemoLater later;
    private final ReadingIntake intake;
    private final TransactionTemplate transaction;

    DemoCollection(
            DemoTeam team,
            DemoMeters meters,
            DemoSpecies species,
            DemoLamps lamps,
            DemoHouses houses,
            DemoLater later,
            ReadingIntake intake,
            TransactionTemplate transaction) {
        this.team = team;
        this.meters = meters;
        this.species = species;
        this.lamps = lamps;
        this.houses = houses;
        this.later = later;
        this.intake = intake;
        this.transaction = transaction;
    }

    /** Two years of it, up to now. */
    Told make(Instant now, Consumer<Instant> time, DemoChapters chapters) {
        DemoMeterLives lives = DemoMeterLives.read(now);
        DemoStory story = chapters.tell("people, meters, species", () -> atOnce(() -> begin(now, lives, time)));
        DemoRigs.Stage stage = chapters.tell("lamps", () -> atOnce(() -> stage(story, time)));
        List<DemoHouse> built = chapters.tell("enclosures", () -> houses.build(story, stage, time));
        DemoFailures failures = DemoFailures.read();
        List<SheetReading> readings =
                chapters.tell("light", () -> readings(story, new DemoYears(story, lives, failures, built), built));
        chapters.tell("readings", () -> {
            time.accept(now);
            return atOnce(() -> intake.takeAsOfThen(story.keeper(), readings.iterator()));
        });
        Map<String, DemoHouse> byCode =
                built.stream().collect(Collectors.toMap(house -> house.space().code(), Function.identity()));
        chapters.tell("what was entered later", () -> {
            species.rename(story, time);
            later.enter(story, failures, byCode, time);
            meters.calibrateLate(story, lives, time);
            return built;
        });
        return new Told(story, byCode);
    }

    /** In one transaction: many small ones would each wait for the disk. */
    private <T> T atOnce(Supplier<T> work) {
        return Objects.requireNonNull(transaction.execute(unused -> work.get()));
    }

    private DemoStory begin(Instant now, DemoMeterLives lives, Consumer<Instant> time) {
        time.accept(DemoStory.beginBefore(now));
        DemoTeam.Members members = team.join();
        Map<String, MeterFacts> register = meters.register(members, lives, time);
        time.accept(DemoStory.beginBefore(now));
        DemoStory.Tables tables = DemoStory.Tables.read();
        return new DemoStory(members, tables, DemoPast.of(tables, now), register, species(members, tables.rows()), now);
    }

    private Map<String, SpeciesFacts> species(DemoTeam.Members members, DemoRows rows) {
        Map<String, SpeciesFacts> added = new HashMap<>();
        for (Kind kind : rows.species()) {
            added.put(kind.scientificName(), species.enter(members, kind));
        }
        return added;
    }

    private DemoRigs.Stage stage(DemoStory story, Consumer<Instant> time) {
        time.accept(story.begin());
        return DemoRigs.Stage.of(story, lamps.stock(story));
    }

    private static List<SheetReading> readings(DemoStory story, DemoYears years, List<DemoHouse> built) {
        DemoRounds rounds = new DemoRounds(story);
        List<SheetReading> readings = new ArrayList<>();
        for (DemoHouse house : built) {
            readings.addAll(years.readings(house));
            if (house.space().isTold()) {
                readings.addAll(rounds.readings(house));
            }
        }
        return readings;
    }

    /** What there is by now. */
    record Told(DemoStory story, Map<String, DemoHouse> houses) {
        Map<String, Long> enclosureIds() {
            return houses.entrySet().stream()
                    .collect(Collectors.toUnmodifiableMap(
                            Map.Entry::getKey, house -> house.getValue().enclosureId()));
        }
    }
}
