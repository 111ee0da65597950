package dapple.reading;

import dapple.animal.Animals;
import dapple.enclosure.Enclosures;
import dapple.meter.Meters;
import dapple.order.VetOrders;
import dapple.reading.Grounds.Services;
import dapple.reading.Grounds.Since;
import dapple.rig.Rigs;
import dapple.target.Targets;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.springframework.stereotype.Component;

/** Finds what readings are judged by. */
@Component
class GroundsKnown {
    private final Services services;
    private final Animals animals;
    private final Targets targets;
    private final VetOrders orders;

    GroundsKnown(
            Needs needs,
            Enclosures enclosures,
            Meters meters,
            Rigs rigs,
            Animals animals,
            Targets targets,
            VetOrders orders) {
        this.services = new Services(needs, enclosures, meters, rigs);
        this.animals = animals;
        this.targets = targets;
        this.orders = orders;
    }

    /** For the few readings of a visit. */
    Grounds ofVisit(long siteId, long enclosureId) {
        return new Grounds(siteId, enclosureId, services, Since.then());
    }

    /** For the readings of years: between two changes of whatever counts in the enclosure nothing is asked for again. */
    Grounds ofYears(long siteId, long enclosureId) {
        Set<Instant> needed = new HashSet<>(animals.turns(siteId, enclosureId));
        needed.addAll(targets.turns(siteId));
        needed.addAll(orders.turns(siteId));
        Since since = new Since(
                newest(needed),
                newest(services.meters().turns(siteId)),
                newest(services.rigs().turns(siteId, enclosureId)),
                newest(services.enclosures().turns(siteId, enclosureId)));
        return new Grounds(siteId, enclosureId, services, since);
    }

    private static UnaryOperator<Instant> newest(Collection<Instant> turns) {
        TreeSet<Instant> sorted = new TreeSet<>(turns);
        return at -> Optional.ofNullable(sorted.floor(at)).orElse(Instant.MIN);
    }
}
