package dapple.demo;

import dapple.demo.DemoRows.Instead;
import dapple.meter.MeterFacts;
import dapple.reading.SheetReading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/** The last weeks of the demo's first enclosures: from each point's first value to its last, as the table has them. */
final class DemoRounds {
    private static final double SCATTER = 0.03;
    private static final long SEED = 20_260_901;
    private static final String USUAL = "M1";

    private final DemoStory story;

    DemoRounds(DemoStory story) {
        this.story = story;
    }

    List<SheetReading> readings(DemoHouse house) {
        List<SheetReading> readings = new ArrayList<>();
        Random chance = new Random(SEED + house.space().code().hashCode());
        for (int week = 1; week <= DemoStory.TOLD_WEEKS; week++) {
            Instant at = story.readAt(house.space(), DemoStory.WEEKS - DemoStory.TOLD_WEEKS + week);
            double share = share(house, week, at);
            Optional<Instead> instead = story.rows().insteadAt(house.space(), week);
            for (DemoHouse.Place place : house.places()) {
                double scatter = week == DemoStory.TOLD_WEEKS ? 0 : SCATTER * chance.nextGaussian();
                reads(place)
                        .map(read -> by(instead, read))
                        .forEach(read ->
                                readings.add(DemoShown.by(read.meter()).of(read.amount(share, scatter), place, at)));
            }
        }
        return readings;
    }

    /** How far on the way from the first amounts to the last: a change of the rig makes them jump. */
    private double share(DemoHouse house, int week, Instant at) {
        return story.changed(house.space())
                .map(change -> at.isBefore(change) ? 0.0 : 1.0)
                .orElse((week - 1.0) / (DemoStory.TOLD_WEEKS - 1));
    }

    private Stream<Read> reads(DemoHouse.Place place) {
        Stream<Read> uvIndex = place.spot().firstUvi().stream()
                .flatMap(first ->
                        place.spot().lastUvi().stream().map(last -> new Read(story.meter(USUAL), first, last)));
        return Stream.concat(
                uvIndex,
                story.rows().furtherAt(place.spot()).stream()
                        .map(further -> new Read(story.meter(further.meter()), further.first(), further.last())));
    }

    /** The same by the meter that was at hand, where it reads the same quantity. */
    private Read by(Optional<Instead> instead, Read read) {
        return instead.filter(one ->
                        story.meter(one.meter()).quantity() == read.meter().quantity())
                .map(one -> new Read(story.meter(one.meter()), one.times() * read.first(), one.times() * read.last()))
                .orElse(read);
    }

    /** The first and the last amount of a quantity; the last one comes without scatter, so that the demo shows every state. */
    private record Read(MeterFacts meter, double first, double last) {
        double amount(double share, double scatter) {
            return (first + share * (last - first)) * (1 + scatter);
        }
    }
}
