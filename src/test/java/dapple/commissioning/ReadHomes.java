package dapple.commissioning;

import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.Outlook;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Reads enclosures as their rigs say, or otherwise. */
final class ReadHomes {
    private final EnclosureScenes scenes;
    private final Outlook outlook;
    private final ReadingLogging logging;
    private final Clock clock;

    ReadHomes(EnclosureScenes scenes, Outlook outlook, ReadingLogging logging, Clock clock) {
        this.scenes = scenes;
        this.outlook = outlook;
        this.logging = logging;
        this.clock = clock;
    }

    EnclosureScene scene(SignedIn by, long enclosureId) {
        return scenes.at(by.siteId(), enclosureId, clock.instant(), Optional.empty(), Optional.empty());
    }

    double predicted(SignedIn by, PointFacts point) {
        return outlook.withoutZones(scene(by, point.enclosureId()), Quantity.UV_INDEX)
                .at(point, Quantity.UV_INDEX)
                .orElseThrow()
                .amount();
    }

    /** Noon of yesterday: lamps that burn from 8 to 18 o'clock are warm. */
    Instant noon(SignedIn by) {
        return LocalDate.ofInstant(clock.instant(), by.zone())
                .minusDays(1)
                .atTime(LocalTime.NOON)
                .atZone(by.zone())
                .toInstant();
    }

    /** Reads points as predicted, times a factor. */
    void read(SignedIn by, MeterFacts meter, List<PointFacts> points, double factor) {
        points.forEach(point -> read(by, meter, point, factor * predicted(by, point)));
    }

    long read(SignedIn by, MeterFacts meter, PointFacts point, double uvIndex) {
        return readAt(by, meter, point, uvIndex, noon(by));
    }

    long readAt(SignedIn by, MeterFacts meter, PointFacts point, double uvIndex, Instant at) {
        VisitPlace place = new VisitPlace(UUID.randomUUID(), point.enclosureId(), point.id());
        double shown = Math.round(uvIndex * 10) / 10.0;
        return logging.log(
                new Visitor(by.siteId(), by.personId()), new Entry(UUID.randomUUID(), place, meter.id(), shown, at));
    }
}
