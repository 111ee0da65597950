package dapple.overview;

import dapple.animal.Resident;
import dapple.commissioning.AcceptanceOnRecord;
import dapple.enclosure.PlannedOffOnRecord;
import dapple.order.OrderFacts;
import dapple.reading.ReadingOnRecord;
import dapple.review.AlarmOnRecord;
import dapple.review.DecisionFacts;
import dapple.rig.RigOnRecord;
import dapple.target.VersionDetails;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was where, read, judged and told in an enclosure at one instant.
 *
 * @param accepted of the rig of then, even if it was accepted only later
 * @param residents who was there by what is known now
 * @param saidThen who was said to be there then, and was not by what is known now
 * @param targets in force, by species; a species without one is missing
 * @param orders in force, by animal
 */
record AuditSheet(
        Instant at,
        RigOnRecord rig,
        Optional<AcceptanceOnRecord> accepted,
        List<Resident> residents,
        List<Resident> saidThen,
        Map<Long, VersionDetails> targets,
        Map<Long, OrderFacts> orders,
        List<PlannedOffOnRecord> plannedOff,
        List<ReadingOnRecord> readings,
        List<DecisionFacts> decisions,
        List<AlarmOnRecord> alarms) {

    /** The species of those who were there or were said to be. */
    public List<Long> speciesIds() {
        return Stream.concat(residents.stream(), saidThen.stream())
                .map(resident -> resident.animal().speciesId())
                .distinct()
                .toList();
    }
}
