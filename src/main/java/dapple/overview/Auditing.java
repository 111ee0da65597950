package dapple.overview;

import dapple.animal.Resident;
import dapple.animal.Residents;
import dapple.commissioning.AcceptanceOnRecord;
import dapple.commissioning.Accepted;
import dapple.enclosure.Enclosures;
import dapple.order.VetOrders;
import dapple.reading.ReadingRecords;
import dapple.review.ReviewRecords;
import dapple.rig.RigRecords;
import dapple.target.Targets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Puts together what was where, read, judged and told in an enclosure at any instant. */
@Service
class Auditing {
    private final RigRecords rigs;
    private final Accepted accepted;
    private final Residents residents;
    private final Targets targets;
    private final VetOrders orders;
    private final Enclosures enclosures;
    private final ReadingRecords readings;
    private final ReviewRecords review;

    Auditing(
            RigRecords rigs,
            Accepted accepted,
            Residents residents,
            Targets targets,
            VetOrders orders,
            Enclosures enclosures,
            ReadingRecords readings,
            ReviewRecords review) {
        this.rigs = rigs;
        this.accepted = accepted;
        this.residents = residents;
        this.targets = targets;
        this.orders = orders;
        this.enclosures = enclosures;
        this.readings = readings;
        this.review = review;
    }

    /**
     * Asks as often for much as for little.
     *
     * @param day that of the instant at the site
     */
    @Transactional(readOnly = true)
    public AuditSheet at(long siteId, long enclosureId, Instant at, LocalDate day) {
        List<Resident> lived = residents.at(siteId, enclosureId, at);
        Map<Boolean, List<Resident>> known =
                lived.stream().collect(Collectors.partitioningBy(one -> one.wasThereAt(at)));
        return new AuditSheet(
                at,
                rigs.at(siteId, enclosureId, at),
                acceptance(siteId, enclosureId, at),
                known.getOrDefault(true, List.of()),
                known.getOrDefault(false, List.of()),
                targets.versionsInForce(siteId, each(lived, one -> one.animal().speciesId()), at),
                orders.inForceOf(siteId, each(lived, one -> one.animal().id()), at),
                enclosures.plannedOffOnRecord(siteId, enclosureId, at),
                readings.at(siteId, enclosureId, at),
                review.decisions(siteId, enclosureId, at, day),
                review.alarms(siteId, enclosureId, at));
    }

    private Optional<AcceptanceOnRecord> acceptance(long siteId, long enclosureId, Instant at) {
        return rigs.lastLightChange(siteId, enclosureId, at).flatMap(change -> accepted.onRecord(siteId, change.id()));
    }

    private static Set<Long> each(Collection<Resident> lived, Function<Resident, Long> id) {
        return lived.stream().map(id).collect(Collectors.toSet());
    }
}
