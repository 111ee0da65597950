package dapple.demo;

import dapple.demo.DemoRows.Space;
import dapple.demo.DemoRows.Spot;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Served;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.reading.ReadingIntake;
import dapple.reading.SheetReading;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Two years of weekly readings of the generated enclosures: what the light engine says, as hand-held meters show it. */
@Component
@Profile("demo")
class DemoYears {
    private static final Duration WEEK = Duration.ofDays(7);
    private static final Duration BETWEEN_ENCLOSURES = Duration.ofMinutes(5);
    private static final double SCATTER = 0.035;
    private static final int MONTH_WEEKS = 4;

    private final Enclosures enclosures;
    private final Rigs rigs;
    private final ReadingIntake intake;
    private final TransactionTemplate transaction;

    DemoYears(Enclosures enclosures, Rigs rigs, ReadingIntake intake, TransactionTemplate transaction) {
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.intake = intake;
        this.transaction = transaction;
    }

    /** Adds the points of an enclosure and reads them for two years; its rig stands already. */
    List<SheetReading> read(DemoRounds.Story story, DemoPast past, long enclosure, Space space, Instant begin) {
        long site = story.members().siteId();
        RigScene rig = RigScene.of(rigs.at(site, enclosure, begin));
        Map<String, DemoLampLife> byFirstTag = new HashMap<>();
        past.lives().values().forEach(life -> byFirstTag.put(life.turns().get(0).tag(), life));
        List<SheetReading> readings = new ArrayList<>();
        for (Spot spot : story.rows().pointsOf(space)) {
            PointFacts point = add(story, enclosure, spot);
            List<DemoPast.Lit> lit = DemoPast.lit(rig, point, byFirstTag);
            read(story, past, new Place(space, spot, point, lit), begin, readings);
        }
        return readings;
    }

    /** Stores and judges them, each recorded when it was taken. */
    void take(DemoRounds.Story story, List<SheetReading> readings) {
        transaction.executeWithoutResult(unused -> intake.takeAsOfThen(story.visitor(), readings.iterator()));
    }

    private PointFacts add(DemoRounds.Story story, long enclosure, Spot spot) {
        long site = story.members().siteId();
        boolean isBasking = spot.role() == PointRole.BASKING && spot.position().isPresent();
        PointFacts point = enclosures.addPoint(
                site,
                enclosure,
                spot.asking(
                        isBasking ? List.of(Quantity.UV_INDEX, Quantity.ILLUMINANCE) : List.of(Quantity.UV_INDEX)));
        spot.serves()
                .ifPresent(name -> enclosures.serve(site, point.id(), Served.species(Set.of(story.speciesId(name)))));
        return point;
    }

    private static void read(
            DemoRounds.Story story, DemoPast past, Place place, Instant begin, List<SheetReading> readings) {
        Random chance = new Random((place.space().code() + place.spot().code()).hashCode());
        for (int week = 1; week <= DemoPast.WEEKS; week++) {
            Instant at = story.daysAgo(place.space().lastReadDaysAgo())
                    .minus(WEEK.multipliedBy(DemoPast.WEEKS - week))
                    .plus(BETWEEN_ENCLOSURES.multipliedBy(place.space().codeNumber()));
            double usual = week == DemoPast.WEEKS ? 0 : SCATTER;
            double noise = (usual + past.failures().scatter(place.space().code(), week)) * chance.nextGaussian();
            if (at.isAfter(begin) && past.failures().isRead(place.space().code(), week)) {
                readings.add(place.reading(past, story.meter("M1"), week, at, noise));
                if (place.isLuxRead() && (DemoPast.WEEKS - week) % MONTH_WEEKS == 0) {
                    readings.add(place.reading(past, story.meter("M3"), week, at, noise));
                }
            }
        }
    }

    private record Place(Space space, Spot spot, PointFacts point, List<DemoPast.Lit> lit) {
        private boolean isLuxRead() {
            return point.quantities().contains(Quantity.ILLUMINANCE);
        }

        private SheetReading reading(DemoPast past, MeterFacts meter, int week, Instant at, double noise) {
            double truth = past.amount(spot, lit, meter.quantity(), week, at);
            double step = meter.uncertainty().resolution();
            double shown = BigDecimal.valueOf(Math.round(Math.max(0, truth * (1 + noise)) / step))
                    .multiply(BigDecimal.valueOf(step))
                    .doubleValue();
            return new SheetReading(
                    point.enclosureId(), point.id(), meter.id(), shown, at, false, Optional.empty());
        }
    }
}
