package dapple.demo;

import dapple.demo.DemoRows.Space;
import dapple.light.quantity.Quantity;
import dapple.reading.SheetReading;
import dapple.site.Given;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Two years of weekly readings of the demo: what the light engine says of each rig, times what became of its lamps, times
 * what went wrong, as hand-held meters show it. Where a table tells how the story ends, they lead to where it begins.
 */
final class DemoYears {
    private static final double SCATTER = 0.035;
    private static final int MONTH_WEEKS = 4;
    private static final String USUAL = "M1";
    private static final String LUX = "M3";

    private final DemoStory story;
    private final DemoMeterLives meters;
    private final DemoFailures failures;
    private final Map<String, DemoHouse> houses;

    DemoYears(DemoStory story, DemoMeterLives meters, DemoFailures failures, List<DemoHouse> houses) {
        this.story = story;
        this.meters = meters;
        this.failures = failures;
        this.houses =
                houses.stream().collect(Collectors.toMap(house -> house.space().code(), Function.identity()));
    }

    /** The same whenever they are asked for. */
    List<SheetReading> readings(DemoHouse house) {
        List<SheetReading> readings = new ArrayList<>();
        int last = house.space().isTold() ? DemoStory.WEEKS - DemoStory.TOLD_WEEKS : DemoStory.WEEKS;
        for (DemoHouse.Place place : house.places()) {
            Random chance = new Random((house.space().code() + place.spot().code()).hashCode());
            for (int week = 1; week <= last; week++) {
                double scatter = scatter(house.space(), week) * chance.nextGaussian();
                Week read = new Week(house.space(), week, story.readAt(house.space(), week), 1 + scatter);
                if (isRead(read)) {
                    readings.addAll(readings(place, meant(place, read), read));
                }
            }
        }
        return readings;
    }

    /** The newest reading comes without, so that the demo shows every state. */
    private double scatter(Space space, int week) {
        return week == DemoStory.WEEKS ? 0 : SCATTER + failures.scatter(space.code(), week);
    }

    private boolean isRead(Week read) {
        return read.at().isAfter(story.begin())
                && failures.isRead(read.space().code(), read.week())
                && !DemoOffTimes.isOff(story, read.space(), read.at());
    }

    /** Where the meter was held: at the same point of a neighbour where its readings were entered here. */
    private DemoHouse.Place meant(DemoHouse.Place place, Week read) {
        return failures.neighbour(read.space().code(), read.week())
                .map(code -> Given.of(houses.get(code)).place(place.spot().code()))
                .orElse(place);
    }

    private List<SheetReading> readings(DemoHouse.Place place, DemoHouse.Place meant, Week read) {
        Optional<DemoFailures.Failure> other = failures.otherMeter(read.space().code(), read.week());
        String uvMeter = other.map(DemoFailures.Failure::other).orElse(USUAL);
        Optional<String> by = other.map(failure -> DemoTeam.SECOND_KEEPER);
        List<SheetReading> readings = new ArrayList<>();
        amount(meant, Quantity.UV_INDEX, read)
                .ifPresent(
                        amount -> readings.add(reading(new DemoShown(story.meter(uvMeter), by), amount, place, read)));
        if (place.point().quantities().contains(Quantity.ILLUMINANCE) && isMonthly(read.week())) {
            amount(meant, Quantity.ILLUMINANCE, read)
                    .ifPresent(
                            amount -> readings.add(reading(new DemoShown(story.meter(LUX), by), amount, place, read)));
        }
        return readings;
    }

    private static boolean isMonthly(int week) {
        return (DemoStory.WEEKS - week) % MONTH_WEEKS == 0;
    }

    private SheetReading reading(DemoShown shown, double amount, DemoHouse.Place place, Week read) {
        double asShown = amount * meters.shows(shown.meter().code(), read.at());
        return shown.of(asShown * read.scatterTimes(), place, read.at());
    }

    /** What there really was; unknown where neither a lamp nor the table says. */
    private OptionalDouble amount(DemoHouse.Place place, Quantity quantity, Week read) {
        double times = failures.times(place.spot().enclosure(), read.week(), quantity);
        OptionalDouble byLamps = place.amount(quantity, read.at());
        Optional<Double> told = story.firstTold(place.spot(), quantity);
        if (told.isEmpty()) {
            return byLamps.isEmpty() ? byLamps : OptionalDouble.of(times * byLamps.getAsDouble());
        }
        OptionalDouble atTheEnd = place.amount(quantity, joins(read.space()));
        boolean isLit = byLamps.isPresent() && atTheEnd.orElse(0) > 0;
        return OptionalDouble.of(told.get() * times * (isLit ? byLamps.getAsDouble() / atTheEnd.getAsDouble() : 1));
    }

    /** When the table of an enclosure begins to tell. */
    private Instant joins(Space space) {
        return story.readAt(space, DemoStory.WEEKS - DemoStory.TOLD_WEEKS + 1);
    }

    private record Week(Space space, int week, Instant at, double scatterTimes) {}
}
