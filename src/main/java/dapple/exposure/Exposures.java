package dapple.exposure;

import dapple.animal.AnimalHistory;
import dapple.animal.StayFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.dose.DoseSettings;
import dapple.light.dose.LightHistory;
import dapple.light.dose.Span;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.people.SignedIn;
import dapple.reading.Readings;
import dapple.reading.WhereLived;
import dapple.rig.Rigs;
import dapple.site.Settings;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What light animals had, from what is on record of where they lived. */
@Service
public class Exposures {
    private static final double SECONDS_PER_HOUR = 3600;

    private final Readings readings;
    private final VetOrders orders;
    private final Rigs rigs;
    private final Enclosures enclosures;

    Exposures(Readings readings, VetOrders orders, Rigs rigs, Enclosures enclosures) {
        this.readings = readings;
        this.orders = orders;
        this.rigs = rigs;
        this.enclosures = enclosures;
    }

    /** Day by day, in the time of the site; as often asked of the database for many facts as for few. */
    @Transactional(readOnly = true)
    public Exposure of(SignedIn me, AnimalHistory history, Period period) {
        Settings settings = me.settings();
        ZoneId zone = me.zone();
        Lived lived =
                lived(me.siteId(), history, period.widened(settings.carryDays()).span(zone));
        DoseSettings dose = new DoseSettings(settings.carryDays(), hours(settings.baskingHours()));
        LightHistory light = new LightHistory(lived.light(zone), dose);
        return new Exposure(period, zone, settings, lived, light.days(period.from(), period.until()));
    }

    /** Readings a little before and after tell of the first and the last days too. */
    private Lived lived(long siteId, AnimalHistory history, Span window) {
        List<StayFacts> stays = history.stays().stream()
                .filter(stay -> Lived.during(stay).meet(window).isPresent())
                .toList();
        Set<Long> places = stays.stream().map(StayFacts::enclosureId).collect(Collectors.toSet());
        List<OrderFacts> ordered = orders.ofHistory(siteId, history);
        Set<Long> ids = ordered.stream().map(OrderFacts::id).collect(Collectors.toSet());
        Map<Long, PointFacts> points = enclosures.pointsById(siteId);
        WhereLived where = new WhereLived(stays, history.animal().speciesId(), ids, points);
        return new Lived(
                stays,
                ordered,
                readings.whereLived(siteId, where, window.from(), window.to()),
                points,
                enclosures.plannedOff(siteId, places, window.from(), window.to()),
                rigs.changes(siteId, places, window.from(), window.to()),
                rigs.lamps(siteId, places, window.from(), window.to()));
    }

    private static Duration hours(double hours) {
        return Duration.ofSeconds(Math.round(hours * SECONDS_PER_HOUR));
    }
}
