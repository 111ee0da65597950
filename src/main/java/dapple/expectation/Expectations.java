package dapple.expectation;

import dapple.enclosure.PointFacts;
import dapple.light.expectation.Expected;
import dapple.light.quantity.Quantity;
import dapple.reading.RecentReading;
import dapple.rig.Rig;
import dapple.rig.RigChangeFacts;
import dapple.rig.Rigs;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What readings should be this week: by the newest of each point since its light was changed, else by what the rig is
 * predicted to give.
 */
@Service
public class Expectations {
    /** How many of the newest readings of each place count. */
    public static final int NEWEST = 5;

    /** Of a quantity that the site has no meter for: so fine that it widens nothing. */
    private static final double FINE = 0.01;

    private final Rigs rigs;
    private final Clock clock;

    Expectations(Rigs rigs, Clock clock) {
        this.rigs = rigs;
        this.clock = clock;
    }

    /** A quantity at a point. */
    public record Place(long pointId, Quantity quantity) {}

    /** Whose points, and by which clock lamps burn. */
    public record Site(long id, ZoneId zone) {}

    /**
     * What is expected at some points, in true amounts; where nothing is known of a place, it is missing.
     *
     * @param rigById the present rigs of the site, as {@link Rigs#nowAtSite}
     * @param newest up to {@link #NEWEST} readings of each place, newest first
     * @param resolutions steps of the displays that the site's meters have
     */
    @Transactional(readOnly = true)
    public Map<Place, Expected> at(
            Site site,
            Collection<PointFacts> points,
            Map<Long, Rig> rigById,
            List<RecentReading> newest,
            Map<Quantity, Double> resolutions) {
        Map<Place, List<RecentReading>> past = sinceChanges(site, newest);
        Foretelling foretelling = new Foretelling(rigById, site.zone(), clock.instant());
        Map<Place, Expected> found = new HashMap<>();
        for (PointFacts point : points) {
            for (Quantity quantity : point.quantities()) {
                Place place = new Place(point.id(), quantity);
                double resolution = resolutions.getOrDefault(quantity, FINE);
                foretelling
                        .of(point, quantity, past.getOrDefault(place, List.of()), resolution)
                        .ifPresent(one -> found.put(place, one));
            }
        }
        return found;
    }

    /** The newest readings of each place since its light was changed. */
    private Map<Place, List<RecentReading>> sinceChanges(Site site, List<RecentReading> newest) {
        Map<Long, RigChangeFacts> changes = rigs.lastLightChanges(site.id());
        return newest.stream()
                .filter(one -> Optional.ofNullable(changes.get(one.enclosureId()))
                        .filter(change -> one.takenAt().isBefore(change.at()))
                        .isEmpty())
                .collect(Collectors.groupingBy(one -> new Place(one.pointId(), one.quantity())));
    }
}
